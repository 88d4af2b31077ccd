import { lastingPart } from '../catalog/canonical.ts'
import { onceFor } from '../opening/once-for.ts'
import type { QuantityDefinition } from '../quantities/define.ts'
import { isBand, type QuantityResult, type QuantityTable, type QuantityValue } from '../quantities/result.ts'
import type { Source } from '../quantities/source.ts'
import { baseUnits, type Dimension, type UnitSystem } from '../units/dimension.ts'
import { computedLengthText, quantityText } from '../units/quantity-text.ts'
import type { ComputedQuantity } from './document.ts'

/** A computed quantity in the words of the evaluation document; its value leads with the unit system of the opening. */
export function quantityEntry(result: QuantityResult, { structural, indicative }: Pick<QuantityDefinition, 'structural' | 'indicative'>, system: UnitSystem): ComputedQuantity {
  const { id, title, part, dimension, value, formula, reason, why } = result
  const texts = textsOf(dimension, value)
  return {
    id,
    title,
    part,
    status: result.status,
    value: texts[system] ?? (typeof value === 'object' ? null : String(value)),
    ...texts,
    amount: typeof value === 'number' ? value : null,
    unit: dimension === null || value === null ? null : baseUnits[dimension],
    amounts: typeof value === 'object' && value !== null && !isBand(value) ? [...value] : [],
    band: isBand(value) ? { ...value } : null,
    formula,
    inputs: shared(result.inputs),
    steps: shared(result.steps),
    tables: result.tables.map((table) => tableEntry(table, system)),
    notes: shared(result.notes),
    assumptions: shared(result.assumptions),
    sources: result.sources.map(sourceEntry),
    missing: shared(result.missing),
    reason,
    why,
    indicative,
    needsLicensedProfessional: structural,
  }
}

/** A list that is handed on as it is: neither results nor entries are ever changed. */
function shared<T>(list: readonly T[]): T[] {
  return list as T[]
}

const sourceEntry = onceFor((source: Source) => lastingPart({ ...source, readIn: source.readIn ?? null }))

function textsOf(dimension: Dimension | null, value: QuantityValue | null): Pick<ComputedQuantity, UnitSystem> {
  if (dimension === null || value === null || typeof value === 'string') return { inchPound: null, si: null }
  const amounts = typeof value === 'number' ? [value] : isBand(value) ? [value.least, value.greatest] : value
  const inSystem = (system: UnitSystem) => amounts.map((amount) => amountText(dimension, amount, system)).join(isBand(value) ? ' to ' : ', ')
  return { inchPound: inSystem('inchPound'), si: inSystem('si') }
}

function tableEntry({ title, columns, rows }: QuantityTable, system: UnitSystem): ComputedQuantity['tables'][number] {
  const cellOf = (cell: number | string | null, index: number) => {
    const dimension = columns[index]?.dimension ?? null
    if (cell === null) return { text: '', amount: null }
    return typeof cell === 'number' ? { text: dimension === null ? String(cell) : amountText(dimension, cell, system), amount: cell } : { text: cell, amount: null }
  }
  return {
    title,
    columns: columns.map(({ title, dimension }) => ({ title, unit: dimension === null ? null : baseUnits[dimension] })),
    rows: rows.map((row) => ({ cells: row.map(cellOf) })),
  }
}

function amountText(dimension: Dimension, amount: number, system: UnitSystem): string {
  return dimension === 'length' ? computedLengthText(amount, system) : quantityText({ dimension, amount }, system)
}
