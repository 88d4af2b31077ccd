import { numberIn, type Known } from '../known.ts'

export type Spot = readonly [x: number, y: number]

export interface BlankFold {
  readonly name: string
  readonly from: Spot
  readonly to: Spot
  readonly direction: string
  readonly angle: number
}

/** The flat blank of a flashing as it was computed, in millimeters from its lower left corner with the wet side up. */
export interface Blank {
  readonly outline: readonly Spot[]
  readonly folds: readonly BlankFold[]
  readonly length: number
  readonly width: number
  /** Where the dams are folded; the ends of the blank where there are none. */
  readonly damFolds: readonly [left: number, right: number]
}

export function blankOf(known: Known, quantity: string): Blank | undefined {
  const [points, lines] = [known.rows(quantity, 0), known.rows(quantity, 1)]
  if (!points || !lines) return undefined
  const outline = points.map((row): Spot => [numberIn(row, 1) ?? 0, numberIn(row, 2) ?? 0])
  const folds = lines.map((row): BlankFold => ({
    name: String(row[0]), from: [numberIn(row, 1) ?? 0, numberIn(row, 2) ?? 0], to: [numberIn(row, 3) ?? 0, numberIn(row, 4) ?? 0], direction: String(row[5]), angle: numberIn(row, 6) ?? 0,
  }))
  const length = Math.max(...outline.map(([x]) => x))
  const damAt = (side: string) => folds.find(({ name }) => name === `${side} end dam`)?.from[0]
  return { outline, folds, length, width: Math.max(...outline.map(([, y]) => y)), damFolds: [damAt('Left') ?? 0, damAt('Right') ?? length] }
}

/** The places across the blank at which something is folded, with its edges, from the front up. */
export function levelsOf({ folds, width }: Blank): readonly number[] {
  const across = folds.filter(({ from, to }) => from[1] === to[1] && Math.abs(to[0] - from[0]) > 0 && !/ear/.test(folds.find((one) => one.from === from)?.name ?? ''))
  return [...new Set([0, ...across.map(({ from }) => from[1]), width])].toSorted((a, b) => a - b)
}
