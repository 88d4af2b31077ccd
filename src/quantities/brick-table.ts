import { cellText, type Table } from '../catalog/reference.ts'
import { readQuantity } from '../units/quantity.ts'
import { asksOf, fact, foundOnce, table, type Found, type Need } from './need.ts'

/** A brick of a standard name as its table has it. Lengths in nanometres, the count per m². */
export interface NamedBrick {
  readonly unit: string
  readonly thickness: number
  readonly height: number
  readonly length: number
  /** One course with its bed joint. */
  readonly course: number
  /** The joint that goes with the coursing, where the table gives one. */
  readonly joint: number | undefined
  /** How many a published table counts, and where that one stands. */
  readonly published: { readonly perArea: number; readonly where: string } | undefined
}

type Row = Table['rows'][number]

const unit = fact.choice('wall.veneer.unit')
const tables = [table('masonry.brick-units'), table('masonry.metric-brick-units'), table('masonry.eighth-meter-brick-units')]

/** Tables are read once: an evaluation asks for the brick several times. */
const read = new WeakMap<Table, ReadonlyMap<string, NamedBrick>>()

/** The brick of the standard name, with the table that has it as its only source. */
export const namedBrick: Need<NamedBrick> = foundOnce({
  asks: asksOf(unit, ...tables),
  find: (inputs) => {
    const name = unit.find(inputs)
    if (!name.known) return name
    const found = tables.map((one) => one.find(inputs))
    const inTables = found.flatMap((one) => inTable(one, name))
    return inTables[0] ?? unlisted(name.value, found)
  },
})

function inTable(found: Found<Table>, name: Extract<Found<string>, { known: true }>): readonly Found<NamedBrick>[] {
  if (!found.known) return []
  const bricks = read.get(found.value) ?? new Map(found.value.rows.map((row) => [cellText(row['unit']), brickOf(found.value, row)]))
  read.set(found.value, bricks)
  const value = bricks.get(name.value)
  return value ? [{ ...found, value, used: [...found.used, ...name.used] }] : []
}

/** It may stand in a table that is not there; where all of them are, the catalog is at fault. */
function unlisted(name: string, found: readonly Found<Table>[]): Found<NamedBrick> {
  const missing = found.flatMap((one) => (one.known ? [] : one.missing))
  if (missing.length === 0) throw new Error(`no table of bricks has ${name}`)
  return { known: false, missing }
}

function brickOf({ columns }: Table, row: Row): NamedBrick {
  const course = amountIn(row, 'coursingHeight') / Number(row['courses'])
  const joint = row['joint'] === undefined ? undefined : amountIn(row, 'joint')
  const sizes = { thickness: amountIn(row, 'thickness'), height: amountIn(row, 'height'), length: amountIn(row, 'length') }
  return { unit: cellText(row['unit']), ...sizes, course, joint, published: publishedIn(columns, row) }
}

const counts = [['unitsPerSquareFootPublished', '/[ft_i]2'], ['unitsPerSquareMeterPublished', '/m2']] as const

function publishedIn(columns: Table['columns'], row: Row): NamedBrick['published'] {
  const [given] = counts.filter(([column]) => row[column] !== undefined && row[column] !== null)
  if (!given) return undefined
  const [column, per] = given
  return { perArea: amountOf(`${cellText(row[column])} ${per}`, row, column), where: columns[column] ?? '' }
}

/** Inch figures are the published ones where a cell has both; a metric brick is another size. */
function amountIn(row: Row, column: string): number {
  return amountOf(cellText(row[column]), row, column)
}

/** A cell that cannot be read is a fault of the catalog. */
function amountOf(text: string, row: Row, column: string): number {
  const quantity = readQuantity(text)
  if (!quantity) throw new Error(`table of bricks, ${cellText(row['unit'])}: ${column} is not an amount`)
  return quantity.amount
}
