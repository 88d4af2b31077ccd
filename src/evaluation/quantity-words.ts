import type { QuantityDefinition } from '../quantities/define.ts'
import type { QuantityResult, QuantityValue } from '../quantities/result.ts'
import { baseUnits, type Dimension, type UnitSystem } from '../units/dimension.ts'
import { computedLengthText, quantityText } from '../units/quantity-text.ts'
import type { ComputedQuantity } from './document.ts'

/** A computed quantity in the words of the evaluation document; its value leads with the unit system of the opening. */
export function quantityEntry(result: QuantityResult, { structural }: QuantityDefinition, system: UnitSystem): ComputedQuantity {
  const { id, title, part, dimension, value, formula, reason, why } = result
  const texts = textsOf(dimension, value)
  return {
    id,
    title,
    part,
    status: result.status === 'computed' ? 'computed' : 'notDetermined',
    value: texts[system] ?? (value === null ? null : String(value)),
    ...texts,
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
    reason,
    why,
    needsLicensedProfessional: structural,
  }
}

function textsOf(dimension: Dimension | null, value: QuantityValue | null): Pick<ComputedQuantity, UnitSystem> {
  if (dimension === null || value === null || typeof value === 'string') return { inchPound: null, si: null }
  const amounts = typeof value === 'number' ? [value] : value
  const inSystem = (system: UnitSystem) => amounts.map((amount) => amountText(dimension, amount, system)).join(', ')
  return { inchPound: inSystem('inchPound'), si: inSystem('si') }
}

function amountText(dimension: Dimension, amount: number, system: UnitSystem): string {
  return dimension === 'length' ? computedLengthText(amount, system) : quantityText({ dimension, amount }, system)
}
