import { cellText, type Table } from '../catalog/reference.ts'
import { onceFor } from '../opening/once-for.ts'
import { readQuantity } from '../units/quantity.ts'

/** A cell of a table on rain in base units; one that cannot be read is a fault of the catalog. */
export function cellAmount(table: Table, row: Row, column: string): number {
  const known = amountsIn(row)
  const amount = known.get(column) ?? readAmount(table, row, column)
  known.set(column, amount)
  return amount
}

type Row = Table['rows'][number]

/** Cells are read once. */
const amountsIn = onceFor<Row, Map<string, number>>(() => new Map())

function readAmount(table: Table, row: Row, column: string): number {
  const quantity = readQuantity(cellText(row[column]))
  if (!quantity) throw new Error(`table ${table.table}: ${column} "${cellText(row[column])}" is not an amount`)
  return quantity.amount
}

/** The row whose column says this; a choice of the description without a row is a fault of the catalog. */
export function rowOf(table: Table, column: string, says: string): Row {
  const row = table.rows.find((one) => cellText(one[column]) === says)
  if (!row) throw new Error(`table ${table.table} has no ${column} ${says}`)
  return row
}

/** The first row whose bound lies above an amount; the last one has no bound. */
export function rowBelow(table: Table, column: string, amount: number): Row {
  const row = table.rows.find((one) => one[column] === null || amount < cellAmount(table, one, column))
  if (!row) throw new Error(`table ${table.table} has no row without a bound`)
  return row
}
