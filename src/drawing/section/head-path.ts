import { dimensionText } from '../length-words.ts'
import type { Frame } from '../drawn.ts'
import { ends, flashingRunsOn } from '../known.ts'
import { part, strokes, type Point, type Shape } from '../shape.ts'
import { choiceLabel, lengthLabel, type Label, type Layers } from './layers.ts'
import type { Support } from './support.ts'

/** The head flashing in section, from its drip to its top edge. */
export interface HeadPath {
  readonly isThere: boolean
  readonly shapes: readonly Shape[]
  readonly labels: readonly Label[]
  /** Level at which it lies. */
  readonly bed: number
  /** Level of its top edge. */
  readonly top: number
  readonly front: Point
}

const unknownUpstand = 120
const unknownDam = 40

export function headFlashingPath(frame: Frame, layers: Layers, support: Support): HeadPath {
  const { at, known } = frame
  const isPresent = known.flag('head.flashing.present')
  if (isPresent === false) return { isThere: false, shapes: [], labels: [{ text: 'no head flashing', at: at(layers.thickness * 0.5, support.bed) }], bed: support.bed, top: support.bed, front: at(0, support.bed) }
  const upstand = known.length('head.flashing.upstand')
  const bed = support.bed + (known.flag('head.flashing.overSupport') === false ? layers.course : 0)
  const top = bed + (upstand ?? unknownUpstand)
  const points = pathOf(frame, layers, support, { bed, top })
  const isKnown = isPresent === true && upstand !== undefined && frontOf(frame, layers).known
  const dams = damsOf(frame)
  const shapes = [part('headFlashing', [
    ...(dams.height > 0 ? [part('endDam', [strokes(dams.known ? 'hidden' : 'unknown', [at(0, bed), at(0, bed + dams.height), at(layers.backingFace, bed + dams.height)])], { height: String(dams.height), known: String(dams.known) })] : []),
    strokes(isKnown ? 'membrane' : 'unknown', points),
  ], { known: String(isKnown) })]
  return { isThere: true, shapes, bed, top, front: points[0] ?? at(0, bed), labels: labelsOf(frame, layers, { bed, top, front: points[0] ?? at(0, bed), dams: dams.text }) }
}

/** From the drip over the flat leg, over the standing leg and across to the backing; up it as far as the upstand goes. */
function pathOf(frame: Frame, layers: Layers, { leg }: Support, { bed, top }: { readonly bed: number; readonly top: number }): readonly Point[] {
  const { at, known } = frame
  const [off, back] = [0.45 / frame.scale, layers.backingFace - 0.8 / frame.scale] // beside the steel, not over it
  const front = frontOf(frame, layers)
  const turned = Math.min(80, known.amount('head.flashing.dripAngle') ?? 0)
  const low = bed + off
  const drip = front.x < 0 ? [at(front.x, low + front.x * Math.tan((turned * Math.PI) / 180)), at(0, low)] : [at(front.x, low)]
  const isOverLeg = leg.height > bed && leg.x < back
  if (!isOverLeg) return [...drip, at(back, low), at(back, top)]
  if (top <= leg.height) return [...drip, at(leg.x - off, low), at(leg.x - off, top)]
  return [...drip, at(leg.x - off, low), at(leg.x - off, leg.height + off), at(Math.min(back, leg.x + leg.thickness), leg.height + off), at(back, Math.max(leg.height + off, Math.min(top, leg.height + off + (back - leg.x) * 0.1))), at(back, top)]
}

/** Where the front edge lies: negative past the face. */
function frontOf({ known }: Frame, { thickness }: Layers): { readonly x: number; readonly known: boolean } {
  const projection = known.length('head.flashing.projection')
  if (projection !== undefined) return { x: Math.min(thickness, -projection), known: true }
  const edge = known.choice('head.flashing.frontEdge')
  if (edge === 'flushWithFace') return { x: 0, known: true }
  return { x: edge === 'shortOfFace' ? thickness / 4 : edge === 'pastFace' ? -8 : 0, known: edge !== undefined }
}

/** The end dams beyond the cut: the lower of the two is drawn, both are told. */
function damsOf({ known, system }: Frame): { readonly height: number; readonly known: boolean; readonly text: string } {
  if (flashingRunsOn(known)) return { height: 0, known: true, text: 'flashing runs on; end dams elsewhere' }
  const heights = ends.map((end) => (known.flag('head.flashing.endDamPresent', end) === false ? 0 : known.length('head.flashing.endDamHeight', end)))
  const words = heights.map((height) => (height === undefined ? 'not known' : height === 0 ? 'none' : dimensionText(height, system)))
  const [left = 'not known', right = 'not known'] = words
  const standing = heights.filter((height) => height !== 0).map((height) => height ?? unknownDam)
  const text = left === right ? `end dams beyond: ${left}` : `end dams beyond: left ${left}, right ${right}`
  return { height: standing.length === 0 ? 0 : Math.min(...standing), known: heights.every((height) => height !== undefined), text }
}

interface Places { readonly bed: number; readonly top: number; readonly front: Point; readonly dams: string }

function labelsOf({ at, known, system }: Frame, { thickness, backingFace }: Layers, { bed, top, front, dams }: Places): readonly Label[] {
  const flap = known.choice('barrier.headFlap')
  const lap = flap === 'behindFlashing' ? 'barrier runs behind the flashing' : flap === 'cutFlush' ? 'barrier cut flush over the flashing' : lengthLabel(known, system, 'barrier over the flashing', 'head.flashing.barrierLap')
  const material = choiceLabel(known, 'head.flashing.material')
  return [
    { text: lap, at: at(backingFace, top - 8) },
    { text: lengthLabel(known, system, `flashing${material === undefined ? '' : `, ${material}`}: upstand`, 'head.flashing.upstand'), at: at(backingFace, bed + (top - bed) * 0.7) },
    { text: dams, at: at(thickness * 0.8, bed + 10) },
    { text: lengthLabel(known, system, 'drip past the face', 'head.flashing.projection'), at: front },
  ]
}
