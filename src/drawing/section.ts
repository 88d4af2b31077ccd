import type { FullEvaluation } from '../evaluation/evaluate.ts'
import type { Opening } from '../opening/opening.ts'
import { balloons, roomForBalloons } from './balloon.ts'
import { dimensionLine, dimensionRoom, type Measure } from './dimension-line.ts'
import type { Frame } from './drawn.ts'
import { breakLine } from './elevation/bond.ts'
import { knownOf, type Known } from './known.ts'
import { dimensionText } from './length-words.ts'
import { calledOutIn } from './callouts.ts'
import { scaleFor, type Scale } from './scale.ts'
import { baseDetail, baseRange, hasBaseDetail } from './section/base-detail.ts'
import { headDetail, headRange, type Detail } from './section/head-detail.ts'
import { layersOf, type Label, type Layers } from './section/layers.ts'
import { hasSillDetail, sillDetail, sillRange } from './section/sill-detail.ts'
import { part, strokes, textSize, words, type Point, type Shape } from './shape.ts'
import { insideWidth, type SheetContent } from './sheet.ts'
import { spread } from './spread.ts'
import { fitted } from './text-width.ts'

const left = 24
const drawnWidth = 72
const labelsAt = left + drawnWidth + 12
const tallest = 235
const gap = 12
const leastOutside = 40 // in front of the brick

interface Drawer {
  readonly range: (frame: Frame, layers: Layers) => readonly [bottom: number, top: number]
  readonly detail: (frame: Frame, layers: Layers) => Detail
}

/** The wall cut through from top to bottom at head, sill and base, as far as they are described. */
export function section(opening: Opening, evaluation: FullEvaluation): Omit<SheetContent, 'title' | 'subtitle'> {
  const known = knownOf(opening, evaluation)
  const layers = layersOf(known)
  const unplaced: Frame = { known, system: opening.unitSystem, scale: 1, at: (x, y) => [x, y] }
  const drawers: readonly Drawer[] = [{ range: headRange, detail: headDetail }, ...(hasSillDetail({ known }) ? [{ range: sillRange, detail: sillDetail }] : []), ...(hasBaseDetail({ known }) ? [{ range: baseRange, detail: baseDetail }] : [])]
  const ranges = drawers.map(({ range }) => range(unplaced, layers))
  const heights = ranges.map(([bottom, top]) => top - bottom)
  const outside = outsideOf(known)
  const scale = scaleFor(opening.unitSystem, [[layers.inside + outside, drawnWidth], [heights.reduce((sum, height) => sum + height, 0), tallest]])
  const placed = placedDetails({ known, opening, layers, scale, outside }, drawers, ranges)
  const calledOut = calledOutIn(new Map(placed.details.flatMap(({ anchors = [] }) => anchors).toReversed()), evaluation)
  const height = Math.max(placed.height, 12 + roomForBalloons(calledOut.groups.length))
  return {
    view: { height, shapes: [...placed.shapes, balloons(calledOut.groups, { left: 6, right: 6, top: 8, bottom: height - 2 })] },
    scale: `Scale ${scale.text} when printed at full size. Flashing and barrier are drawn thicker than they are, with gaps between them that are not there.${opening.unitSystem === 'si' ? ' Millimeters.' : ''}`,
    calledOut, unknown: known.lacking(), notes: [...placed.details.flatMap(({ notes = [] }) => notes), ...missingDetails(known), 'Frame, sheathing and backing are drawn as a convention; their sizes are not described. Outside is on the left.'],
    key: [['membrane', 'flashing'], ['barrier', 'barrier'], ['hidden', 'beyond the cut'], ['unknown', 'not known']],
  }
}

/** As far as anything stands out in front of the brick. */
function outsideOf(known: Known): number {
  const parts = ['head.flashing.projection', 'sill.projection', 'sill.flashing.projection'].map((path) => known.glimpse(path) ?? 0)
  return Math.max(leastOutside, ...parts.map((part) => part + leastOutside / 2))
}

