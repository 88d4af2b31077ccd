import type { Drawn, Frame } from '../drawn.ts'
import { ends } from '../known.ts'
import { dimensionText } from '../length-words.ts'
import { box, part, strokes, type Shape } from '../shape.ts'
import type { Detail } from './head-detail.ts'
import { cutField, type Material } from './hatch.ts'
import { choiceLabel, lengthLabel, type Label, type Layers } from './layers.ts'
import { backingWall, barrierLine, brickBelow } from './wall-layers.ts'

const unknownUpstand = 40
const materials: Readonly<Record<string, Material>> = { brickRowlock: 'brick', brickHeader: 'brick', precastConcrete: 'concrete', stone: 'stone', metal: 'steel' }

/** The sill unit as it lies: lengths in millimeters, y from the top of the sill at its front. */
interface SillUnit {
  readonly slope: number
  readonly depth: number
  readonly projection: number
  readonly height: number
  readonly known: boolean
  /** Top of the unit at its back. */
  readonly back: number
  /** What it is bedded on. */
  readonly bed: number
}

export function hasSillDetail({ known }: Pick<Frame, 'known'>): boolean {
  return materials[known.choice('sill.kind') ?? ''] !== undefined
}

export function sillRange(frame: Frame, layers: Layers): readonly [number, number] {
  const unit = unitOf(frame, layers)
  return [unit.bed - 2.3 * layers.course, Math.max(unit.back, 0) + 80]
}

export function sillDetail(frame: Frame, layers: Layers): Detail {
  const { at, known, system } = frame
  const [bottom, top] = sillRange(frame, layers)
  const unit = unitOf(frame, layers)
  const flashing = sillFlashing(frame, layers, unit)
  const roughSill = Math.max(unit.back - 4, unit.bed + 10)
  const shapes: Shape[] = [
    backingWall(frame, layers, [bottom, roughSill]), barrierLine(frame, layers, [bottom, roughSill]), brickBelow(frame, layers, [bottom, unit.bed]),
    cutField('mortar', [at(0, unit.bed), at(layers.thickness, unit.bed), at(Math.min(layers.thickness, unit.depth - unit.projection), unit.back - unit.height), at(0, Math.max(unit.bed, -unit.height))]),
    ...sillUnit(frame, unit), ...flashing.shapes, ...sillFrame(frame, layers, { unit, top, roughSill }), ...sillPan(frame, layers, roughSill), ...weepAtSill(frame, layers, unit.bed),
  ]
  const kind = choiceLabel(known, 'sill.kind') ?? 'sill'
  const slope = known.amount('sill.slope')
  const labels: Label[] = [
    { text: panText(frame), at: at(layers.backingFace + 6, roughSill) },
    { text: `${kind}, slope ${slope === undefined ? 'not known' : `${Number(slope.toFixed(1))}°`}`, at: at(unit.depth * 0.4 - unit.projection, unit.back * 0.4 - unit.height * 0.3) },
    { text: lengthLabel(known, system, 'sill past the face', 'sill.projection'), at: at(-unit.projection, -unit.height * 0.3) },
    ...flashing.labels,
    { text: weepText(frame), at: at(layers.thickness * 0.2, unit.bed + 8) },
  ]
  return { name: 'sill', title: 'Sill', shapes, labels, notes: kind.startsWith('brick') ? [] : ['The height of the sill is not described; one course is drawn.'], anchors: [
    ['sill', at(unit.depth * 0.6 - unit.projection, unit.back * 0.6)], ['sillFlashing', at(layers.thickness * 0.5, unit.bed)], ['sillWeeps', at(0, unit.bed + 10)], ['sillPan', at(layers.sheathed, roughSill)], ['sillEndDam', at(layers.thickness * 0.8, unit.bed + 10)], ...flashing.anchors ?? [],
  ] }
}

function unitOf({ known }: Frame, { brick, thickness, course }: Layers): SillUnit {
  const kind = known.choice('sill.kind')
  const [slope, projection, depth] = [known.amount('sill.slope'), known.length('sill.projection'), known.length('sill.depth')]
  const own = kind === 'brickRowlock' ? brick?.thickness : kind === 'brickHeader' ? brick?.height : undefined
  const [drawnSlope, drawnProjection, height] = [slope ?? 0, projection ?? 0, own ?? course]
  const drawnDepth = depth ?? Math.max(thickness / 2, thickness + drawnProjection)
  const angle = (drawnSlope * Math.PI) / 180
  return {
    slope: angle, depth: drawnDepth, projection: drawnProjection, height, back: drawnDepth * Math.tan(angle), bed: Math.min(-height * Math.cos(angle), drawnDepth * Math.tan(angle) - height * Math.cos(angle)) - 6,
    known: slope !== undefined && projection !== undefined && depth !== undefined && own !== undefined,
  }
}

