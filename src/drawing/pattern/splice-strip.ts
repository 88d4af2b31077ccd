import type { UnitSystem } from '../../units/dimension.ts'
import { dimensionLine, dimensionRoom, type Measure } from '../dimension-line.ts'
import type { Spliced, Stretch } from '../laid-splices.ts'
import { dimensionText } from '../length-words.ts'
import { scaleFor } from '../scale.ts'
import { box, part, textSize, type Group, type Shape } from '../shape.ts'
import { textWidth } from '../text-width.ts'

export interface StripRoom {
  readonly left: number
  readonly width: number
  readonly top: number
  readonly system: UnitSystem
}

export interface SpliceStrip {
  readonly group: Group
  readonly height: number
  readonly scale: string
}

const [high, step, textGap] = [3.2, 1.2, 1.4]

/** The whole length of a blank in its pieces, each a little under or over the next, with their laps and measures. */
export function spliceStrip({ pieces, laps }: Spliced, { left, width, top, system }: StripRoom): SpliceStrip {
  const scale = scaleFor(system, [[pieces.at(-1)?.to ?? 0, width]])
  const x = (place: number) => left + place / scale.ratio
  const upper = top + dimensionRoom
  const lower = upper + high + step
  const shapes: Shape[] = [
    ...pieces.map(({ number, from, to }) => { const y = upper + (number % 2 === 0 ? step : 0); return part('piece', [box('visible', [x(from), y], [x(to), y + high])], { piece: String(number), from: String(from), to: String(to) }) }),
    ...laps.map(({ number, from, to }) => part('lap', [box('lap', [x(from), upper], [x(to), lower])], { lap: String(number), from: String(from), to: String(to) })),
    dimensionLine({ along: 'x', at: upper - 3, from: upper - 0.8, least: left - 1, greatest: left + width, side: 'before', measures: measures(laps, 'lap', { x, system, width }) }),
    dimensionLine({ along: 'x', at: lower + 3, from: lower + 0.8, least: left - 1, greatest: left + width, side: 'after', measures: measures(pieces, 'piece', { x, system, width }) }),
  ]
  return { group: part('splices', shapes), height: lower + dimensionRoom + 1 - top, scale: scale.text }
}

interface Measuring {
  readonly x: (place: number) => number
  readonly system: UnitSystem
  readonly width: number
}

/** Every measure where there is room for all; else the first alone, and the list tells the others. */
function measures(stretches: readonly Stretch[], what: string, { x, system, width }: Measuring): readonly Measure[] {
  const all = stretches.map(({ number, from, to }): Measure => ({ from: x(from), to: x(to), text: `${what} ${dimensionText(to - from, system)}`, name: `${what}:${number}`, known: true }))
  return all.reduce((sum, { text }) => sum + textWidth(text, textSize) + textGap, 0) <= width ? all : all.slice(0, 1)
}

const mostListed = 24

/** Pieces by their lengths and laps by where they begin, in words. */
export function spliceList({ pieces, laps }: Spliced, system: UnitSystem): string {
  return `Pieces from the left end: ${listed(pieces.map(({ from, to }) => dimensionText(to - from, system)))}. Laps from the left end: ${listed(laps.map(({ from, to }) => `${dimensionText(from, system)} to ${dimensionText(to, system)}`))}.`
}

function listed(texts: readonly string[]): string {
  const more = texts.length - mostListed
  return `${texts.slice(0, mostListed).join(', ')}${more > 0 ? `, and ${more} more, as computed` : ''}`
}
