import { angleKinds } from '../angle.ts'
import type { FlashingPlace } from '../blank-places.ts'
import { dimensionLine, dimensionRoom, type Measure } from '../dimension-line.ts'
import type { Frame } from '../drawn.ts'
import { ends, flashingRunsOn, type End } from '../known.ts'
import { dimensionText } from '../length-words.ts'
import type { Group } from '../shape.ts'
import { jointMeasures, jointedJambs } from './movement-joints.ts'
import type { SplicePlaces } from './splice-places.ts'
import { spliceMeasures } from './splices.ts'
import type { WallExtent } from './wall-extent.ts'

/** Lintels that are drawn as a beam with its bearings, under a flat head. */
const beams: readonly string[] = ['precastLintel', 'reinforcedMasonryLintel', 'woodMember']

export interface Room {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  /** Upper and lower edge of what is drawn of the wall. */
  readonly headLine: number
  readonly footLine: number
}

/** The splices of both flashings. */
export type Splicings = Readonly<Record<FlashingPlace, SplicePlaces>>

export interface Dimensioned {
  readonly view: Room
  /** Where the upright measures stand. */
  readonly edge: number
  readonly splicings: Splicings
}

/** The measures of an elevation: bearings, flashing and joints over it, the opening under it and beside it. */
export function elevationDimensions(frame: Frame, wall: WallExtent, { view, edge, splicings }: Dimensioned): readonly Group[] {
  const { known } = frame
  const room = view.right - view.left
  const over = [
    ...(bears(frame) ? [pastJambs(frame, wall, 'head.support.bearing', 'bearing')] : []),
    ...(hasFlashingEnds(known) ? [pastJambs(frame, wall, 'head.flashing.extensionPastJamb', 'flashing')] : []),
    spliceMeasures(frame, 'head', splicings.head, room), jointMeasures(frame, wall),
  ].filter((measures) => measures.length > 0)
  const under = known.flag('sill.flashing.present') === true ? pastJambs(frame, wall, 'sill.flashing.extensionPastJamb', 'sill flashing') : []
  const sillLaps = spliceMeasures(frame, 'sill', splicings.sill, room)
  const width = [measure(frame, 'opening.width', ['x', 0, wall.width], '')]
  const horizontal = (measures: readonly Measure[], at: number, from: number, side: 'before' | 'after') => dimensionLine({ along: 'x', at, from, least: view.left, greatest: view.right, side, measures })
  const { headLine, footLine } = view
  return [
    ...over.map((measures, index) => horizontal(measures, headLine - 3 - index * dimensionRoom, headLine - 0.8, 'before')).toReversed(),
    ...[sillLaps, under, width].filter((measures) => measures.length > 0).map((measures, index) => horizontal(measures, footLine + 3 + index * dimensionRoom, footLine + 0.8, 'after')).toReversed(),
    dimensionLine({ along: 'y', at: edge, from: edge + 3, least: view.top, greatest: view.bottom, side: 'before', measures: upright(frame, wall) }),
  ]
}

/** How many lines lie over and under the wall. */
export function rowsOfDimensions(known: Frame['known'], { head, sill }: Splicings): { readonly over: number; readonly under: number } {
  const counted = (...rows: readonly boolean[]) => rows.filter(Boolean).length
  return {
    over: counted(bears({ known }), hasFlashingEnds(known), head.laps.length > 0, jointedJambs(known).length > 0),
    under: counted(sill.laps.length > 0, known.flag('sill.flashing.present') === true, true),
  }
}

function hasFlashingEnds(known: Frame['known']): boolean {
  return known.flag('head.flashing.present') !== false && !flashingRunsOn(known)
}

function bears({ known }: Pick<Frame, 'known'>): boolean {
  const kind = known.choice('head.support.kind')
  return kind !== undefined && kind !== 'shelfAngle' && (angleKinds.includes(kind) || (beams.includes(kind) && (known.choice('opening.headShape') ?? 'flat') === 'flat'))
}

function pastJambs(frame: Frame, wall: WallExtent, path: string, what: string): readonly Measure[] {
  const { known, at, system } = frame
  return ends.flatMap((end): readonly Measure[] => {
    const length = known.length(path, end)
    if (length === undefined) return [{ ...along(at, outside(end, 100, wall.width)), text: `${what} ?`, name: `${path}:${end}`, known: false }]
    if (length <= 0) return []
    return [{ ...along(at, outside(end, length, wall.width)), text: `${what} ${dimensionText(length, system)}`, name: `${path}:${end}`, known: true }]
  })
}

function outside(end: End, length: number, width: number): readonly [number, number] {
  return end === 'left' ? [-length, 0] : [width, width + length]
}

function along(at: Frame['at'], [from, to]: readonly [number, number]): Pick<Measure, 'from' | 'to'> {
  return { from: at(from, 0)[0], to: at(to, 0)[0] }
}

function measure({ known, at, system }: Frame, path: string, [axis, from, to]: readonly ['x' | 'y', number, number], before: string): Measure {
  const length = known.length(path) ?? Math.abs(to - from)
  const index = axis === 'x' ? 0 : 1
  const place = (value: number) => (axis === 'x' ? at(value, 0) : at(0, value))[index]
  return { from: place(from), to: place(to), text: `${before}${dimensionText(length, system)}`, name: path, known: true }
}

function upright(frame: Frame, wall: WallExtent): readonly Measure[] {
  const { known } = frame
  const courses = known.result('coursing.to-head')
  const counted = courses?.status === 'computed' ? ` (${courses.text} courses)` : ''
  const height = measure(frame, 'opening.height', ['y', 0, wall.height], '')
  const above = known.length('opening.sillAboveGrade')
  const shown = wall.grade === undefined ? [] : [measure(frame, 'opening.sillAboveGrade', ['y', wall.grade, 0], 'to grade ')]
  return [{ ...height, text: `${height.text}${counted}` }, ...(above === undefined || above === 0 ? [] : shown)]
}
