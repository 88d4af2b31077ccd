import { tiesAlongEdge, type EdgeOfOpening, type EdgeTies, type FieldAtEdge } from './tie-edges.ts'
import { tieColumns, tieRows } from './tie-grid.ts'
import type { Point, Rectangle } from './tributary-area.ts'
import type { WallPanel } from './wall-panel.ts'

/** What a layout goes by; lengths in nanometres. */
export interface TieDemand extends WallPanel {
  readonly across: number
  readonly up: number
  /** A course with its joint, or 1 where ties may stand at any height. */
  readonly course: number
  readonly isLarge: boolean
  readonly hasSill: boolean
  readonly distance: number
  readonly edgeSpacing: number
}

/** One tie: where it stands and what it is for, "field" or a side of the opening. */
export interface Tie extends Point {
  readonly serves: readonly string[]
}

export interface TieLayout {
  readonly columns: readonly number[]
  readonly rows: readonly number[]
  readonly ties: readonly Tie[]
  readonly inOpening: number
  readonly added: number
}

interface Side {
  readonly name: string
  readonly isUpright: boolean
  readonly edge: EdgeOfOpening
}

/** A grid of ties over the panel without those in the opening, and what the edges of a large opening lack. */
export function layOutTies(demand: TieDemand): TieLayout {
  const { panel, opening, across, up, course } = demand
  const columns = tieColumns(panel.right, across)
  const rows = tieRows(panel.top, up, course)
  const everywhere = rows.flatMap((y) => columns.map((x): Tie => ({ x, y, serves: inField })))
  const field = everywhere.filter((place) => !isOn(place, opening))
  const edges = demand.isLarge ? sidesOf(demand).flatMap((side) => alongSide(side, columns, rows, demand)) : []
  const ties = together([...field, ...edges])
  return { columns, rows, ties, inOpening: everywhere.length - field.length, added: ties.length - field.length }
}

const inField = ['field']

function sidesOf({ panel, opening, distance, hasSill }: TieDemand): readonly Side[] {
  const { left, right, bottom, top } = opening
  const jambs = [
    { name: 'left jamb', isUpright: true, edge: { from: bottom, to: top, near: left, far: Math.max(panel.left, left - distance) } },
    { name: 'right jamb', isUpright: true, edge: { from: bottom, to: top, near: right, far: Math.min(panel.right, right + distance) } },
  ]
  const head = { name: 'head', isUpright: false, edge: { from: left, to: right, near: top, far: Math.min(panel.top, top + distance) } }
  const sill = { name: 'sill', isUpright: false, edge: { from: left, to: right, near: bottom, far: Math.max(panel.bottom, bottom - distance) } }
  return [...jambs, head, ...(hasSill ? [sill] : [])]
}

function alongSide({ name, isUpright, edge }: Side, columns: readonly number[], rows: readonly number[], { panel, across, up, course, distance, edgeSpacing }: TieDemand): readonly Tie[] {
  const field: FieldAtEdge = isUpright ? { lines: columns, places: rows, lineStep: 1, placeStep: course, lineSpacing: across } : { lines: rows, places: columns, lineStep: course, placeStep: 1, lineSpacing: up }
  const found = tiesAlongEdge(edge, field, distance, edgeSpacing)
  return found ? placesOf(found, isUpright).filter((place) => isStrictlyIn(place, panel)).map((place) => ({ ...place, serves: [name] })) : []
}

function placesOf({ line, standing, added }: EdgeTies, isUpright: boolean): readonly Point[] {
  return [...standing, ...added].map((place) => (isUpright ? { x: line, y: place } : { x: place, y: line }))
}

/** One tie for each place, with everything it serves; from the foot up and from the left. */
function together(ties: readonly Tie[]): readonly Tie[] {
  const rows = new Map<number, Map<number, Tie>>()
  for (const tie of ties) {
    const row = rows.get(tie.y) ?? new Map<number, Tie>()
    const here = row.get(tie.x)
    row.set(tie.x, here ? { ...tie, serves: [...here.serves, ...tie.serves] } : tie)
    rows.set(tie.y, row)
  }
  return [...rows.values()].flatMap((row) => [...row.values()]).toSorted((one, other) => one.y - other.y || one.x - other.x)
}

/** On its edge too: a tie has no mortar around it there. */
function isOn({ x, y }: Point, { left, right, bottom, top }: Rectangle): boolean {
  return x >= left && x <= right && y >= bottom && y <= top
}

function isStrictlyIn({ x, y }: Point, { left, right, bottom, top }: Rectangle): boolean {
  return x > left && x < right && y > bottom && y < top
}
