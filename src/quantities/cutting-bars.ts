import type { Pattern } from './cutting-job.ts'

/** Pieces of one length under one reference, such as the mark of an opening. */
export interface Piece {
  readonly reference: string
  readonly length: number
  readonly count: number
}

/** One bar and what is cut from it, in nanometers: stock = pieces + saw cuts + trim + offcut. */
export interface Bar {
  readonly stock: number
  readonly pieces: readonly { readonly reference: string; readonly length: number }[]
  readonly sawCuts: number
  readonly trim: number
  readonly offcut: number
}

export interface Losses {
  readonly pieces: number
  readonly sawCuts: number
  readonly trim: number
  readonly offcuts: number
}

/** Gives every cut of the patterns a piece of its length, in the order in which the pieces were listed. Lengths go from long to short, as the patterns do. */
export function barsOf(patterns: readonly Pattern[], lengths: readonly number[], pieces: readonly Piece[], cut: { readonly kerf: number; readonly trim: number }): readonly Bar[] {
  const waiting = new Map(lengths.map((length) => [length, referencesOf(pieces, length)]))
  const sorted = patterns.toSorted((one, other) => other.stock.cost - one.stock.cost || compare(other.takes, one.takes))
  return sorted.map(({ stock, takes }) => barOf(stock.cost, lengths.flatMap((length, size) => (waiting.get(length) ?? []).splice(0, takes[size] ?? 0).map((reference) => ({ reference, length }))), cut))
}

export function lossesOf(bars: readonly Bar[]): Losses {
  const sum = (part: (bar: Bar) => number) => bars.reduce((total, bar) => total + part(bar), 0)
  return {
    pieces: sum(({ pieces }) => pieces.reduce((total, { length }) => total + length, 0)),
    sawCuts: sum(({ sawCuts }) => sawCuts), trim: sum(({ trim }) => trim), offcuts: sum(({ offcut }) => offcut),
  }
}

/** A last cut is needed only where something is left beside the last piece; it takes no more than that. */
function barOf(stock: number, pieces: Bar['pieces'], { kerf, trim }: { readonly kerf: number; readonly trim: number }): Bar {
  const between = Math.max(0, pieces.length - 1) * kerf
  const left = stock - trim - between - pieces.reduce((total, { length }) => total + length, 0)
  const last = Math.min(kerf, left)
  return { stock, pieces, sawCuts: between + last, trim, offcut: left - last }
}

function referencesOf(pieces: readonly Piece[], wanted: number): string[] {
  return pieces.filter(({ length }) => length === wanted).flatMap(({ reference, count }) => Array.from({ length: count }, () => reference))
}

function compare(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((count, size) => count !== other[size])
  return at < 0 ? 0 : (one[at] ?? 0) - (other[at] ?? 0)
}
