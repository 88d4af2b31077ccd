import { closest } from 'fastest-levenshtein'
import { describeOpening, describePart } from '../opening/describe.ts'
import { factTitle, facts } from '../opening/facts.ts'
import { laid } from '../opening/lay.ts'
import type { Checked, Problem } from '../opening/problem.ts'
import { findColumn, plainWord, shownHeader, type SheetColumn } from './sheet-column.ts'

type End = 'left' | 'right'

/** What a column of a sheet tells, as the caller says it. */
export interface ColumnMapping {
  readonly column: string
  readonly fact: string
  readonly end?: End | null | undefined
  /** What the words of the sheet mean; null where a word means that it is not known. */
  readonly values?: readonly { readonly cell: string; readonly value?: unknown }[] | null | undefined
}

/** What is so in every row. */
export interface SaidOnce {
  readonly fact: string
  readonly end?: End | null | undefined
  readonly value: unknown
}

export interface ScheduleMapping {
  readonly markColumn: string
  readonly idColumn?: string | null | undefined
  readonly quantityColumn?: string | null | undefined
  readonly columns: readonly ColumnMapping[]
  readonly forEveryRow?: readonly SaidOnce[] | null | undefined
  readonly lengthUnit?: 'in' | 'mm' | null | undefined
}

/** A column with the fact it tells, at one end or at both. */
export interface FactColumn extends SheetColumn {
  readonly fact: string
  readonly end: End | null
  readonly values: ReadonlyMap<string, unknown>
}

export interface MappedSheet {
  readonly mark: SheetColumn
  readonly id: SheetColumn | null
  readonly quantity: SheetColumn | null
  readonly columns: readonly FactColumn[]
  /** What is the same in every description. */
  readonly common: Readonly<Record<string, unknown>>
  /** Headers of columns that nothing is read from. */
  readonly unread: readonly string[]
}

/** Finds every column that is named, and checks what is said of it. All problems at once; of a sheet that cannot be read, what can be told without it. */
export function mapSheet(mapping: ScheduleMapping, headers: readonly string[] | null): Checked<MappedSheet> {
  const problems: Problem[] = []
  const named = (name: string, pointer: string): SheetColumn => {
    const found = headers && findColumn(name, headers)
    if (found?.ok) return found.value
    if (found) problems.push({ ...found.problem, pointer })
    return { index: -1, header: name }
  }
  const { idColumn, quantityColumn, lengthUnit } = mapping
  const said = mapping.forEveryRow ?? []
  const mark = named(mapping.markColumn, '/markColumn')
  const id = idColumn ? named(idColumn, '/idColumn') : null
  const quantity = quantityColumn ? named(quantityColumn, '/quantityColumn') : null
  const columns = mapping.columns.map(({ column, fact, end, values }, index): FactColumn => ({
    ...named(column, `/columns/${index}/column`), fact, end: end ?? null, values: new Map((values ?? []).map(({ cell, value }) => [plainWord(cell), value ?? null])),
  }))
  const places = [...mapping.columns.map((one, index) => ({ ...one, pointer: `/columns/${index}` })), ...said.map((one, index) => ({ ...one, pointer: `/forEveryRow/${index}` }))]
  problems.push(...places.flatMap(factProblems), ...saidTwice(places), ...notSaid(places), ...valueProblems(mapping, said))
  if (problems.length > 0) return { ok: false, problems }
  const read = new Set([mark, id, quantity, ...columns].map((column) => column?.index))
  const common = said.reduce<Readonly<Record<string, unknown>>>((within, one) => withValue(within, one, one.value), lengthUnit ? { lengthUnit } : {})
  return { ok: true, value: { mark, id, quantity, columns, common, unread: (headers ?? []).flatMap((header, index) => (header.trim() !== '' && !read.has(index) ? [shownHeader(header)] : [])) } }
}

/** A description with the value of a fact laid into it, at one end where one is meant. */
export function withValue(within: Readonly<Record<string, unknown>>, { fact, end }: Pick<SaidOnce, 'fact' | 'end'>, value: unknown): Readonly<Record<string, unknown>> {
  return laid(within, fact.split('.'), (before) => {
    if (!end) return value
    const [left, right] = Array.isArray(before) ? (before as unknown[]) : [null, null]
    return end === 'left' ? [value, right] : [left, value]
  })
}

type Placed = Pick<ColumnMapping, 'fact' | 'end'> & { readonly pointer: string }

function factProblems({ fact, end, pointer }: Placed): readonly Problem[] {
  const definition = facts.get(fact)
  if (!definition) return [{ code: 'unknownFact', pointer: `${pointer}/fact`, detail: `"${fact}" is not a fact. Did you mean "${closest(fact, [...facts.keys()])}"?` }]
  return end && !definition.perEnd ? [{ code: 'notAllowed', pointer: `${pointer}/end`, detail: `"${definition.title}" has no left and right.` }] : []
}

function saidTwice(places: readonly Placed[]): readonly Problem[] {
  return places.flatMap(({ fact, end, pointer }, index) => {
    const first = places.slice(0, index).find((other) => other.fact === fact && (!end || !other.end || end === other.end))
    return first ? [{ code: 'duplicate', pointer: `${pointer}/fact`, detail: `"${fact}" is said at ${first.pointer} already.` }] : []
  })
}

/** What every description must hold has to come from somewhere. */
function notSaid(places: readonly Placed[]): readonly Problem[] {
  const bare = describeOpening({ opening: {} })
  const needed = bare.ok ? [] : bare.problems.map(({ pointer }) => pointer.slice(1).replaceAll('/', '.'))
  return needed.filter((fact) => !places.some((place) => place.fact === fact)).map((fact) => ({
    code: 'missingKey', pointer: '/columns', detail: `No column tells ${fact} (${factTitle(fact)}), which every opening needs. Map one, or say it once in "forEveryRow".`,
  }))
}

/** Values that the caller writes are read once, so that a mistake in one is told once and not for every row. */
function valueProblems({ columns, lengthUnit }: ScheduleMapping, said: readonly SaidOnce[]): readonly Problem[] {
  const once = said.map((one, index) => ({ ...one, pointer: `/forEveryRow/${index}/value` }))
  const meant = columns.flatMap(({ fact, end, values }, index) => (values ?? []).map(({ value }, word) => ({ fact, end, value: value ?? null, pointer: `/columns/${index}/values/${word}/value` })))
  return [...once, ...meant].flatMap(({ pointer, ...one }) => {
    const definition = facts.get(one.fact)
    if (!definition || one.value === null) return []
    const end = definition.perEnd ? one.end : null
    const read = describePart(withValue(lengthUnit ? { lengthUnit } : {}, { ...one, end }, one.value))
    return read.ok ? [] : read.problems.map(({ code, detail }) => ({ code, detail, pointer }))
  })
}
