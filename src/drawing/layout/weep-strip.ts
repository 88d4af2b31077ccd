import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { weepTick } from '../elevation/weeps.ts'
import { numberIn, type Row } from '../known.ts'
import { dimensionText } from '../length-words.ts'
import { part, strokes, words, type Shape } from '../shape.ts'
import { spread } from '../spread.ts'

export const stripHeight = 20
const line = 12

/** The flashing as a line with its jambs and the weeps of the layout on it, each with its number. */
export function weepStrip({ at, known }: Frame, place: 'head' | 'sill', width: number, length: number | undefined): Drawn {
  const rows = known.rows(`weeps.${place}-positions`)
  const past = pastOf(rows?.[0])
  if (!rows || length === undefined || past === undefined) return nothing
  const x = (fromJamb: number) => at(fromJamb, 0)[0]
  const weeps = rows.flatMap((row) => { const [number, from] = [numberIn(row, 0), numberIn(row, 3)]; return number === undefined || from === undefined ? [] : [{ number, from }] })
  const every = Math.ceil(weeps.length / 30)
  const numbered = weeps.filter((_, index) => index % every === 0 || index === weeps.length - 1)
  const middles = spread(numbered.map(({ from }) => ({ middle: x(from), size: 3.8 })), x(-past) - 4, x(length - past) + 4, 0.4)
  const shapes: Shape[] = [
    strokes('sheetMetal', [[x(-past), line - 3], [x(-past), line], [x(length - past), line], [x(length - past), line - 3]]),
    strokes('hidden', [[x(0), line - 4], [x(0), line + 4]], [[x(width), line - 4], [x(width), line + 4]]),
    ...weeps.map(({ number, from }) => part('weep', [weepTick([x(from), line])], { weep: String(number), x: String(from) })),
    ...numbered.map(({ number, from }, index) => part('weepNumber', [words(String(number), [middles[index] ?? 0, 5], { anchor: 'middle' }), strokes('leader', [[middles[index] ?? 0, 5.8], [x(from), line - 2.4]])])),
    words('jamb', [x(0), line + 7], { anchor: 'middle' }), words('jamb', [x(width), line + 7], { anchor: 'middle' }),
  ]
  return { shapes: [part(`${place}Weeps`, shapes)], anchors: [[`${place}Weeps`, [x(weeps.at(-1)?.from ?? 0), line]]] }
}

function pastOf(row: Row | undefined): number | undefined {
  const [fromDam, fromJamb] = [numberIn(row, 2), numberIn(row, 3)]
  return fromDam === undefined || fromJamb === undefined ? undefined : fromDam - fromJamb
}

/** Every weep by its distance from the left end dam, in one line of text. */
export function weepList({ known, system }: Frame, place: 'head' | 'sill'): string | undefined {
  const rows = known.rows(`weeps.${place}-positions`)
  if (!rows) return undefined
  const at = rows.map((row) => `${String(row[0])}: ${dimensionText(numberIn(row, 2) ?? 0, system)}`)
  return `From the left end dam: ${at.join(', ')}.`
}
