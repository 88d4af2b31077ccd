import type { QuantityDefinition } from './define.ts'
import type { Inputs } from './inputs.ts'
import type { QuantityResult } from './result.ts'

/** Computes every quantity once, each after those it builds on. A circle among them is a fault of ours and throws. */
export function computeQuantities(definitions: readonly QuantityDefinition[], inputs: Omit<Inputs, 'quantity'>): ReadonlyMap<string, QuantityResult> {
  const byId = new Map(definitions.map((definition) => [definition.id, definition]))
  const results = new Map<string, QuantityResult>()
  const open = new Set<string>()
  const compute = (id: string): QuantityResult | undefined => {
    const definition = byId.get(id)
    const ready = results.get(id)
    if (ready || !definition) return ready
    if (open.has(id)) throw new Error(`quantity ${id} is computed from itself`)
    open.add(id)
    const result = definition.evaluate({ ...inputs, quantity: compute })
    results.set(id, result)
    return result
  }
  return new Map(definitions.flatMap(({ id }) => { const result = compute(id); return result ? [[id, result] as const] : [] }))
}
