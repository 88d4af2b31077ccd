import { closest, distance } from 'fastest-levenshtein'
import { describeOpening } from '../opening/describe.ts'
import type { FactDefinition } from '../opening/fact.ts'
import { facts } from '../opening/facts.ts'
import type { Problem } from '../opening/problem.ts'
import { withValue, type FactColumn, type MappedSheet } from './schedule-mapping.ts'
import { plainWord } from './sheet-column.ts'

/** What is wrong in a sheet: the row as a spreadsheet counts it, and the header of the column; null where it is the whole row. */
export interface RowProblem {
  readonly row: number
  readonly column: string | null
  readonly code: string
  readonly detail: string
}

export interface SheetRow {
  /** As a spreadsheet counts it: the first row of the sheet is 1. */
  readonly row: number
  readonly cells: readonly string[]
}

/** One row as a description of an opening, with everything that is wrong in it. */
export interface ReadRow {
  readonly row: number
  readonly mark: string
  readonly id: string
  /** How many openings are so; null where the sheet does not count them. */
  readonly quantity: number | null
  readonly description: Readonly<Record<string, unknown>>
  readonly problems: readonly RowProblem[]
}

/** A description from a row: an empty cell is a fact that is not known. */
export function readRow(sheet: MappedSheet, { row, cells }: SheetRow): ReadRow {
  const at = (index: number) => (cells[index] ?? '').trim()
  const mark = at(sheet.mark.index)
  const read = sheet.columns.map((column) => ({ column, ...valueOf(column, at(column.index)) }))
  const description = read.reduce<Readonly<Record<string, unknown>>>((within, { column, value }) => (value === undefined ? within : withValue(within, column, value)), { reference: mark, ...sheet.common })
  const counted = quantityIn(sheet, at)
  const own = [
    ...(mark === '' ? [{ column: sheet.mark.header, code: 'missingKey', detail: 'The cell is empty; every opening needs a mark.' }] : []),
    ...counted.problems,
    ...read.flatMap(({ column, problem }) => (problem ? [{ column: column.header, ...problem }] : [])),
  ]
  const wrong = new Set(read.flatMap(({ column, problem }) => (problem ? [column.fact] : [])))
  const problems = [...own, ...describedProblems(description, sheet).filter(({ fact }) => !wrong.has(fact)).map(({ column, code, detail }) => ({ column, code, detail }))]
  return { row, mark, id: sheet.id ? at(sheet.id.index) : mark, quantity: counted.quantity, description, problems: problems.map((problem) => ({ row, ...problem })) }
}

type CellProblem = Pick<RowProblem, 'code' | 'detail'>

function valueOf({ fact, values }: FactColumn, cell: string): { readonly value?: unknown; readonly problem?: CellProblem } {
  if (cell === '') return {}
  const meant = values.get(plainWord(cell))
  if (meant !== undefined) return meant === null ? {} : { value: meant }
  const definition = facts.get(fact)
  if (definition?.kind === 'boolean') return booleanOf(cell)
  if (definition?.kind === 'choice') return choiceOf(definition, cell)
  if (definition?.dimension === 'count') return /^\d+$/.test(cell) ? { value: Number(cell) } : { problem: { code: 'wrongType', detail: `"${cell}" is not a whole number.` } }
  return { value: cell }
}

function booleanOf(cell: string): { readonly value?: boolean; readonly problem?: CellProblem } {
  const word = plainWord(cell)
  if (['yes', 'y', 'true'].includes(word)) return { value: true }
  if (['no', 'n', 'false'].includes(word)) return { value: false }
  return { problem: { code: 'notAllowed', detail: `"${cell}" is neither yes nor no. Say in the "values" of this column what it means.` } }
}

/** "Jack arch" is as good as "jackArch". */
function choiceOf({ title, choices = [] }: FactDefinition, cell: string): { readonly value?: string; readonly problem?: CellProblem } {
  const letters = (text: string) => text.toLowerCase().replace(/[^a-z0-9]/g, '')
  const choice = choices.find((one) => letters(one) === letters(cell))
  if (choice !== undefined) return { value: choice }
  const near = closest(cell.slice(0, 80), choices)
  const guess = distance(cell.toLowerCase(), near.toLowerCase()) <= 2 ? ` Did you mean "${near}"?` : ''
  return { problem: { code: 'notAllowed', detail: `"${cell}" is none of the choices of "${title}": ${choices.join(', ')}.${guess} Say in the "values" of this column what it means.` } }
}

const mostOfOneRow = 1_000

function quantityIn({ quantity }: MappedSheet, at: (index: number) => string): { readonly quantity: number | null; readonly problems: readonly (CellProblem & { readonly column: string })[] } {
  if (!quantity) return { quantity: null, problems: [] }
  const cell = at(quantity.index)
  const count = /^\d{1,5}$/.test(cell) ? Number(cell) : 0
  if (count >= 1 && count <= mostOfOneRow) return { quantity: count, problems: [] }
  const detail = cell === '' ? 'The cell is empty; say how many openings are so.' : `"${cell}" is not a number of openings from 1 to ${mostOfOneRow}.`
  return { quantity: 1, problems: [{ column: quantity.header, code: cell === '' ? 'missingKey' : 'outOfRange', detail }] }
}

/** The problems of the description, each with the column that it comes from. */
function describedProblems(description: unknown, sheet: MappedSheet): readonly (CellProblem & { readonly column: string | null; readonly fact: string })[] {
  const described = describeOpening(description)
  if (described.ok) return []
  return described.problems.map(({ code, pointer, detail }: Problem) => {
    const keys = pointer.slice(1).split('/')
    const end = keys.at(-1) === '0' ? 'left' : keys.at(-1) === '1' ? 'right' : null
    const fact = (end ? keys.slice(0, -1) : keys).join('.')
    const column = sheet.columns.find((one) => one.fact === fact && (end === null || one.end === null || one.end === end))
    const header = column?.header ?? (fact === 'reference' ? sheet.mark.header : null)
    return { fact, code, column: header, detail: code === 'missingKey' ? `The cell is empty; ${facts.get(fact)?.title.toLowerCase() ?? fact} is needed for every opening.` : detail }
  })
}
