import { notice } from '../evaluation/notice.ts'
import { factTitle } from '../opening/facts.ts'
import { sign } from './balloon.ts'
import { legendText, type CalloutGroup, type CalledOut } from './callouts.ts'
import type { PenName } from './pens.ts'
import { box, moved, part, round, strokes, textSize, words, type Group, type Shape } from './shape.ts'
import { fitted, textWidth, wrapped } from './text-width.ts'

/** Fits between the margins of either common sheet, so that a scale holds when it is printed at full size. */
export const sheetWidth = 190
const margin = 5
export const insideWidth = sheetWidth - 2 * margin
const lineHeight = 3.9

export interface SheetContent {
  readonly title: string
  readonly subtitle: string
  readonly view: { readonly height: number; readonly shapes: readonly Shape[] }
  readonly scale: string
  readonly calledOut: CalledOut
  readonly unknown: readonly string[]
  readonly notes: readonly string[]
  /** How the lines are to be read. */
  readonly key: readonly (readonly [pen: PenName, words: string])[]
}

/** A block of the sheet: shapes from its own upper left corner, and how much room it takes. */
interface Block {
  readonly name: string
  readonly height: number
  readonly shapes: readonly Shape[]
}

/** The whole sheet: title, drawing, key, numbers with their words, what is not known, notes, scale and notice, inside a frame. */
export function sheet(content: SheetContent): { readonly height: number; readonly shapes: readonly Shape[] } {
  const blocks = [titleBlock(content), { name: 'view', ...content.view }, keyBlock(content), calloutsBlock(content.calledOut), ...textBlocks(content), scaleBlock(content), noticeBlock()].filter(({ height }) => height > 0)
  const placed: Group[] = []
  let y = margin
  for (const { name, height, shapes } of blocks) {
    placed.push(part(name, shapes.map((shape) => moved(shape, margin, y))))
    y += height
  }
  const height = y + margin
  return { height, shapes: [box('paper', [0, 0], [sheetWidth, height]), part('frame', [box('frame', [2, 2], [sheetWidth - 2, height - 2])]), ...placed] }
}

function titleBlock({ title, subtitle }: SheetContent): Block {
  const shapes = [
    words(fitted(title, insideWidth, 4.4, 'bold'), [0, 4.6], { size: 4.4, weight: 'bold' }),
    words(fitted(subtitle, insideWidth, textSize), [0, 9.4]),
    strokes('frame', [[0, 11.6], [insideWidth, 11.6]]),
  ]
  return { name: 'title', height: 14, shapes }
}

function keyBlock({ key }: SheetContent): Block {
  const shapes: Shape[] = []
  let [x, y] = [0, 3.4]
  for (const [pen, text] of key) {
    const width = 10 + textWidth(text, textSize) + 5
    if (x > 0 && x + width > insideWidth) [x, y] = [0, y + lineHeight]
    shapes.push(sample(pen, x, y), words(text, [x + 10, y]))
    x += width
  }
  return { name: 'key', height: key.length === 0 ? 0 : y + 3, shapes }
}

function sample(pen: PenName, x: number, y: number): Shape {
  if (pen === 'tie') return round(pen, [x + 4, y - 0.9], 0.8)
  if (pen === 'movementJoint' || pen === 'lap') return box(pen, [x, y - 1.3], [x + 8, y - 0.5])
  return pen === 'weep' ? box(pen, [x + 3.7, y - 2.2], [x + 4.3, y + 0.3]) : strokes(pen, [[x, y - 0.9], [x + 8, y - 0.9]])
}

function calloutsBlock({ groups, elsewhere }: CalledOut): Block {
  const rows = groups.map((group) => ({ group, lines: wrapped(legendText(group), insideWidth - 10, textSize, 3) }))
  const shapes: Shape[] = []
  let y = 0
  for (const { group, lines } of rows) {
    shapes.push(legendRow(group, lines, y))
    y += Math.max(6.2, lines.length * lineHeight + 1.6)
  }
  const rest = elsewhere === 0 ? [] : wrapped(`${elsewhere === 1 ? 'One more finding that fails or is not determined has' : `${elsewhere} more findings that fail or are not determined have`} no place in this drawing; the evaluation lists them.`, insideWidth, textSize)
  rest.forEach((line, index) => shapes.push(words(line, [0, y + 3.4 + index * lineHeight])))
  return { name: 'legend', height: y + (rest.length > 0 ? rest.length * lineHeight + 1.5 : 0), shapes }
}

function legendRow(group: CalloutGroup, lines: readonly string[], y: number): Group {
  const text = lines.map((line, index) => words(line, [10, y + 3.6 + index * lineHeight]))
  return part('legendRow', [...sign(group, [4, y + 2.7]), ...text], { number: String(group.number) })
}

function textBlocks({ unknown, notes }: SheetContent): readonly Block[] {
  const titles = unknown.map(factTitle)
  const missing = titles.length === 0 ? [] : [`Not known, drawn dashed or left out: ${titles.join('; ')}.`]
  return [paragraph('unknown', missing), paragraph('notes', notes)]
}

function paragraph(name: string, texts: readonly string[]): Block {
  const lines = texts.flatMap((text) => wrapped(text, insideWidth, textSize))
  return { name, height: lines.length === 0 ? 0 : lines.length * lineHeight + 1.5, shapes: lines.map((line, index) => words(line, [0, 3.4 + index * lineHeight])) }
}

function scaleBlock({ scale }: SheetContent): Block {
  const lines = wrapped(scale, insideWidth / 1.12, textSize)
  return { name: 'scale', height: 5 + lines.length * lineHeight, shapes: [strokes('frame', [[0, 1.5], [insideWidth, 1.5]]), ...lines.map((line, index) => words(line, [0, 6 + index * lineHeight], { weight: 'bold' }))] }
}

function noticeBlock(): Block {
  return paragraph('notice', [`Not to be built from by itself. ${notice}`])
}
