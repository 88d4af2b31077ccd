import type { QuantityResult } from './result.ts'

/** One line of an opening schedule: what was computed for an opening, and how many there are of it. */
export interface ScheduledOpening {
  readonly reference: string
  readonly count: number
  /** The angle as described, where it is. */
  readonly section?: string | undefined
  readonly results: ReadonlyMap<string, QuantityResult>
}

/** Lintels of one kind to order. */
export interface LintelPiece {
  /** The angle as described, else the lightest that carries the brick; null where neither is known. */
  readonly section: string | null
  readonly chosen: 'described' | 'lightest' | 'notKnown'
  /** The least that bears enough at both ends, in nanometres. */
  readonly length: number
  readonly count: number
  readonly references: readonly string[]
}

/** Pieces of flashing of one size to cut. */
export interface FlashingPiece {
  readonly place: 'head' | 'sill'
  /** In nanometres. */
  readonly length: number
  /** From edge to edge across, in nanometres; null where it is not known. */
  readonly girth: number | null
  readonly count: number
  readonly references: readonly string[]
}

/** Lintels by section and length, each with the openings that it is for. */
export function lintelPieces(openings: readonly ScheduledOpening[]): readonly LintelPiece[] {
  return gathered(openings, ({ section, results }) => {
    const length = amountOf(results.get('lintel.length'))
    return length === undefined ? [] : [{ ...sectionOf(section, results.get('lintel.lightest-angle')), length }]
  })
}

/** Flashing by place and size. */
export function flashingPieces(openings: readonly ScheduledOpening[]): readonly FlashingPiece[] {
  return gathered(openings, ({ results }) => [
    ...piece('head', results.get('flashing.head-cut-length'), amountOf(results.get('flashing.head-girth'))),
    ...piece('sill', results.get('sill.flashing-cut-length'), amountOf(results.get('sill.flashing-girth'))),
  ])
}

/** The angle as described, else the lightest that was found. */
export function sectionOf(described: string | undefined, lightest: QuantityResult | undefined): Pick<LintelPiece, 'section' | 'chosen'> {
  if (described !== undefined) return { section: described, chosen: 'described' }
  const found = lightest?.status === 'computed' && typeof lightest.value === 'string' ? lightest.value : null
  return { section: found, chosen: found === null ? 'notKnown' : 'lightest' }
}

function piece(place: 'head' | 'sill', cutLength: QuantityResult | undefined, girth: number | undefined) {
  const length = amountOf(cutLength)
  return length === undefined ? [] : [{ place, length, girth: girth ?? null }]
}

/** Equal pieces in one line, in the order in which the schedule first has them. */
function gathered<T extends object>(openings: readonly ScheduledOpening[], pieces: (opening: ScheduledOpening) => readonly T[]) {
  const lines = new Map<string, T & { readonly count: number; readonly references: readonly string[] }>()
  for (const opening of openings) {
    for (const one of pieces(opening)) {
      const line = lines.get(JSON.stringify(one))
      lines.set(JSON.stringify(one), { ...one, count: (line?.count ?? 0) + opening.count, references: [...(line?.references ?? []), opening.reference] })
    }
  }
  return [...lines.values()]
}

/** The amount of a quantity that was computed; undefined for any other. */
export function amountOf(result: QuantityResult | undefined): number | undefined {
  return result?.status === 'computed' && typeof result.value === 'number' ? result.value : undefined
}