function missingDetails(known: Known): readonly string[] {
  const kind = known.choice('sill.kind')
  return [
    ...(hasSillDetail({ known }) ? [] : [kind === undefined ? 'The sill is not described and not drawn.' : 'There is no sill of units here; it is not drawn.']),
    ...(hasBaseDetail({ known }) ? [] : ['The base of the wall is not described and not drawn.']),
  ]
}

interface Given {
  readonly known: Known
  readonly opening: Opening
  readonly layers: Layers
  readonly scale: Scale
  readonly outside: number
}

function placedDetails({ known, opening, layers, scale, outside }: Given, drawers: readonly Drawer[], ranges: readonly (readonly [number, number])[]) {
  const details: Detail[] = []
  const shapes: Shape[] = []
  let y = 0
  drawers.forEach(({ detail }, index) => {
    const [bottom, top] = ranges[index] ?? [0, 0]
    const start = y + (index === 0 ? 2 * dimensionRoom + 4 : gap)
    const frame: Frame = { known, system: opening.unitSystem, scale: 1 / scale.ratio, at: (x, level) => [left + (x + outside) / scale.ratio, start + (top - level) / scale.ratio] }
    const drawn = detail(frame, layers)
    const end = start + Math.max((top - bottom) / scale.ratio, drawn.labels.length * 4.6)
    if (index === 0) shapes.push(thicknesses(frame, layers, top))
    shapes.push(part('detail', [...drawn.shapes, ...cuts(frame, layers, [bottom, top])], { detail: drawn.name }), words(drawn.title, [labelsAt, start - (index === 0 ? 1 : 3)], { weight: 'bold', size: 3.2 }), ...labels(drawn.labels, start + 2, end))
    details.push(drawn)
    y = end
  })
  return { details, shapes, height: y + 5 }
}

/** Where the drawing of the wall stops though the wall does not. */
function cuts({ at }: Frame, { inside }: Layers, [bottom, top]: readonly [number, number]): readonly Shape[] {
  const line = (from: Point, to: Point) => strokes('dimension', breakLine(from, to))
  return [line(at(-10, top), at(inside + 10, top)), line(at(-10, bottom), at(inside + 10, bottom))]
}

function thicknesses(frame: Frame, layers: Layers, top: number): Shape {
  const { at, system, known } = frame
  const [x0, y] = at(0, top)
  const x = (value: number) => at(value, 0)[0]
  const measure = (from: number, to: number, name: string, what: string, isKnown: boolean): Measure => ({ from: x(from), to: x(to), name, known: isKnown, text: `${what} ${isKnown ? dimensionText(to - from, system) : '?'}` })
  const measures = [
    measure(0, layers.thickness, 'wall.veneer.thickness', 'brick', layers.thicknessKnown), measure(layers.thickness, layers.thickness + layers.airSpace, 'wall.airSpace', 'air', layers.airSpaceKnown),
    ...(layers.insulation[1] > layers.insulation[0] ? [measure(layers.insulation[0], layers.insulation[1], 'wall.insulationThickness', 'insulation', known.length('wall.insulationThickness') !== undefined)] : []),
  ].filter(({ from, to }) => to - from > 0.01)
  return dimensionLine({ along: 'x', at: y - 5, from: y - 1, least: Math.min(x0, 16), greatest: labelsAt - 2, side: 'before', measures })
}

function labels(all: readonly Label[], top: number, bottom: number): readonly Shape[] {
  const middles = spread(all.map(({ at }) => ({ middle: at[1], size: 4.2 })), top, bottom, 0.2)
  return all.map(({ text, at }, index) => {
    const y = middles[index] ?? 0
    return part('label', [strokes('leader', [[labelsAt - 1, y], [labelsAt - 4, y], at]), words(fitted(text, insideWidth - labelsAt, textSize), [labelsAt, y + 1])])
  })
}
