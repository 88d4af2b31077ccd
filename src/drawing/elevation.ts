import type { FullEvaluation } from '../evaluation/evaluate.ts'
import type { Opening } from '../opening/opening.ts'
import { balloonRoom, balloons, roomForBalloons } from './balloon.ts'
import { dimensionRoom } from './dimension-line.ts'
import { together, type Drawn, type Frame } from './drawn.ts'
import { elevationDimensions, rowsOfDimensions, type Room, type Splicings } from './elevation/elevation-dimensions.ts'
import { baseFlashing, baseWeeps } from './elevation/base-weeps.ts'
import { wallFace } from './elevation/bond.ts'
import { filling } from './elevation/filling.ts'
import { drawnUpstand, flashingLevel, headFlashing, headPanEnds } from './elevation/head-flashing.ts'
import { headCourse } from './elevation/head-course.ts'
import { lintel } from './elevation/lintel.ts'
import { jointedJambs, movementJoints } from './elevation/movement-joints.ts'
import { phaseOf, sill, sillHeight, sillLevel, sillPanEnds } from './elevation/sill.ts'
import { splicePlaces } from './elevation/splice-places.ts'
import { splices } from './elevation/splices.ts'
import { ties } from './elevation/ties.ts'
import { wallExtent, type WallExtent } from './elevation/wall-extent.ts'
import { weeps } from './elevation/weeps.ts'
import { knownOf, type Known } from './known.ts'
import { calledOutIn } from './callouts.ts'
import { scaleFor } from './scale.ts'
import { boundsOf, part, strokes, type Shape } from './shape.ts'
import { insideWidth, type SheetContent } from './sheet.ts'

const dimensionColumn = 9
const tallest = 150
const lowest = 60
/** Of signs and pens past what they stand for. */
const overshoot = 2

/** The front of the wall around the opening, seen from outside. */
export function elevation(opening: Opening, evaluation: FullEvaluation): Omit<SheetContent, 'title' | 'subtitle'> | undefined {
  const known = knownOf(opening, evaluation)
  const wall = wallExtent(known)
  if (!wall) return undefined
  const splicings = splicingsOf(known, wall)
  const { over, under } = rowsOfDimensions(known, splicings)
  const room = { left: dimensionColumn + balloonRoom, right: insideWidth - balloonRoom, top: over * dimensionRoom + 2, bottom: 0 }
  const bounds = extentOf(known, opening, wall, splicings)
  const scale = scaleFor(opening.unitSystem, [[bounds.right - bounds.left, room.right - room.left - 2 * overshoot], [bounds.top - bounds.bottom, tallest]])
  const drawnAt = (height: number) => {
    const frame = frameOf(known, opening, { scale: 1 / scale.ratio, middle: (room.left + room.right) / 2, top: room.top + (height - (bounds.top - bounds.bottom) / scale.ratio) / 2, bounds })
    const drawn = together(partsOf(frame, wall, splicings))
    return { frame, height, drawn, calledOut: calledOutIn(new Map(drawn.anchors), evaluation) }
  }
  const wanted = Math.max(lowest, (bounds.top - bounds.bottom) / scale.ratio + overshoot)
  const first = drawnAt(wanted)
  const crowded = roomForBalloons(Math.ceil(first.calledOut.groups.length / 2))
  const { frame, height, drawn, calledOut } = crowded > wanted ? drawnAt(crowded) : first
  const spare = (height - (bounds.top - bounds.bottom) / scale.ratio) / 2
  const view: Room = { ...room, bottom: room.top + height, headLine: room.top + spare, footLine: room.top + height - spare }
  const shapes: Shape[] = [
    ...drawn.shapes, ...elevationDimensions(frame, wall, { view, edge: dimensionColumn - 3, splicings }),
    balloons(calledOut.groups, { left: dimensionColumn + balloonRoom / 2 - 2, right: insideWidth - balloonRoom / 2 + 2, top: view.top, bottom: view.bottom }),
  ]
  return {
    view: { height: view.bottom + under * dimensionRoom + 3, shapes }, scale: `Scale ${scale.text} when printed at full size. Flashing, weeps and ties are drawn heavier.${opening.unitSystem === 'si' ? ' Millimeters.' : ''}`,
    calledOut, unknown: known.lacking(), notes: drawn.notes,
    key: [['sheetMetal', 'flashing, bearing'], ['weep', 'weep, as laid out'], ['tie', 'tie, as laid out'], ['hidden', 'behind the brick'], ...(jointedJambs(known).length > 0 ? [['movementJoint', 'movement joint'] as const] : []), ['unknown', 'not known']],
  }
}

