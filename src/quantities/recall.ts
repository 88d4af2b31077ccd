import { onceFor } from '../opening/once-for.ts'
import { recent } from '../opening/recent.ts'
import type { QuantityDefinition } from './define.ts'
import type { Inputs } from './inputs.ts'
import type { QuantityResult } from './result.ts'

/** Computes a quantity, unless its inputs are those of an opening not long before. */
export type RecallQuantity = (definition: QuantityDefinition, inputs: Inputs, compute: () => QuantityResult) => QuantityResult

/** For openings under the same limits and figures: what then differs are the facts that a quantity asks for, and the quantities it builds on. */
export function recallQuantities(): RecallQuantity {
  const recallFor = onceFor((definition: QuantityDefinition) => ({ ...differing(definition), recall: recent<QuantityResult>() }))
  return (definition, inputs, compute) => {
    const { facts, quantities, recall } = recallFor(definition)
    const parts: unknown[] = []
    for (const path of facts) parts.push(inputs.fact(path))
    for (const id of quantities) parts.push(inputs.quantity(id))
    return recall(parts, compute)
  }
}

const [ofQuantity, ofRuleSet] = ['quantity ', ['rule ', 'parameter ', 'table ']]

/** What a definition asks for that may differ from one opening to the next. */
function differing({ asks }: QuantityDefinition): { readonly facts: readonly string[]; readonly quantities: readonly string[] } {
  const quantities = asks.filter((from) => from.startsWith(ofQuantity)).map((from) => from.slice(ofQuantity.length))
  const facts = asks.filter((from) => ![ofQuantity, ...ofRuleSet].some((kind) => from.startsWith(kind)))
  return { facts, quantities }
}
