import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { ends, type End } from '../known.ts'
import { box, part, strokes, words, type Shape } from '../shape.ts'
import type { PanEnds } from './splice-places.ts'
import type { WallExtent } from './wall-extent.ts'

const closestUnits = 0.9
const unknownExtension = 100
const unknownDam = 40

/** How high the sill shows on the face; undefined where that is not described. */
export function sillHeight({ known }: Frame, { brick }: Pick<WallExtent, 'brick'>): number | undefined {
  const kind = known.choice('sill.kind')
  if (kind === 'brickRowlock') return brick?.thickness
  if (kind === 'brickHeader') return brick?.height
  return undefined
}

/** The underside of the sill as it is drawn, on which its flashing lies. */
export function sillLevel(frame: Frame, wall: Pick<WallExtent, 'brick'>): number {
  return -(sillHeight(frame, wall) ?? wall.brick?.course ?? unknownDam)
}

/** Down to where sill or opening is drawn. */
export function footOfSill(frame: Frame, wall: Pick<WallExtent, 'brick'>): number {
  return isDrawn(frame.known.choice('sill.kind')) ? sillLevel(frame, wall) : 0
}

/** The sill under the opening with its flashing; nothing at a threshold. */
export function sill(frame: Frame, wall: WallExtent): Drawn {
  const { at, known } = frame
  const kind = known.choice('sill.kind')
  if (!isDrawn(kind)) return { ...nothing, anchors: [['sill', at(wall.width / 2, 0)]] }
  const height = sillHeight(frame, wall)
  const drawnHeight = -sillLevel(frame, wall)
  const body: Shape[] = [box('mask', at(0, 0), at(wall.width, -drawnHeight)), box(height === undefined ? 'unknown' : 'visible', at(0, 0), at(wall.width, -drawnHeight)), ...units(frame, wall, kind, drawnHeight)]
  const flashing = sillFlashing(frame, wall, -drawnHeight)
  return {
    shapes: [part('sill', body, { kind, known: String(height !== undefined) }), ...flashing.shapes],
    anchors: [['sill', at(wall.width * 0.6, -drawnHeight / 2)], ...(flashing.anchors ?? [])],
    notes: height === undefined ? ['The height of the sill is not described; one course is drawn.'] : [],
  }
}

function units({ at, known, scale }: Frame, { brick, width }: WallExtent, kind: string, height: number): readonly Shape[] {
  if (!brick || (kind !== 'brickRowlock' && kind !== 'brickHeader')) return []
  const pitch = (kind === 'brickRowlock' ? brick.height : brick.thickness ?? brick.length / 2) + brick.joint
  const past = phaseOf(known.rows('weeps.sill-positions')?.[0])
  const first = Math.ceil(past / pitch + 1e-6)
  const count = Math.max(0, Math.ceil((width + past) / pitch - 1e-6) - first)
  if (pitch * scale < closestUnits) return []
  return [strokes('joint', ...Array.from({ length: count }, (_, index) => { const x = (first + index) * pitch - past; return [at(x, 0), at(x, -height)] }))]
}

/** How far left of the jamb the layout of weeps starts, from which the joints are counted. */
export function phaseOf(weep: readonly (number | string | null)[] | undefined): number {
  const [fromDam, fromJamb] = [weep?.[2], weep?.[3]]
  return typeof fromDam === 'number' && typeof fromJamb === 'number' ? fromDam - fromJamb : 0
}

/** Whether a sill of units or of one piece is drawn; there is none at a threshold. */
function isDrawn(kind: string | undefined): kind is string {
  return kind !== undefined && kind !== 'none' && kind !== 'doorThreshold'
}

/** From where to where the sill flashing is drawn; undefined where it is not. */
export function sillPanEnds({ known }: Pick<Frame, 'known'>, { width }: Pick<WallExtent, 'width'>): PanEnds | undefined {
  if (!isDrawn(known.choice('sill.kind')) || known.flag('sill.flashing.present') !== true) return undefined
  return [endOf(known, 'left', width).x, endOf(known, 'right', width).x]
}

function endOf(known: Frame['known'], end: End, width: number): SillEnd {
  const past = known.length('sill.flashing.extensionPastJamb', end)
  return { end, known: past !== undefined, x: end === 'left' ? -(past ?? unknownExtension) : width + (past ?? unknownExtension), dam: known.flag('sill.flashing.endDamPresent', end) === false ? 0 : known.length('sill.flashing.endDamHeight', end) }
}

function sillFlashing(frame: Frame, { width }: WallExtent, level: number): Drawn {
  const { at, known } = frame
  const isPresent = known.flag('sill.flashing.present')
  if (isPresent !== true) return { ...nothing, anchors: [['sillFlashing', at(width * 0.4, level)]] }
  const [left, right] = ends.map((end) => endOf(known, end, width)) as [SillEnd, SillEnd]
  const isKnown = left.known && right.known
  const shapes = [part('pan', [strokes(isKnown ? 'sheetMetal' : 'unknown', [at(left.x, level), at(right.x, level)])], { known: String(isKnown) }), ...[left, right].map((end) => dam(frame, end, level))]
  return {
    shapes: [part('sillFlashing', shapes)],
    anchors: [['sillFlashing', at(width * 0.4, level)], ...[left, right].map(({ end, x, dam = 0 }) => [`sillEndDam:${end}`, at(x, level + dam)] as const)],
  }
}

interface SillEnd {
  readonly end: End
  readonly known: boolean
  readonly x: number
  readonly dam: number | undefined
}

function dam({ at }: Frame, { end, x, dam }: SillEnd, level: number): Shape {
  const data = { member: end, known: String(dam !== undefined), height: dam === undefined ? '' : String(dam), present: dam === undefined ? 'unknown' : String(dam > 0) }
  if (dam === 0) return part('sillEndDam', [], data)
  const [x1, y1] = at(x, level + (dam ?? unknownDam))
  const mark = dam === undefined ? [words('?', [x1 + (end === 'left' ? -1 : 1), y1], { anchor: end === 'left' ? 'end' : 'start', weight: 'bold' })] : []
  return part('sillEndDam', [strokes(dam === undefined ? 'unknown' : 'sheetMetal', [at(x, level), [x1, y1]]), ...mark], data)
}
