import { millimetres } from '../units/length.ts'
import { exactLengthText, inchText } from '../units/quantity-text.ts'
import { combined, fact, limit, optional, result, type Need } from './need.ts'
import { stepsIn } from './tie-grid.ts'
import { layOutTies, type TieDemand, type TieLayout } from './tie-layout.ts'
import { courseHeight, hasSill, isLargeOpening, tieColumnSpacing } from './tie-needs.ts'
import { tributaryAreas, type Rectangle } from './tributary-area.ts'
import { brickArea, isInPanel, wallPanel, type WallPanel } from './wall-panel.ts'

/** Bounds the computing: areas take the square of it. */
const mostTies = 500

/** The vertical spacing is the least of the code's and of what the wind leaves, in whole courses. */
export const tieDemand: Need<TieDemand> = combined(
  {
    wall: wallPanel, across: tieColumnSpacing, byCode: result('ties.spacing-allowed'), byWind: optional(result('ties.spacing-for-wind')), course: courseHeight,
    isLarge: isLargeOpening, kind: fact.choice('opening.kind'), distance: limit('tie.opening-distance'), edgeSpacing: limit('tie.opening-spacing'),
  },
  ({ wall, byCode, byWind, course = 1, kind, ...rest }): TieDemand => {
    const up = Math.min(byCode, byWind ?? byCode)
    return { ...wall, ...rest, up: stepsIn(up, course) * course, course, hasSill: hasSill(kind) }
  },
)

/** A layout with the lines that show it, or why there is none. */
export type TiePlan = { readonly layout: TieLayout; readonly steps: readonly string[] } | { readonly reason: 'methodDoesNotHold'; readonly why: string }

export function planTies(demand: TieDemand): TiePlan {
  const why = unfit(demand)
  if (why !== undefined) return { reason: 'methodDoesNotHold', why }
  const layout = layOutTies(demand)
  return { layout, steps: stepsOf(demand, layout) }
}

/** The area that each tie serves, in mm². */
export function areasOf(wall: WallPanel, { ties }: TieLayout): readonly number[] {
  const { panel, opening } = inMillimetres(wall)
  return tributaryAreas(ties.map(({ x, y }) => ({ x: millimetres(x), y: millimetres(y) })), panel, opening)
}

/** Brick in the panel, in mm². */
export function netArea(wall: WallPanel): number {
  return brickArea(inMillimetres(wall))
}

function unfit(demand: TieDemand): string | undefined {
  if (!isInPanel(demand)) return 'The opening does not lie within the wall that is described; check the brick beside, below and above it.'
  if (demand.up < demand.course) return 'Ties would have to be closer than one course; the wall needs stronger ties or closer columns.'
  if (demand.panel.top <= demand.course) return 'The wall is not higher than one course.'
  const { right, top } = demand.panel
  const grid = Math.ceil(right / demand.across) * Math.ceil(top / demand.up)
  return grid > mostTies ? `The wall is so large that it takes more than ${mostTies} ties; describe the part between two movement joints.` : undefined
}

function stepsOf({ panel, across, up, course }: TieDemand, { columns, rows, ties, inOpening, added }: TieLayout): readonly string[] {
  const inCourses = course === 1 ? '' : `, every ${stepsIn(up, course)} courses`
  return [
    `${exactLengthText(panel.right)} by ${exactLengthText(panel.top)}: ${columns.length} columns ${exactLengthText(across)} apart, ${rows.length} rows no more than ${shown(up)} apart${inCourses}`,
    `${columns.length} × ${rows.length} − ${inOpening} in the opening + ${added} added along its edges = ${ties.length}`,
  ]
}

function inMillimetres({ panel, opening }: WallPanel): WallPanel {
  return { panel: scaled(panel), opening: scaled(opening) }
}

function scaled({ left, right, bottom, top }: Rectangle): Rectangle {
  return { left: millimetres(left), right: millimetres(right), bottom: millimetres(bottom), top: millimetres(top) }
}

function shown(nanometres: number): string {
  return inchText(Math.round(nanometres))
}
