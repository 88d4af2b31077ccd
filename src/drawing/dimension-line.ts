import { box, part, strokes, textSize, words, type Group, type Point, type Shape } from './shape.ts'
import { spread } from './spread.ts'
import { textWidth } from './text-width.ts'

/** One measure between two places along the line, in millimeters of paper. */
export interface Measure {
  readonly from: number
  readonly to: number
  readonly text: string
  /** What is measured, for whoever looks for it. */
  readonly name: string
  readonly known: boolean
}

export interface DimensionLine {
  /** Along x, or along y. */
  readonly along: 'x' | 'y'
  /** Where the line lies across. */
  readonly at: number
  /** Where the extension lines begin. */
  readonly from: number
  /** The room for the texts. */
  readonly least: number
  readonly greatest: number
  /** On which side of the line the texts stand: before it (above, left) or after it (below, right). */
  readonly side: 'before' | 'after'
  readonly measures: readonly Measure[]
}

/** Room that one dimension line takes across. */
export const dimensionRoom = 7
const tick = 1
const past = 1.2
const textGap = 1.4

/** A dimension line with ticks; a text that has no room over its measure is moved along and led back to it. */
export function dimensionLine(line: DimensionLine): Group {
  const { measures, along, at, side } = line
  if (measures.length === 0) return part('dimensions', [])
  const middles = spread(measures.map(({ from, to, text }) => ({ middle: (from + to) / 2, size: textWidth(text, textSize) })), line.least, line.greatest, textGap)
  const place = (position: number, across: number): Point => (along === 'x' ? [position, across] : [across, position])
  const baseline = textBase(at, side)
  const drawn = measures.map((measure, index) => measured(measure, middles[index] ?? 0, { at, baseline, place, turned: along === 'y', side }))
  return part('dimensions', [...extensions(line, place), ...drawn])
}

function textBase(at: number, side: DimensionLine['side']): number {
  return side === 'before' ? at - 1.1 : at + 1.1 + textSize * 0.75
}

interface Placing {
  readonly at: number
  readonly baseline: number
  readonly place: (position: number, across: number) => Point
  readonly turned: boolean
  readonly side: DimensionLine['side']
}

function measured({ from, to, text, name, known }: Measure, middle: number, { at, baseline, place, turned, side }: Placing): Group {
  const center = (from + to) / 2
  const isAway = Math.abs(middle - center) > Math.abs(to - from) / 2 + 0.5
  const shapes: Shape[] = [
    strokes(known ? 'dimension' : 'unknown', [place(from, at), place(to, at)]),
    ...[from, to].map((end) => tickAt(place(end, at))),
    backing(text, place(middle, baseline), turned),
    words(text, place(middle, baseline), { anchor: 'middle', turned }),
  ]
  if (isAway) shapes.push(strokes('leader', [place(center, at), place(middle, side === 'before' ? at - 0.7 : at + 0.7)]))
  return part('dimension', shapes, { measure: name, known: String(known) })
}

/** Keeps lines that go on past from running through the text. */
function backing(text: string, [x, y]: Point, turned: boolean): Shape {
  const [half, up, down] = [textWidth(text, textSize) / 2 - 0.2, textSize * 0.75, textSize * 0.2]
  return turned ? box('mask', [x - up, y - half], [x + down, y + half]) : box('mask', [x - half, y - up], [x + half, y + down])
}

function tickAt([x, y]: Point): Shape {
  return strokes('cut', [[x - tick / 2, y + tick / 2], [x + tick / 2, y - tick / 2]])
}

function extensions({ measures, from, at }: DimensionLine, place: Placing['place']): readonly Shape[] {
  const ends = [...new Set(measures.flatMap((measure) => [measure.from, measure.to]))]
  const beyond = at < from ? -past : past
  return [strokes('dimension', ...ends.map((end) => [place(end, from), place(end, at + beyond)]))]
}
