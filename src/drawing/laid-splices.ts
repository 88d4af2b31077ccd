import type { FlashingPlace } from './blank-places.ts'
import { numberIn, type Known } from './known.ts'

/** A piece or a lap, in millimeters from the left end of the blank. */
export interface Stretch {
  readonly number: number
  readonly from: number
  readonly to: number
}

/** A blank in its pieces of stock; without laps where it comes in one. */
export interface Spliced {
  readonly pieces: readonly Stretch[]
  readonly laps: readonly Stretch[]
}

export const spliceQuantities: Readonly<Record<FlashingPlace, string>> = { head: 'flashing.head-splices', sill: 'sill.flashing-splices' }

/** Undefined where they are not laid out. */
export function laidSplices(known: Known, place: FlashingPlace): Spliced | undefined {
  const quantity = spliceQuantities[place]
  if (known.result(quantity)?.status !== 'computed') return undefined
  const stretches = (table: number, [from, to]: readonly [number, number]) => (known.rows(quantity, table) ?? []).map((row): Stretch => ({ number: numberIn(row, 0) ?? 0, from: numberIn(row, from) ?? 0, to: numberIn(row, to) ?? 0 }))
  return { pieces: stretches(0, [2, 3]), laps: stretches(1, [1, 2]) }
}
