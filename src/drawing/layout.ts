import type { FullEvaluation } from '../evaluation/evaluate.ts'
import type { Opening } from '../opening/opening.ts'
import { millimetres } from '../units/length.ts'
import { balloonRoom, balloons, roomForBalloons } from './balloon.ts'
import { dimensionLine, dimensionRoom } from './dimension-line.ts'
import type { Drawn, Frame } from './drawn.ts'
import { knownOf, type Known } from './known.ts'
import { stripHeight, weepList, weepStrip } from './layout/weep-strip.ts'
import { tieList, tiePlan, wallEnds } from './layout/tie-plan.ts'
import { dimensionText } from './length-words.ts'
import { calledOutIn } from './callouts.ts'
import { scaleFor } from './scale.ts'
import { moved, textSize, words, type Point, type Shape } from './shape.ts'
import { insideWidth, type SheetContent } from './sheet.ts'
import { wrapped } from './text-width.ts'

const drawnLeft = 14
const drawnWidth = insideWidth - drawnLeft - balloonRoom - 8
const tallest = 110
const lineHeight = 3.9

/** A block of the layout: its heading, its drawing and the positions in words. */
interface Block {
  readonly title: string
  readonly drawn: Drawn
  readonly height: number
  readonly text: string
}

/** Where every weep of head and sill and every tie of the wall goes. */
export function layout(opening: Opening, evaluation: FullEvaluation): Omit<SheetContent, 'title' | 'subtitle'> | undefined {
  const known = knownOf(opening, evaluation)
  const [width, height] = [known.length('opening.width'), known.length('opening.height')]
  if (width === undefined || height === undefined) return undefined
  const shapes: Shape[] = []
  const anchors: (readonly [string, Point])[] = []
  const scales: string[] = []
  let y = 0
  for (const block of [weepBlock(known, opening, 'head', width), weepBlock(known, opening, 'sill', width), tieBlock(known, opening, width, height)]) {
    shapes.push(words(`${block.title}${block.scale === undefined ? '' : `, ${block.scale}`}`, [0, y + 4], { weight: 'bold', size: 3.2 }))
    y += 6
    shapes.push(...block.drawn.shapes.map((shape) => moved(shape, 0, y)))
    for (const [part, [ax, ay]] of block.drawn.anchors ?? []) anchors.push([part, [ax, ay + y]])
    if (block.scale !== undefined) scales.push(block.scale)
    y += block.height
    const lines = wrapped(block.text, insideWidth - balloonRoom - 6, textSize)
    lines.forEach((line, index) => shapes.push(words(line, [0, y + 3.4 + index * lineHeight])))
    y += lines.length * lineHeight + 4
  }
  const calledOut = calledOutIn(new Map(anchors), evaluation)
  const column = insideWidth - balloonRoom / 2
  const tall = Math.max(y, roomForBalloons(calledOut.groups.length) + 4)
  return {
    view: { height: tall, shapes: [...shapes, balloons(calledOut.groups, { left: column, right: column, top: 2, bottom: tall - 2 })] },
    scale: `${scales.length === 0 ? 'Not to scale.' : 'To scale when printed at full size, as each part says; weeps and ties are drawn larger than they are.'}${opening.unitSystem === 'si' ? ' Millimeters.' : ''}`,
    calledOut, unknown: known.lacking(), notes: notesOf(known), key: [['sheetMetal', 'flashing'], ['hidden', 'jamb'], ['tie', 'tie']],
  }
}

interface ScaledBlock extends Block {
  readonly scale: string | undefined
}

const titles = { head: ['Weeps over the head', 'flashing.head-pan-length'], sill: ['Weeps under the sill', 'sill.flashing-length'] } as const

function weepBlock(known: Known, { unitSystem }: Opening, place: 'head' | 'sill', width: number): ScaledBlock {
  const [title, quantity] = titles[place]
  const value = known.result(quantity)?.value
  const length = typeof value === 'number' ? millimetres(value) : undefined
  const past = firstPast(known, place)
  const scale = scaleFor(unitSystem, [[length ?? width, drawnWidth - 8]])
  const frame: Frame = { known, system: unitSystem, scale: 1 / scale.ratio, at: (x, y) => [drawnLeft + 4 + (x + past) / scale.ratio, -y] }
  const drawn = weepStrip(frame, place, width, length)
  const isDrawn = drawn.shapes.length > 0
  return { title, drawn, height: isDrawn ? stripHeight + 2 : 0, text: weepList(frame, place) ?? whyNot(known, `weeps.${place}-positions`), scale: isDrawn ? scale.text : undefined }
}

function firstPast(known: Known, place: 'head' | 'sill'): number {
  const row = known.rows(`weeps.${place}-positions`)?.[0]
  return typeof row?.[2] === 'number' && typeof row[3] === 'number' ? row[2] - row[3] : 0
}

function tieBlock(known: Known, { unitSystem }: Opening, width: number, height: number): ScaledBlock {
  const ends = wallEnds(known)
  if (!ends) return { title: 'Ties', drawn: { shapes: [] }, height: 0, text: whyNot(known, 'ties.field-grid'), scale: undefined }
  const scale = scaleFor(unitSystem, [[ends.right - ends.left, drawnWidth], [ends.top - ends.bottom, tallest]])
  const frame: Frame = { known, system: unitSystem, scale: 1 / scale.ratio, at: (x, y) => [drawnLeft + (x - ends.left) / scale.ratio, 1 + (ends.top - y) / scale.ratio] }
  const plan = tiePlan(frame, ends, width, height)
  const [right, bottom] = frame.at(ends.right, ends.bottom)
  const lines = [
    dimensionLine({ along: 'x', at: bottom + 3, from: bottom + 0.8, least: drawnLeft - 6, greatest: Math.max(right, drawnLeft + 40), side: 'after', measures: [{ from: drawnLeft, to: right, name: 'wall', text: dimensionText(ends.right - ends.left, unitSystem), known: true }] }),
    dimensionLine({ along: 'y', at: drawnLeft - 4, from: drawnLeft - 0.8, least: -4, greatest: Math.max(bottom, 24), side: 'before', measures: [{ from: 1, to: bottom, name: 'wallHeight', text: dimensionText(ends.top - ends.bottom, unitSystem), known: true }] }),
  ]
  return { title: 'Ties', drawn: { ...plan, shapes: [...plan.shapes, ...lines] }, height: bottom + dimensionRoom + 3, text: tieList(frame) ?? '', scale: scale.text }
}

function whyNot(known: Known, quantity: string): string {
  const result = known.result(quantity)
  if (result?.status === 'notApplicable') return `Not laid out: ${result.why ?? 'it does not apply here.'}`
  return `Not laid out: ${result?.why ?? 'facts are missing; they are listed below.'}`
}

function notesOf(known: Known): readonly string[] {
  return [...new Set(['weeps.head-positions', 'weeps.sill-positions', 'ties.field-grid'].flatMap((quantity) => {
    const result = known.result(quantity)
    return result?.status === 'computed' ? [...result.assumptions, ...result.notes] : []
  }))]
}