interface Placing {
  readonly scale: number
  readonly middle: number
  readonly top: number
  readonly bounds: Extent
}

function frameOf(known: Known, { unitSystem }: Opening, { scale, middle, top, bounds }: Placing): Frame {
  const center = (bounds.left + bounds.right) / 2
  return { known, system: unitSystem, scale, at: (x, y) => [middle + (x - center) * scale, top + (bounds.top - y) * scale] }
}

/** From where to where anything lies, in millimeters of wall: parts may run on past the end of the brick. */
interface Extent {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

function extentOf(known: Known, { unitSystem }: Opening, wall: WallExtent, splicings: Splicings): Extent {
  const drawn = partsOf({ known, system: unitSystem, scale: 1, at: (x, y) => [x, -y] }, wall, splicings).flatMap(({ shapes }) => shapes)
  const { left, right, top, bottom } = boundsOf(drawn)
  return { left: Math.min(left, wall.left), right: Math.max(right, wall.right), top: Math.max(-top, wall.top), bottom: Math.min(-bottom, wall.bottom) }
}

function splicingsOf(known: Known, wall: WallExtent): Splicings {
  return { head: splicePlaces(known, 'head', headPanEnds({ known }, wall), wall.width), sill: splicePlaces(known, 'sill', sillPanEnds({ known }, wall), wall.width) }
}

/** From behind to the front, so that what stands before something else is drawn over it. */
function partsOf(frame: Frame, wall: WallExtent, splicings: Splicings): readonly Drawn[] {
  const { known } = frame
  const phase = -phaseOf(known.rows('weeps.head-positions')?.[0])
  const joint = wall.brick?.joint ?? 10
  const [overHead, underSill] = [flashingLevel(frame, wall), sillLevel(frame, wall)]
  return [
    wallFace(frame, wall, phase), movementJoints(frame, wall), ties(frame, wall), ground(frame, wall), baseFlashing(frame, wall), baseWeeps(frame, wall, phase), sill(frame, wall), headCourse(frame, wall), filling(frame, wall), lintel(frame, wall), headFlashing(frame, wall),
    splices(frame, { place: 'head', places: splicings.head, level: overHead, upstand: splicings.head.laps.length > 0 ? drawnUpstand(frame) : 0 }), splices(frame, { place: 'sill', places: splicings.sill, level: underSill, upstand: 0 }),
    weeps(frame, { place: 'head', level: overHead, jointWidth: joint, jointHeight: wall.brick?.height }),
    weeps(frame, { place: 'sill', level: underSill, jointWidth: joint, jointHeight: sillHeight(frame, wall) }),
  ]
}

function ground({ at }: Frame, { left, right, grade }: WallExtent): Drawn {
  if (grade === undefined) return { shapes: [] }
  const [from, to] = [at(left, grade), at(right, grade)]
  const slants = Array.from({ length: Math.floor((to[0] - from[0]) / 3) }, (_, index) => { const x = from[0] + 2 + index * 3; return [[x, from[1]], [x - 1.4, from[1] + 1.6]] as const })
  return { shapes: [part('grade', [strokes('cut', [from, to]), strokes('hatch', ...slants)])], anchors: [['base', at(left + (right - left) / 5, grade)]] }
}

