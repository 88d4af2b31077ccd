import { jambOnBlank, type FlashingPlace } from '../blank-places.ts'
import type { Known } from '../known.ts'
import { laidSplices, spliceQuantities } from '../laid-splices.ts'

/** The laps of a flashing along the wall, in millimeters from the left jamb. */
export interface SplicePlaces {
  readonly laps: readonly Lap[]
  /** How far the pieces lap; undefined where that is not known. */
  readonly length: number | undefined
  /** Whether the laps lie where they are drawn. */
  readonly known: boolean
  readonly notes: readonly string[]
}

export interface Lap {
  readonly from: number
  readonly to: number
}

/** The ends of a flashing as it is drawn. */
export type PanEnds = readonly [left: number, right: number]

const unknownLap = 150
const none: SplicePlaces = { laps: [], length: undefined, known: true, notes: [] }

/** Laps as they are laid out; where others are described, those, spread evenly, since nobody says where they lie. */
export function splicePlaces(known: Known, place: FlashingPlace, pan: PanEnds | undefined, width: number): SplicePlaces {
  if (!pan || pan[1] <= pan[0]) return none
  const result = known.result(spliceQuantities[place])
  const laid = laidSplices(known, place)?.laps
  const described = place === 'head' ? Number(known.told('head.flashing.splices') ?? NaN) : NaN
  if (laid && (Number.isNaN(described) || described === laid.length)) return laid.length === 0 ? none : placed(known, place, pan, width, laid)
  if (described > 0) return { ...spread(described, known.length('head.flashing.spliceLap'), pan), notes: [unplaced(place), ...otherwise(place, described, laid)] }
  if (laid) return { ...none, notes: [`The ${place} flashing is described in one piece; as it is laid out it has ${counted(laid.length)}.`] }
  return { ...none, notes: result?.why ? [`Splices of the ${place} flashing are not laid out: ${result.why}`] : [] }
}

function placed(known: Known, place: FlashingPlace, pan: PanEnds, width: number, laid: readonly Lap[]): SplicePlaces {
  const jamb = jambOnBlank(known, place, width)
  const length = Math.max(...laid.map(({ from, to }) => to - from))
  if (jamb === undefined) return { ...spread(laid.length, length, pan), notes: [unplaced(place)] }
  const laps = laid.map(({ from, to }) => ({ from: from - jamb, to: to - jamb }))
  const seen = laps.filter(({ from, to }) => from >= pan[0] - unseen && to <= pan[1] + unseen)
  return { laps: seen, length, known: true, notes: seen.length === laps.length ? [] : [`The ${place} flashing is shorter than it is laid out; ${counted(laps.length - seen.length)} past its end ${laps.length - seen.length === 1 ? 'is' : 'are'} not drawn.`] }
}

const unseen = 1e-3

/** Evenly along the flashing, none on the next. */
function spread(count: number, length: number | undefined, [left, right]: PanEnds): Omit<SplicePlaces, 'notes'> {
  const every = (right - left) / (count + 1)
  const half = Math.min(length ?? unknownLap, every / 2) / 2
  return { laps: Array.from({ length: count }, (_, index) => { const middle = left + (index + 1) * every; return { from: middle - half, to: middle + half } }), length, known: false }
}

function unplaced(place: FlashingPlace): string {
  return `Where the splices of the ${place} flashing lie is not known; they are drawn dashed and evenly spread.`
}

function otherwise(place: FlashingPlace, described: number, laid: readonly Lap[] | undefined): readonly string[] {
  return laid ? [`The ${place} flashing is described with ${counted(described)}; as it is laid out it has ${counted(laid.length)}.`] : []
}

function counted(splices: number): string {
  return splices === 0 ? 'no splice' : splices === 1 ? 'one splice' : `${splices} splices`
}
