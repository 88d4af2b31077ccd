import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { ends, flashingRunsOn, type End } from '../known.ts'
import { box, part, round, strokes, words, type Point, type Shape } from '../shape.ts'
import { textWidth } from '../text-width.ts'
import type { PanEnds } from './splice-places.ts'
import type { WallExtent } from './wall-extent.ts'

const unknownExtension = 150
const unknownDam = 50
const unknownUpstand = 150

/** Where the flashing lies: on the support, or over the ring of an arch. */
export function flashingLevel(frame: Frame, { height, headShape, brick }: WallExtent): number {
  const isOnSupport = headShape === 'flat' && frame.known.flag('head.flashing.overSupport') !== false
  return isOnSupport ? height : height + (brick?.length ?? unknownDam)
}

/** The head flashing from end to end, with its dams, and its upstand behind the brick. */
export function headFlashing(frame: Frame, wall: WallExtent): Drawn {
  const { at, known } = frame
  const isPresent = known.flag('head.flashing.present')
  const level = flashingLevel(frame, wall)
  const anchor: Drawn['anchors'] = [['headFlashing', at(wall.width * 0.7, level)]]
  if (isPresent === false) return { ...nothing, anchors: anchor, notes: ['No head flashing is described.'] }
  const runsOn = flashingRunsOn(known)
  const [left, right] = ends.map((end) => endOf(frame, wall, end, runsOn)) as [FlashingEnd, FlashingEnd]
  const upstand = known.length('head.flashing.upstand')
  const top = level + (upstand ?? unknownUpstand)
  const isKnown = isPresent === true && left.known && right.known
  const shapes: Shape[] = [
    part('upstand', [strokes(upstand === undefined ? 'unknown' : 'hidden', [at(left.x, level), at(left.x, top), at(right.x, top), at(right.x, level)])], { known: String(upstand !== undefined) }),
    part('pan', [strokes(isKnown ? 'sheetMetal' : 'unknown', [at(left.x, level), at(right.x, level)])], { known: String(isKnown) }),
    ...[left, right].flatMap((end) => (runsOn ? [] : [dam(frame, end, level, roomBeside(frame, wall, end))])),
  ]
  return {
    shapes: [part('headFlashing', shapes)],
    anchors: [...anchor, ['upstand', at(wall.width * 0.35, top)], ...[left, right].flatMap(({ end, x, damHeight = 0 }) => [[`endDam:${end}`, at(x, level + damHeight)], [`headFlashingEnd:${end}`, at(x, level)]] as const)],
    notes: [
      ...(isPresent === undefined ? ['Whether there is a head flashing is not known.'] : []),
      ...(runsOn ? ['The head flashing runs on past the opening; its end dams are elsewhere.'] : []),
      ...(wall.headShape === 'flat' ? [] : ['The flashing over an arch is drawn level above the ring; its height is not described.']),
    ],
  }
}

/** From where to where the head flashing is drawn; undefined where there is none. */
export function headPanEnds(frame: Pick<Frame, 'known'>, wall: WallExtent): PanEnds | undefined {
  if (frame.known.flag('head.flashing.present') === false) return undefined
  const runsOn = flashingRunsOn(frame.known)
  return [endOf(frame, wall, 'left', runsOn).x, endOf(frame, wall, 'right', runsOn).x]
}

/** How far it is drawn up the backing. */
export function drawnUpstand({ known }: Pick<Frame, 'known'>): number {
  return known.length('head.flashing.upstand') ?? unknownUpstand
}

/** Room on paper for a word beside the end; none where a bearing lies under it. */
function roomBeside({ known, scale }: Frame, { left, right, width }: WallExtent, { end, x }: FlashingEnd): number {
  const past = end === 'left' ? -x : x - width
  if (past < (known.glimpse('head.support.bearing', end) ?? unknownExtension)) return 0
  return (end === 'left' ? x - left : right - x) * scale
}

interface FlashingEnd {
  readonly end: End
  readonly x: number
  readonly known: boolean
  /** 0 where there is none, undefined where nobody knows. */
  readonly damHeight: number | undefined
}

function endOf({ known }: Pick<Frame, 'known'>, { width, left, right }: WallExtent, end: End, runsOn: boolean): FlashingEnd {
  if (runsOn) return { end, x: end === 'left' ? left : right, known: true, damHeight: 0 }
  const past = known.length('head.flashing.extensionPastJamb', end)
  const length = past ?? unknownExtension
  const isThere = known.flag('head.flashing.endDamPresent', end)
  const height = isThere === false ? 0 : known.length('head.flashing.endDamHeight', end)
  return { end, x: end === 'left' ? -length : width + length, known: past !== undefined, damHeight: height }
}

/** A dam stands at the end of the pan. Where there is none the end is left open and an arrow shows where the water runs. */
function dam({ at, scale }: Frame, { end, x, damHeight }: FlashingEnd, level: number, room: number): Shape {
  const data = { member: end, known: String(damHeight !== undefined), height: damHeight === undefined ? '' : String(damHeight) }
  const foot = at(x, level)
  if (damHeight === 0) return part('endDam', spill(foot, end === 'left' ? -1 : 1, room), { ...data, present: 'false' })
  const top: Point = [foot[0], foot[1] - (damHeight ?? unknownDam) * scale]
  const shapes: Shape[] = [strokes(damHeight === undefined ? 'unknown' : 'sheetMetal', [foot, top])]
  if (damHeight === undefined) shapes.push(words('?', [foot[0] + (end === 'left' ? -1 : 1), top[1]], { anchor: end === 'left' ? 'end' : 'start', weight: 'bold' }))
  return part('endDam', shapes, { ...data, present: damHeight === undefined ? 'unknown' : 'true' })
}

function spill([x, y]: Point, outward: 1 | -1, room: number): readonly Shape[] {
  const [tipX, tipY] = [x + outward * 2.2, y + 1.8]
  const [told, size] = ['no dam', 2.4]
  const width = textWidth(told, size)
  const [from, to] = outward === 1 ? [x + 2, x + 2 + width] : [x - 2 - width, x - 2]
  const said: readonly Shape[] = room < width + 2.4 ? [] : [box('mask', [from, y + 2.2], [to, y + 5.4]), words(told, [from, y + 4.8], { size })]
  return [...said, round('visible', [x, y], 0.7), strokes('leader', [[x + outward * 0.7, y], [x + outward * 1.6, y + 0.3], [tipX, tipY]], [[tipX - 0.9, tipY - 0.5], [tipX, tipY], [tipX + 0.2, tipY - 1]])]
}