function sillUnit({ at, known }: Frame, { slope, depth, projection, height, known: isKnown, back }: SillUnit): readonly Shape[] {
  const kind = known.choice('sill.kind') ?? ''
  const [dx, dy] = [height * Math.sin(slope), height * Math.cos(slope)]
  const thin = kind === 'metal'
  const points = [at(-projection, 0), at(depth - projection, back), at(depth - projection + (thin ? 0 : dx), back - (thin ? 3 : dy)), at(-projection + (thin ? 0 : dx), -(thin ? 3 : dy))]
  const drip = known.flag('sill.dripPresent') === true ? [strokes('outline', [at(-projection + dx + 12, -dy + 1), at(-projection + dx + 16, -dy + 8), at(-projection + dx + 20, -dy + 1)])] : []
  return [part('sill', [cutField(materials[kind] ?? 'concrete', points, isKnown), ...(thin ? [] : drip)], { kind, known: String(isKnown), slope: String(Number(((slope * 180) / Math.PI).toFixed(3))) })]
}

function sillFlashing({ at, known, system, scale }: Frame, { thickness }: Layers, unit: SillUnit): Drawn & { readonly labels: readonly Label[] } {
  const isPresent = known.flag('sill.flashing.present')
  if (isPresent === false) return { shapes: [], labels: [{ text: 'no sill flashing', at: at(thickness / 2, unit.bed) }] }
  const [upstand, projection] = [known.length('sill.flashing.upstand'), known.length('sill.flashing.projection')]
  const reaches = known.flag('sill.flashing.reachesFace')
  const front = projection === undefined ? (reaches === false ? thickness / 4 : 0) : Math.min(thickness, -projection)
  const back = Math.max(thickness * 0.5, unit.depth - unit.projection) + 1 / scale
  const isKnown = isPresent === true && upstand !== undefined && (projection !== undefined || reaches !== undefined)
  const heights = ends.map((end) => (known.flag('sill.flashing.endDamPresent', end) === false ? 0 : known.length('sill.flashing.endDamHeight', end)))
  const text = heights.map((height) => (height === undefined ? 'not known' : height === 0 ? 'none' : dimensionText(height, system)))
  return {
    shapes: [part('sillFlashing', [strokes(isKnown ? 'membrane' : 'unknown', [at(front, unit.bed), at(back, unit.bed), at(back, unit.bed + (upstand ?? unknownUpstand))])], { known: String(isKnown) })],
    labels: [
      { text: isPresent === undefined ? 'flashing: not known' : `flashing: ${lengthLabel(known, system, 'upstand', 'sill.flashing.upstand')}`, at: at(back, unit.bed + (upstand ?? unknownUpstand) / 2) },
      { text: `end dams beyond: ${text[0] === text[1] ? (text[0] ?? '') : `left ${text[0] ?? ''}, right ${text[1] ?? ''}`}`, at: at(thickness * 0.6, unit.bed) },
    ],
  }
}

interface Around { readonly unit: SillUnit; readonly top: number; readonly roughSill: number }

function sillFrame({ at, known }: Frame, { thickness, inside }: Layers, { unit, top }: Around): readonly Shape[] {
  const setback = known.length('opening.frameSetback') ?? thickness
  const gap = known.length('sill.gapUnderFrame') ?? 8
  const bottom = unit.back + gap
  const back = Math.min(inside - 5, Math.max(setback + 40, thickness + 30))
  const rail = Math.min(top - 15, bottom + 40)
  return [part('frameSill', [box('visible', at(setback, bottom), at(back, rail)), strokes('glass', [at((setback + back) / 2 - 4, rail), at((setback + back) / 2 - 4, top)], [at((setback + back) / 2 + 4, rail), at((setback + back) / 2 + 4, top)])])]
}

/** The pan lies on the rough sill: down over the barrier in front, up at its back. */
function sillPan({ at, known }: Frame, { backingFace, inside }: Layers, level: number): readonly Shape[] {
  const isPresent = known.flag('sill.panPresent')
  if (isPresent !== true) return []
  const dam = known.length('sill.panBackDamHeight')
  return [part('sillPan', [strokes(dam === undefined ? 'unknown' : 'membrane', [at(backingFace - 6, level - 25), at(backingFace - 6, level + 1), at(inside - 12, level + 1), at(inside - 12, level + (dam ?? 20))])], { known: String(dam !== undefined) })]
}

function weepAtSill({ at, known, scale }: Frame, { thickness }: Layers, bed: number): readonly Shape[] {
  const kind = known.choice('sill.weeps.kind')
  if (kind === 'none' || kind === undefined) return []
  const [x, y] = at(0, bed + 5)
  return [part('weep', [box('hidden', at(0, bed), at(thickness * 0.8, bed + Math.min(40, 14 / scale))), strokes('cut', [[x + 3, y], [x - 3.4, y]], [[x - 2, y - 0.9], [x - 3.4, y], [x - 2, y + 0.9]])])]
}

function panText({ known, system }: Frame): string {
  const isPresent = known.flag('sill.panPresent')
  if (isPresent === undefined) return 'pan in the rough opening: not known'
  return isPresent ? lengthLabel(known, system, 'pan; back dam', 'sill.panBackDamHeight') : 'no pan in the rough opening'
}

function weepText({ known }: Frame): string {
  const kind = choiceLabel(known, 'sill.weeps.kind')
  return kind === undefined ? 'weep: not known' : kind === 'none' ? 'no weep' : `weep, ${kind}, beyond`
}

