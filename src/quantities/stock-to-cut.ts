import type { Piece } from './cutting-bars.ts'
import { amountOf, type ScheduledOpening } from './schedule-pieces.ts'
import { splicedPieces } from './splice-layout.ts'

/** Pieces of flashing that come out of stock of one width and length, all in nanometers. */
export interface StockToCut {
  readonly place: 'head' | 'sill'
  /** Width of the stock; null where it is not known. */
  readonly girth: number | null
  readonly stockLength: number
  readonly pieces: readonly Piece[]
}

const places = [
  ['head', 'flashing.head-splices', 'flashing.head-girth'],
  ['sill', 'sill.flashing-splices', 'sill.flashing-girth'],
] as const

/** What tells how flashing is spliced. */
export const splicesCut: readonly string[] = places.map(([, splices]) => splices)

/** The pieces of a schedule after splicing, by the stock that they are cut from. */
export function stockToCut(openings: readonly ScheduledOpening[]): readonly StockToCut[] {
  const stocks = new Map<string, StockToCut>()
  for (const { reference, count, results } of openings) {
    for (const [place, splices, width] of places) {
      const spliced = splicedPieces(results.get(splices))
      if (!spliced) continue
      const girth = amountOf(results.get(width)) ?? null
      const key = `${place} ${girth ?? ''} ${spliced.stockLength}`
      const pieces = spliced.lengths.map((length, index): Piece => ({ reference: spliced.lengths.length === 1 ? reference : `${reference}, piece ${index + 1}`, length, count }))
      stocks.set(key, { place, girth, stockLength: spliced.stockLength, pieces: [...(stocks.get(key)?.pieces ?? []), ...pieces] })
    }
  }
  return [...stocks.values()]
}
