import { lastingPart } from '../catalog/canonical.ts'
import type { Catalog } from '../catalog/catalog.ts'
import { limitText, tradeUnits } from '../catalog/limit-text.ts'
import type { Comparator, Limit } from '../catalog/limit.ts'
import type { Table } from '../catalog/reference.ts'
import type { Reason } from '../catalog/rule.ts'
import { onceFor } from '../opening/once-for.ts'
import { valueOf, type Opening } from '../opening/opening.ts'
import { quantityText } from '../units/quantity-text.ts'
import { readQuantity, type Quantity } from '../units/quantity.ts'
import type { Finding } from './document.ts'

/** A limit made ready to compare with, or why it cannot be for this opening. */
export type Requirement =
  | { readonly kind: 'amount'; readonly governing: Quantity; readonly other: Quantity; readonly selfContradictory: boolean; readonly shown: Finding['required'] }
  | { readonly kind: 'values'; readonly values: readonly (string | boolean)[]; readonly shown: Finding['required'] }
  | { readonly kind: 'unknown'; readonly reason: Reason; readonly missing: readonly string[]; readonly shown: Finding['required'] }

type Tables = Pick<Catalog, 'tables'>

/** A limit made ready for any opening. Most ask the same of every opening, which is then read and put into words once. */
export function compileRequirement(limit: Limit, comparator: Comparator, catalog: Tables): (opening: Opening) => Requirement {
  if ('proportion' in limit) return proportionOf(limit, comparator)
  if ('table' in limit) return fromTable(limit, comparator, catalog)
  const fixed = 'inchPound' in limit ? amount(limit, comparator) : values('value' in limit ? [limit.value] : limit.values, limit, comparator)
  return () => fixed
}

interface BothSystems {
  readonly governing: 'inchPound' | 'si'
  readonly inchPound: string
  readonly si: string
  readonly printedConflict?: string | undefined
}

function amount(figures: BothSystems, comparator: Comparator, text = limitText(figures as Limit, comparator)): Requirement {
  const { governing, inchPound, si, printedConflict } = figures
  const [main, other] = governing === 'inchPound' ? [readQuantity(inchPound), readQuantity(si)] : [readQuantity(si), readQuantity(inchPound)]
  if (!main || !other) throw new Error(`a checked catalog holds an unreadable amount: ${inchPound} or ${si}`)
  const shown = lastingPart({ text, governing, inchPound: tradeUnits(inchPound), si: tradeUnits(si), values: [] })
  return { kind: 'amount', governing: main, other, selfContradictory: printedConflict !== undefined, shown }
}

function values(allowed: readonly (string | boolean)[], limit: Limit, comparator: Comparator): Requirement {
  return { kind: 'values', values: allowed, shown: lastingPart({ ...wordsOf(limit, comparator), values: allowed.map(String) }) }
}

function wordsOf(limit: Limit, comparator: Comparator): Finding['required'] {
  return lastingPart({ text: limitText(limit, comparator), governing: null, inchPound: null, si: null, values: [] })
}

/** A part of another fact, rounded to the nanometre. */
function proportionOf(limit: Extract<Limit, { proportion: string }>, comparator: Comparator): (opening: Opening) => Requirement {
  const [numerator = NaN, denominator = NaN] = limit.proportion.split('/').map(Number)
  const words = wordsOf(limit, comparator)
  const unknown: Requirement = { kind: 'unknown', reason: 'missing', missing: [limit.of], shown: words }
  return (opening) => {
    const whole = valueOf(opening, limit.of)
    if (typeof whole !== 'object') return unknown
    const part = { dimension: whole.dimension, amount: Math.round((whole.amount * numerator) / denominator) }
    const shown = { ...words, inchPound: quantityText(part, 'inchPound'), si: quantityText(part, 'si') }
    return { kind: 'amount', governing: part, other: part, selfContradictory: false, shown }
  }
}

/** The row of a table whose keys equal the opening's facts. No such row means that the prescriptive table does not reach this far. */
function fromTable(limit: Extract<Limit, { table: string }>, comparator: Comparator, { tables }: Tables): (opening: Opening) => Requirement {
  const table = tables.get(limit.table)
  const lookup = table?.lookup
  if (!table || !lookup) throw new Error(`a checked catalog has no lookup table ${limit.table}`)
  const words = wordsOf(limit, comparator)
  const outside: Requirement = { kind: 'unknown', reason: 'outsidePrescriptive', missing: [], shown: words }
  const ofRow = onceFor((row: Table['rows'][number]): Requirement => {
    const given = row[lookup.gives]
    if (typeof given !== 'object' || given === null) return outside
    const figures = { governing: lookup.governing, ...given }
    return amount(figures, comparator, limitText({ ...limit, ...figures }, comparator))
  })
  return (opening) => {
    const keys = lookup.keys.map(({ column, fact }) => ({ column, fact, value: keyOf(valueOf(opening, fact)) }))
    const missing = keys.filter(({ value }) => value === undefined).map(({ fact }) => fact)
    if (missing.length > 0) return { kind: 'unknown', reason: 'missing', missing, shown: words }
    const row = rowWith(table, keys)
    return row ? ofRow(row) : outside
  }
}

function rowWith({ rows }: Table, keys: readonly { column: string; value: string | undefined }[]) {
  return rows.find((row) => keys.every(({ column, value }) => {
    const cell = row[column]
    return typeof cell !== 'object' && String(cell) === value
  }))
}

function keyOf(value: ReturnType<typeof valueOf>): string | undefined {
  return value === undefined ? undefined : String(typeof value === 'object' ? value.amount : value)
}
