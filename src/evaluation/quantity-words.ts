import type { QuantityDefinition, QuantityResult } from '../quantities/define.ts'
import { baseUnits } from '../units/dimension.ts'
import { quantityText } from '../units/quantity-text.ts'
import type { ComputedQuantity } from './document.ts'

/** A computed quantity in the words of the evaluation document. */
export function quantityEntry(result: QuantityResult, { structural }: QuantityDefinition): ComputedQuantity {
  const { id, title, part, dimension, value, formula } = result
  return {
    id,
    title,
    part,
    status: result.status === 'computed' ? 'computed' : 'notDetermined',
    value: result.status === 'computed' ? result.text : null,
    ...textsOf(result),
    amount: typeof value === 'number' ? value : null,
    unit: dimension === null || value === null ? null : baseUnits[dimension],
    amounts: typeof value === 'object' && value !== null ? [...value] : [],
    formula,
    inputs: [...result.inputs],
    steps: [...result.steps],
    notes: [...result.notes],
    assumptions: [...result.assumptions],
    sources: result.sources.map((source) => ({ ...source, readIn: source.readIn ?? null })),
    missing: [...result.missing],
    reason: result.reason,
    why: result.why,
    needsLicensedProfessional: structural,
  }
}

function textsOf({ dimension, value }: QuantityResult): Pick<ComputedQuantity, 'inchPound' | 'si'> {
  if (dimension === null || value === null || typeof value === 'string') return { inchPound: null, si: null }
  const amounts = typeof value === 'number' ? [value] : value
  const inSystem = (system: 'inchPound' | 'si') => amounts.map((amount) => quantityText({ dimension, amount }, system)).join(', ')
  return { inchPound: inSystem('inchPound'), si: inSystem('si') }
}
