import { onceFor } from '../opening/once-for.ts'
import type { QuantityDefinition } from './define.ts'
import type { Inputs } from './inputs.ts'
import { roomForFound } from './need.ts'
import type { RecallQuantity } from './recall.ts'
import type { QuantityResult } from './result.ts'

/** Computes every quantity once, each after those it builds on. */
export function computeQuantities(definitions: readonly QuantityDefinition[], inputs: Omit<Inputs, 'quantity'>, recall?: RecallQuantity): ReadonlyMap<string, QuantityResult> {
  return computeSome(definitions, definitions.map(({ id }) => id), inputs, { recall })
}

/** What is taken as known is not computed; what is recalled was computed for an opening before. */
interface Before {
  readonly taken?: ReadonlyMap<string, QuantityResult>
  readonly recall?: RecallQuantity | undefined
}

/**
 * Computes some quantities and those they build on, in the order in which they were needed.
 * A circle among them is a fault of ours and throws.
 */
export function computeSome(definitions: readonly QuantityDefinition[], wanted: readonly string[], inputs: Omit<Inputs, 'quantity'>, { taken, recall }: Before = {}): ReadonlyMap<string, QuantityResult> {
  const byId = idsOf(definitions)
  const results = new Map(taken)
  const open = new Set<string>()
  const compute = (id: string): QuantityResult | undefined => {
    const definition = byId.get(id)
    const ready = results.get(id)
    if (ready || !definition) return ready
    if (open.has(id)) throw new Error(`quantity ${id} is computed from itself`)
    open.add(id)
    const result = recall ? recall(definition, shared, () => definition.evaluate(shared)) : definition.evaluate(shared)
    results.set(id, result)
    return result
  }
  const shared: Inputs = { ...inputs, quantity: compute, found: roomForFound() }
  for (const id of wanted) compute(id)
  return results
}

const idsOf = onceFor((definitions: readonly QuantityDefinition[]) => new Map(definitions.map((definition) => [definition.id, definition])))
