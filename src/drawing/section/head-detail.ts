import type { Drawn, Frame } from '../drawn.ts'
import { box, part, strokes, type Shape } from '../shape.ts'
import { headFlashingPath, type HeadPath } from './head-path.ts'
import { choiceLabel, lengthLabel, type Label, type Layers } from './layers.ts'
import { supportOf } from './support.ts'
import { backingWall, barrierLine, brickCourses } from './wall-layers.ts'

export interface Detail extends Drawn {
  readonly name: string
  readonly title: string
  readonly labels: readonly Label[]
}

/** What a support is drawn as when its size is not known. */
const unknownSize = 90
const below = 75

export function headRange(frame: Frame, layers: Layers): readonly [number, number] {
  const { known } = frame
  const support = supportOf(frame, layers)
  const upstand = known.length('head.flashing.upstand') ?? unknownSize
  return [-below, support.bed + Math.max(support.leg.height, upstand, firstCourse(frame, layers) ?? 0, layers.course) + 1.6 * layers.course]
}

export function headDetail(frame: Frame, layers: Layers): Detail {
  const { at, known, system } = frame
  const [bottom, top] = headRange(frame, layers)
  const support = supportOf(frame, layers)
  const path = headFlashingPath(frame, layers, support)
  const shapes: Shape[] = [
    backingWall(frame, layers, [0, top], path.top), part('sheathedHead', [box('visible', at(layers.sheathed, -12), at(layers.inside, 0))]),
    brickCourses(frame, layers, [support.bed, top], firstCourse(frame, layers)),
    part('support', support.shapes(at), { known: String(support.known), kind: support.kind ?? 'unknown' }),
    ...frameHead(frame, layers, bottom), ...barrierAtHead(frame, layers, path, top), ...path.shapes, ...weepAtHead(frame, layers, path.bed), ...tieAbove(frame, layers, { from: support.bed, above: path.top, top }),
  ]
  const labels: Label[] = [
    ...tieLabel(frame, layers, { from: support.bed, above: path.top, top }),
    { text: barrierText(frame), at: at(layers.backingFace, (path.top + top) / 2) },
    ...path.labels,
    { text: lengthLabel(known, system, 'air space', 'wall.airSpace'), at: at(layers.thickness + layers.airSpace / 2, support.bed + layers.course * 1.1) },
    { text: weepText(frame), at: at(layers.thickness * 0.25, path.bed + 12) },
    { text: supportText(frame), at: at(support.leg.height > 0 ? support.leg.x : layers.thickness / 2, support.leg.height > 0 ? support.leg.height * 0.6 : support.bed / 2) },
  ]
  const anchors: Drawn['anchors'] = [
    ['lintel', at(layers.thickness * 0.6, support.bed / 2)], ['headWeeps', at(0, path.bed + 15)], ['headFlashing', at(layers.thickness * 0.4, path.bed)], ['upstand', at(layers.backingFace, path.top - 5)],
    ['drip', path.front], ['barrierLap', at(layers.backingFace, path.top)], ['airSpace', at(layers.thickness + layers.airSpace / 2, support.bed + layers.course * 2)], ['veneer', at(0, top - 20)], ['wall', at(0, top - 20)],
    ['barrier', at(layers.backingFace, top - 12)], ['endDam', at(layers.thickness * 0.8, path.bed + 8)], ['ties', at(layers.thickness * 0.7, tieLevel(frame, layers, { from: support.bed, above: path.top, top }) ?? top)],
  ]
  return { name: 'head', title: 'Head', shapes, labels, anchors, notes: isFixed(support.kind) ? ['How the angle is fixed to the structure is not described and not drawn.'] : [] }
}

function isFixed(kind: string | undefined): boolean {
  return kind === 'shelfAngle' || kind === 'angleFixedToFraming'
}

/** How high the first course on the flashing stands, where it does not lie as a stretcher. */
function firstCourse({ known }: Frame, { brick }: Layers): number | undefined {
  const course = known.choice('wall.veneer.headCourse')
  if (course === 'soldier') return brick?.length
  return course === 'rowlock' ? brick?.thickness : undefined
}

function frameHead({ at, known }: Frame, { thickness, inside }: Layers, bottom: number): readonly Shape[] {
  const setback = known.length('opening.frameSetback') ?? thickness
  const gap = known.length('head.support.gapToFrame') ?? 8
  const back = Math.min(inside - 5, Math.max(setback + 40, thickness + 30))
  return [part('frameHead', [box('visible', at(setback, -gap), at(back, Math.max(bottom + 20, -gap - 45))), strokes('glass', [at((setback + back) / 2 - 4, Math.max(bottom + 20, -gap - 45)), at((setback + back) / 2 - 4, bottom)], [at((setback + back) / 2 + 4, Math.max(bottom + 20, -gap - 45)), at((setback + back) / 2 + 4, bottom)])])]
}

