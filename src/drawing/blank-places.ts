import { millimetres } from '../units/length.ts'
import { ends, numberIn, type Known } from './known.ts'

export type FlashingPlace = 'head' | 'sill'

interface Quantities {
  readonly pan: string
  readonly cut: string
  /** What the end of the blank past a jamb goes by. */
  readonly pastJamb: readonly string[]
}

const quantities: Readonly<Record<FlashingPlace, Quantities>> = {
  head: { pan: 'flashing.head-pan-length', cut: 'flashing.head-cut-length', pastJamb: ['head.flashing.extensionPastJamb', 'head.support.bearing'] },
  sill: { pan: 'sill.flashing-length', cut: 'sill.flashing-cut-length', pastJamb: ['sill.flashing.extensionPastJamb'] },
}

/** How far the left jamb lies from the left end of the blank as it was computed, in millimeters; undefined where nothing tells. */
export function jambOnBlank(known: Known, place: FlashingPlace, width: number): number | undefined {
  const { pan, cut, pastJamb } = quantities[place]
  const [length, cutLength] = [lengthOf(known, pan), lengthOf(known, cut)]
  if (length === undefined || cutLength === undefined) return undefined
  const past = pastByWeeps(known, place) ?? (pastJamb.every((path) => isAlike(known, path)) ? (length - width) / 2 : undefined)
  return past === undefined ? undefined : leftDam(known, place, cutLength - length) + past
}

function lengthOf(known: Known, quantity: string): number | undefined {
  const result = known.result(quantity)
  return result?.status === 'computed' && typeof result.value === 'number' ? millimetres(result.value) : undefined
}

/** The layout of weeps is reckoned from the same dam, and from the jamb. */
function pastByWeeps(known: Known, place: FlashingPlace): number | undefined {
  const row = known.rows(`weeps.${place}-positions`)?.[0]
  const [fromDam, fromJamb] = [numberIn(row, 2), numberIn(row, 3)]
  return fromDam === undefined || fromJamb === undefined ? undefined : fromDam - fromJamb
}

function isAlike(known: Known, path: string): boolean {
  return known.glimpse(path, 'left') === known.glimpse(path, 'right')
}

/** Each dam is as high as described, and at least as high as one limit for both; so the height of both together tells the left one. */
function leftDam(known: Known, place: FlashingPlace, both: number): number {
  const [left, right] = ends.map((end) => known.glimpse(`${place}.flashing.endDamHeight`, end) ?? 0) as [number, number]
  const greater = Math.max(left, right)
  if (left === right || both / 2 >= greater) return both / 2
  return left === greater ? left : both - greater
}
