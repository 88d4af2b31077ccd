import type { Dimension } from '../units/dimension.ts'
import { lintelWeighs } from './lintel-schedule.ts'
import type { QuantityResult } from './result.ts'
import { splicesCut } from './stock-to-cut.ts'
import { amountOf, flashingPieces, lintelPieces, type FlashingPiece, type LintelPiece, type ScheduledOpening } from './schedule-pieces.ts'

/** The sum of a quantity over the openings for which it is known. */
export interface Total {
  readonly quantity: string
  readonly title: string
  readonly dimension: Dimension | null
  readonly total: number
  /** References of the openings that are in the sum, of those to which it does not apply, and of those that lack it. */
  readonly counted: readonly string[]
  readonly notApplicable: readonly string[]
  readonly notKnown: readonly string[]
}

/** A quantity that an opening ought to have and has not; the totals are short of it. */
export interface Gap {
  readonly reference: string
  readonly count: number
  readonly quantity: string
  readonly title: string
  readonly missing: readonly string[]
  readonly why: string | null
}

export interface BuildingTakeOff {
  readonly openings: number
  readonly lintels: readonly LintelPiece[]
  readonly flashing: readonly FlashingPiece[]
  readonly totals: readonly Total[]
  readonly gaps: readonly Gap[]
}

/** What is added up, in the order in which it is shown. */
const summed = [
  ['weeps.head-count', 'Weeps over the heads'],
  ['weeps.sill-count', 'Weeps under the sills'],
  ['ties.around-opening', 'Ties around the openings'],
  ['coursing.sill-units', 'Rowlock bricks in the sills'],
  ['coursing.head-units', 'Soldier or rowlock bricks over the heads'],
  ['takeoff.returns', 'Bricks for deep returns'],
  ['takeoff.opening-deduction', 'Bricks taken off for the openings'],
  ['takeoff.sealant-length', 'Sealant around the frames'],
  ['takeoff.backer-rod', 'Backer rod around the frames'],
] as const

const ofPieces = [
  ['lintel.length', 'Lintels, length'],
  ['flashing.head-cut-length', 'Head flashing, cut length'],
  ['flashing.head-girth', 'Head flashing, girth'],
  ['sill.flashing-cut-length', 'Sill flashing, cut length'],
  ['sill.flashing-girth', 'Sill flashing, girth'],
] as const

/** Everything that adding up a schedule looks at, so that the rest of an evaluation need not be kept. */
export const quantitiesTakenOff: ReadonlySet<string> = new Set([
  ...[...summed, ...ofPieces].map(([quantity]) => quantity), 'lintel.lightest-angle', ...splicesCut, ...lintelWeighs,
])

/** Adds up an opening schedule. What is not known is a gap, never a nought in a total. */
export function buildingTakeOff(openings: readonly ScheduledOpening[]): BuildingTakeOff {
  for (const { reference, count } of openings) {
    if (!Number.isSafeInteger(count) || count < 0) throw new RangeError(`opening ${reference}: ${count} is no number of openings`)
  }
  return {
    openings: openings.reduce((sum, { count }) => sum + count, 0),
    lintels: lintelPieces(openings),
    flashing: flashingPieces(openings),
    totals: summed.map(([quantity, title]) => totalOf(quantity, title, openings)),
    gaps: openings.flatMap(gapsOf),
  }
}

function totalOf(quantity: string, title: string, openings: readonly ScheduledOpening[]): Total {
  const known = openings.flatMap(({ reference, count, results }) => {
    const amount = amountOf(results.get(quantity))
    return amount === undefined ? [] : [{ reference, amount: amount * count }]
  })
  const counted = known.map(({ reference }) => reference)
  const without = openings.filter(({ results }) => results.get(quantity)?.status === 'notApplicable').map(({ reference }) => reference)
  const dimension = openings.map(({ results }) => results.get(quantity)?.dimension).find((one) => one !== undefined && one !== null) ?? null
  return {
    quantity, title, dimension, total: known.reduce((sum, { amount }) => sum + amount, 0), counted, notApplicable: without,
    notKnown: openings.map(({ reference }) => reference).filter((reference) => !counted.includes(reference) && !without.includes(reference)),
  }
}

function gapsOf(opening: ScheduledOpening): readonly Gap[] {
  const { reference, count, results } = opening
  const unknown = [...ofPieces, ...summed].filter(([quantity]) => isUnknown(results.get(quantity)))
  const section = needsSection(opening) ? [['lintel.lightest-angle', 'Lintels, section'] as const] : []
  return [...section, ...unknown].map(([quantity, title]) => {
    const result = results.get(quantity)
    return { reference, count, quantity, title, missing: result?.missing ?? [], why: result ? result.why : 'It was not computed for this opening.' }
  })
}

/** A lintel whose angle is neither described nor found. */
function needsSection({ section, results }: ScheduledOpening): boolean {
  return section === undefined && amountOf(results.get('lintel.length')) !== undefined && isUnknown(results.get('lintel.lightest-angle'))
}

function isUnknown(result: QuantityResult | undefined): boolean {
  return result === undefined || result.status === 'notDetermined'
}