/** Over the flashing, behind it, or as far as its edge: the order of the laps decides where water goes. */
function barrierAtHead(frame: Frame, layers: Layers, path: HeadPath, top: number): readonly Shape[] {
  const flap = frame.known.choice('barrier.headFlap')
  const lap = frame.known.length('head.flashing.barrierLap')
  if (!path.isThere) return [barrierLine(frame, layers, [0, top])]
  if (flap === 'behindFlashing') return [barrierLine(frame, layers, [0, top])]
  const isOver = flap === 'overFlashing' || (flap === undefined && lap !== undefined && lap > 0)
  const lower = isOver ? path.top - (lap ?? unknownSize / 2) : path.top
  const shape = barrierLine(frame, layers, [Math.max(0, lower), top], isOver ? path.top : undefined)
  return [part('barrierFlap', [shape], { order: flap ?? (isOver ? 'overFlashing' : 'unknown'), lap: lap === undefined ? '' : String(lap) })]
}

/** A weep lies beside the cut, so that only its outline is seen, and an arrow where water leaves. */
function weepAtHead({ at, known, scale }: Frame, { brick, thickness, course }: Layers, bed: number): readonly Shape[] {
  const kind = known.choice('head.weeps.kind')
  if (kind === 'none') return []
  const height = known.length('head.weeps.openHeight') ?? brick?.height ?? course - 10
  const [x, y] = at(0, bed + 6)
  const arrow = strokes('cut', [[x + 4, y], [x - 4, y]], [[x - 2.6, y - 0.9], [x - 4, y], [x - 2.6, y + 0.9]])
  const outlineOf = box(kind === undefined ? 'unknown' : 'hidden', at(0, bed), at(thickness, bed + Math.min(height, 20 / scale)))
  return [part('weep', [outlineOf, arrow], { known: String(kind !== undefined) })]
}

interface TiePlace { readonly from: number; readonly above: number; readonly top: number }

/** The first bed joint over the flashing that is drawn. */
function tieLevel(frame: Frame, layers: Layers, { from, above, top }: TiePlace): number | undefined {
  const height = layers.brick?.height ?? layers.course - 10
  const first = from + (firstCourse(frame, layers) ?? height) + (layers.course - height) / 2
  const level = first + Math.max(0, Math.ceil((above - first) / layers.course)) * layers.course
  return level < top - 5 ? level : undefined
}

function tieAbove(frame: Frame, layers: Layers, place: TiePlace): readonly Shape[] {
  const level = tieLevel(frame, layers, place)
  if (level === undefined || frame.known.choice('ties.kind') === undefined) return []
  const embedment = frame.known.length('ties.embedment')
  const isKnown = embedment !== undefined && embedment <= layers.thickness // a tie that would come out of the face was not measured right
  const from = layers.thickness - (isKnown ? embedment : layers.thickness / 2)
  return [part('tie', [strokes(isKnown ? 'barrier' : 'unknown', [frame.at(from, level), frame.at(layers.sheathed, level)])], { known: String(isKnown) })]
}

function tieLabel(frame: Frame, layers: Layers, place: TiePlace): readonly Label[] {
  const level = tieLevel(frame, layers, place)
  const kind = choiceLabel(frame.known, 'ties.kind')
  if (level === undefined || kind === undefined) return []
  return [
    { text: `tie, ${kind}`, at: frame.at(layers.thickness + layers.airSpace / 2, level) },
    { text: lengthLabel(frame.known, frame.system, 'tie embedment', 'ties.embedment'), at: frame.at(layers.thickness * 0.8, level) },
  ]
}

function barrierText({ known }: Frame): string {
  const kind = choiceLabel(known, 'barrier.kind')
  return kind === undefined ? 'water-resistive barrier: not known' : `barrier, ${kind}`
}

function weepText({ known }: Frame): string {
  const kind = choiceLabel(known, 'head.weeps.kind')
  if (kind === 'none') return 'no weep'
  const where = known.flag('head.weeps.onFlashing') === false ? ', not on the flashing' : ''
  return kind === undefined ? 'weep: not known' : `weep, ${kind}${where}, beyond`
}

function supportText({ known }: Frame): string {
  const [kind, section] = [choiceLabel(known, 'head.support.kind'), known.choice('head.support.section')]
  return kind === undefined ? 'support: not known' : `${kind}${section === undefined ? '' : ` ${section}`}`
}
