import { cellText, type Table } from '../catalog/reference.ts'
import { readQuantity } from '../units/quantity.ts'
import { asksOf, foundOnce, table, type Found, type Need } from './need.ts'

/** What a book gives for a joint: liters of mortar for so many bricks. */
export interface MortarRow {
  readonly title: string
  /** The brick and wall that the book has in mind. */
  readonly about: string
  /** The standard name of the brick, where the book is about one of them. */
  readonly unit: string | undefined
  readonly joint: number
  readonly bricks: number
  readonly mortar: number
  readonly waste: string
}

type Row = Table['rows'][number]

const books = ['masonry.mortar', 'masonry.mortar-per-thousand', 'masonry.mortar-modular', 'masonry.mortar-builders-course', 'masonry.mortar-eighth-meter'].map(table)

/** The rows of every book that is there; they disagree, and none is left out. */
export const mortarBooks: Need<readonly MortarRow[]> = foundOnce({
  asks: asksOf(...books),
  find: (inputs) => {
    const found = books.map((book) => book.find(inputs)).filter(isThere)
    return { known: true, value: found.flatMap(({ value }) => rowsOf(value)), used: found.flatMap(({ used }) => used), sources: found.flatMap(({ sources }) => sources), assumptions: [] }
  },
})

/** The columns of a book as an earlier release printed it do not say what it has in mind; it is left out. */
function isThere(found: Found<Table>): found is Extract<Found<Table>, { known: true }> {
  return found.known && ['joint', 'bricks', 'mortar', 'waste'].every((column) => Object.hasOwn(found.value.columns, column))
}

/** Tables are read once. */
const read = new WeakMap<Table, readonly MortarRow[]>()

function rowsOf(book: Table): readonly MortarRow[] {
  const ready = read.get(book) ?? book.rows.map((row) => rowOf(book, row))
  read.set(book, ready)
  return ready
}

function rowOf({ table: id, title, locator }: Table, row: Row): MortarRow {
  const amount = (column: string) => {
    const quantity = readQuantity(cellText(row[column]))
    if (!quantity) throw new Error(`table ${id}: ${column} is not an amount`)
    return quantity.amount
  }
  return { title, about: locator, unit: row['unit'] === undefined ? undefined : cellText(row['unit']), joint: amount('joint'), bricks: amount('bricks'), mortar: amount('mortar'), waste: cellText(row['waste']) }
}
