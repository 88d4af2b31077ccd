import type { UnitSystem } from '../../units/dimension.ts'
import { dimensionText } from '../length-words.ts'
import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { ties } from '../elevation/ties.ts'
import { numberIn, type Known, type Row } from '../known.ts'
import { box, part } from '../shape.ts'

/** The wall to which the layout belongs, from the lower left corner of the opening. */
export interface WallEnds {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

export function wallEnds(known: Known): WallEnds | undefined {
  const row = known.rows('wall.around-opening')?.[0]
  const [left, right, bottom, top] = [0, 1, 2, 3].map((column) => numberIn(row, column))
  if (left === undefined || right === undefined || bottom === undefined || top === undefined || !known.rows('ties.field-grid')) return undefined
  return { left, right, bottom, top }
}

/** Every tie of the wall around the opening, as the layout has it. */
export function tiePlan(frame: Frame, ends: WallEnds, width: number, height: number): Drawn {
  const { at } = frame
  const plan = ties(frame, { left: -Infinity, right: Infinity, bottom: -Infinity, top: Infinity })
  if (plan.shapes.length === 0) return nothing
  const shapes = [box('outline', at(ends.left, ends.bottom), at(ends.right, ends.top)), part('opening', [box('outline', at(0, 0), at(width, height))])]
  return { ...plan, shapes: [part('wall', shapes), ...plan.shapes] }
}

/** Columns and rows of the field, and what the edges of the opening need beside. */
export function tieList({ known, system }: Frame): string | undefined {
  const rows = known.rows('ties.field-grid')
  if (!rows) return undefined
  const field = rows.filter((row) => String(row[2]).includes('field'))
  const distinct = (column: number) => [...new Set(field.map((row) => numberIn(row, column) ?? 0))].toSorted((a, b) => a - b).map((place) => dimensionText(place, system)).join(', ')
  const added = rows.filter((row) => !String(row[2]).includes('field')).map((row) => `${dimensionText(numberIn(row, 0) ?? 0, system)} / ${dimensionText(numberIn(row, 1) ?? 0, system)}`)
  const edges = added.length === 0 ? '' : ` Added along the opening, across / up: ${added.join('; ')}.`
  return `${rows.length} ties. Columns from the left end of the wall: ${distinct(0)}. Rows above its foot: ${distinct(1)}.${closeRow(field, known, system)}${edges}`
}

/** Why the last row lies close over the one below: rows go up from the foot as far apart as they may, and the top has what is left over. */
function closeRow(field: readonly Row[], known: Known, system: UnitSystem): string {
  const levels = [...new Set(field.map((row) => numberIn(row, 1) ?? 0))].toSorted((a, b) => a - b)
  const [below, last] = levels.slice(-2)
  const [foot, top] = [2, 3].map((column) => numberIn(known.rows('wall.around-opening')?.[0], column))
  const apart = Math.max(...levels.slice(1, -1).map((level, index) => level - (levels[index] ?? 0)))
  if (below === undefined || last === undefined || foot === undefined || top === undefined || levels.length < 3 || last - below > apart - unseen) return ''
  return ` The top row lies ${dimensionText(last - below, system)} over the one below it: without it ${dimensionText(top - foot - below, system)} of brick over that row would hang on it, more than half of the ${dimensionText(apart, system)} between rows.`
}

const unseen = 1e-3
