import type { Table } from '../catalog/reference.ts'
import { readQuantity } from '../units/quantity.ts'
import { combined, fact, parameter, table, type Need } from './need.ts'

/** A brick and how it is coursed, in nanometres. */
export interface Brick {
  readonly thickness: number
  readonly height: number
  readonly length: number
  /** One course with its bed joint. */
  readonly course: number
  /** A head joint. */
  readonly joint: number
}

type Row = Table['rows'][number]
type Size = Omit<Brick, 'joint'>

/** The brick of this wall, with the joint of standard coursing. */
export const brick: Need<Brick> = combined(
  { bricks: table('masonry.brick-units'), unit: fact.choice('wall.veneer.unit'), joint: parameter('masonry.joint-thickness') },
  ({ bricks, unit, joint }) => ({ ...sizeOf(bricks, unit), joint }),
)

/** The length of one brick. */
export const brickLength: Need<number> = combined({ brick }, ({ brick }) => brick.length)

/** Whole courses in a height; three courses in 8 in leave a part of a nanometre, which is not counted against them. */
export function coursesIn(height: number, course: number): number {
  return Math.floor((height + 1) / course)
}

/** Tables are read once: an evaluation asks for the brick several times. */
const sizesRead = new WeakMap<Table, ReadonlyMap<string, Size>>()

function sizeOf(bricks: Table, unit: string): Size {
  const sizes = sizesRead.get(bricks) ?? new Map(bricks.rows.map((row) => [textIn(row, 'unit'), read(row)]))
  sizesRead.set(bricks, sizes)
  const size = sizes.get(unit)
  if (!size) throw new Error(`table ${bricks.table} has no brick ${unit}`)
  return size
}

function read(row: Row): Size {
  return { thickness: amountIn(row, 'thickness'), height: amountIn(row, 'height'), length: amountIn(row, 'length'), course: amountIn(row, 'coursingHeight') / Number(row['courses']) }
}

/** A cell that cannot be read is a fault of the catalog. */
function amountIn(row: Row, column: string): number {
  const quantity = readQuantity(textIn(row, column))
  if (!quantity) throw new Error(`table of bricks, ${textIn(row, 'unit')}: ${column} is not an amount`)
  return quantity.amount
}

/** Inch figures are the published ones; metric brick is another size. */
function textIn(row: Row, column: string): string {
  const cell = row[column]
  return typeof cell === 'object' && cell !== null ? cell.inchPound : String(cell)
}
