import type { FullEvaluation } from '../evaluation/evaluate.ts'
import type { Opening } from '../opening/opening.ts'
import type { UnitSystem } from '../units/dimension.ts'
import { balloonRoom, balloons, roomForBalloons } from './balloon.ts'
import { knownOf, type Known } from './known.ts'
import { calledOutIn, type CalledOut } from './callouts.ts'
import { blankOf, type Blank } from './pattern/blank.ts'
import { blankView, type BlankView } from './pattern/blank-view.ts'
import { laidSplices, spliceQuantities, type Spliced } from './laid-splices.ts'
import { spliceList, spliceStrip } from './pattern/splice-strip.ts'
import { scaleFor } from './scale.ts'
import { part, textSize, words, type Point, type Shape } from './shape.ts'
import { insideWidth, type SheetContent } from './sheet.ts'
import { wrapped } from './text-width.ts'

const left = 20
const drawnWidth = insideWidth - left - balloonRoom - 14
const tallest = 100
const lineHeight = 3.9

const places = [
  { place: 'head', quantity: 'flashing.head-cut-pattern', title: 'Head flashing', parts: { dam: 'endDam', end: 'headFlashingEnd', whole: 'headFlashing', back: 'upstand', front: 'drip' } },
  { place: 'sill', quantity: 'sill.flashing-cut-pattern', title: 'Sill flashing', parts: { dam: 'sillEndDam', end: 'sillFlashing', whole: 'sillFlashing', back: 'sillFlashing', front: 'sillFlashing' } },
] as const

/** The flat sheets from which the flashings of head and sill are folded, with their folds and measures. */
export function flashingPattern(opening: Opening, evaluation: FullEvaluation): Omit<SheetContent, 'title' | 'subtitle'> {
  const known = knownOf(opening, evaluation)
  const blanks = places.map(({ quantity }) => blankOf(known, quantity))
  const there = blanks.filter((blank) => blank !== undefined)
  const ends = there.flatMap(({ damFolds: [from, to], length }) => [Math.max(from, length - to) * 2.2])
  const scale = scaleFor(opening.unitSystem, [[Math.max(1, ...ends), (drawnWidth - 6) / 2], [Math.max(1, ...there.map(({ width }) => width)), tallest]])
  const shapes: Shape[] = []
  const anchors: (readonly [string, Point])[] = []
  let y = 0
  places.forEach((place, index) => {
    const blank = blanks[index]
    const spliced = laidSplices(known, place.place)
    shapes.push(words(place.title, [0, y + 4], { weight: 'bold', size: 3.2 }))
    y += 6
    if (blank) {
      const view = blankView(blank, { left, width: drawnWidth, top: y, scale: 1 / scale.ratio, system: opening.unitSystem, laps: spliced?.laps ?? [] })
      shapes.push(part(place.parts.whole, [view.group]))
      anchors.push(...anchorsOf(blank, view, place.parts))
      y += view.height + 2
      y += pushLines(shapes, foldsText(blank, view), y) + 2
    } else y += pushLines(shapes, whyNot(known, place.quantity), y) + 4
    if (isInPieces(spliced)) y += pushSplices(shapes, spliced, y, opening.unitSystem) + 2
  })
  return { ...around(known, evaluation, anchors, shapes, y), scale: `${there.length === 0 ? 'Not to scale.' : `Scale ${scale.text} when printed at full size; a long blank is cut in its middle.`}${opening.unitSystem === 'si' ? ' Millimeters.' : ''}` }
}

function isInPieces(spliced: Spliced | undefined): spliced is Spliced {
  return spliced !== undefined && spliced.laps.length > 0
}

function pushSplices(shapes: Shape[], spliced: Spliced, y: number, system: UnitSystem): number {
  const strip = spliceStrip(spliced, { left, width: drawnWidth, top: y + 5, system })
  shapes.push(words(`Splices, ${strip.scale}`, [0, y + 4], { weight: 'bold' }), strip.group)
  return 5 + strip.height + pushLines(shapes, spliceList(spliced, system), y + 5 + strip.height)
}

function around(known: Known, evaluation: FullEvaluation, anchors: readonly (readonly [string, Point])[], shapes: readonly Shape[], height: number): Omit<SheetContent, 'title' | 'subtitle' | 'scale'> {
  const calledOut: CalledOut = calledOutIn(new Map(anchors), evaluation)
  const tall = Math.max(height, roomForBalloons(calledOut.groups.length))
  const numbers = balloons(calledOut.groups, { left: insideWidth - balloonRoom / 2, right: insideWidth - balloonRoom / 2, top: 0, bottom: tall })
  const notes = [...places.map(({ quantity }) => quantity), ...Object.values(spliceQuantities)].flatMap((quantity) => { const result = known.result(quantity); return result?.status === 'computed' ? [...result.assumptions, ...result.notes] : [] })
  const unsplit = places.flatMap(({ place, title }) => { const why = known.result(spliceQuantities[place])?.why; return why && known.result(spliceQuantities[place])?.status === 'notDetermined' ? [`${title}, splices not known: ${why}`] : [] })
  return {
    view: { height: tall + 2, shapes: [...shapes, numbers] }, calledOut, unknown: known.lacking(),
    notes: [...new Set([...notes, ...unsplit])], key: [['fold', 'fold up, toward the wet side'], ['hidden', 'fold down'], ['cut', 'cut'], ...(places.some(({ place }) => isInPieces(laidSplices(known, place))) ? [['lap', 'lap of two pieces'] as const] : [])],
  }
}

function anchorsOf({ damFolds: [leftFold, rightFold], length, width, folds }: Blank, { at }: BlankView, parts: (typeof places)[number]['parts']): readonly (readonly [string, Point])[] {
  const back = folds.find(({ name }) => name === 'Upstand')?.from[1] ?? width
  const middle = back * 0.6
  return [
    [parts.whole, at(length * 0.9, middle)], [parts.back, at(rightFold - (length - rightFold) / 2, (back + width) / 2)], [parts.front, at(rightFold - (length - rightFold), 1)],
    [`${parts.end}:left`, at(leftFold, middle)], [`${parts.end}:right`, at(rightFold, middle)], [`${parts.dam}:left`, at(leftFold / 2, middle)], [`${parts.dam}:right`, at((length + rightFold) / 2, middle)],
  ]
}

function foldsText({ folds }: Blank, { letters }: BlankView): string {
  const texts = folds.map((fold) => {
    const letter = letters.find((one) => one.fold === fold)?.letter
    return `${letter === undefined ? '' : `${letter} `}${fold.name}, ${fold.direction} ${Number(fold.angle.toFixed(1))}°${letter === undefined ? ' (too small for a letter)' : ''}`
  })
  return `Folds: ${texts.join('; ')}.`
}

function whyNot(known: Known, quantity: string): string {
  const result = known.result(quantity)
  if (result?.status === 'notApplicable') return `No blank: ${result.why ?? 'there is no such flashing here.'}`
  return `No blank: ${result?.why ?? 'facts are missing; they are listed below.'}`
}

function pushLines(shapes: Shape[], text: string, y: number): number {
  const lines = wrapped(text, insideWidth - balloonRoom - 6, textSize)
  lines.forEach((line, index) => shapes.push(words(line, [0, y + 3.4 + index * lineHeight])))
  return lines.length * lineHeight
}
