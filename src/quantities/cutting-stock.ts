import { leastCost, worthsOf } from './cutting-bound.ts'
import { dived } from './cutting-dive.ts'
import type { Begun } from './cutting-heuristic.ts'
import { costOf, countsOf, cuttingJob, effort, type CuttingJob, type Pattern } from './cutting-job.ts'
import { barsOf, lossesOf, type Bar, type Losses, type Piece } from './cutting-bars.ts'
import { searched, type Search } from './cutting-search.ts'
import { roundUpTo } from './cutting-sums.ts'

/** Pieces to be cut from bars that can be had in any number. All lengths in whole nanometers. */
export interface CuttingOrder {
  readonly pieces: readonly Piece[]
  /** One or several lengths in which the stock is sold. */
  readonly stockLengths: readonly number[]
  /** Width of a saw cut; one less of them than pieces is needed on a bar that is used up. */
  readonly kerf?: number
  /** Cut off every bar before it is used, both ends together. */
  readonly trim?: number
  /** How many steps the search for the best may take; fewer for a quick answer. */
  readonly searchSteps?: number
}

/** A piece that no bar holds: it has to be spliced from shorter ones first. */
export interface TooLong {
  readonly reference: string
  readonly length: number
  readonly longest: number
}

export interface CuttingPlan extends Losses {
  readonly bars: readonly Bar[]
  /** Length bought: the sum of the bars. */
  readonly stock: number
  /** No way of cutting buys less than this. */
  readonly bound: number
  readonly gap: number
  /** True where it is proven that nothing less will do. */
  readonly optimal: boolean
}

export type Cut = { readonly possible: true; readonly plan: CuttingPlan } | { readonly possible: false; readonly tooLong: readonly TooLong[] }

const searchLimit = 180 * 1e3

/** The cutting list that buys the least length, or as little as the search found together with a proven bound. */
export function cutStock(order: CuttingOrder): Cut {
  const { pieces, stockLengths, kerf = 0, trim = 0, searchSteps = searchLimit } = order
  checkWhole(order)
  const longest = Math.max(...stockLengths) - trim
  const tooLong = pieces.filter(({ length, count }) => count > 0 && length > longest).map(({ reference, length }) => ({ reference, length, longest }))
  if (tooLong.length > 0) return { possible: false, tooLong }
  const lengths = new Map<number, number>()
  for (const { length, count } of pieces) if (count > 0) lengths.set(length, (lengths.get(length) ?? 0) + count)
  const { patterns, bound } = lengths.size > 0 ? least(cuttingJob(lengths, stockLengths, kerf, trim), searchSteps) : { patterns: [], bound: 0 }
  const bars = barsOf(patterns, [...lengths.keys()].toSorted((one, other) => other - one), pieces, { kerf, trim })
  const stock = costOf(patterns)
  return { possible: true, plan: { bars, stock, bound, gap: stock - bound, optimal: stock === bound, ...lossesOf(bars) } }
}

/** Patterns and the bound on what any others would cost. */
function least(job: CuttingJob, searchSteps: number): { readonly patterns: readonly Pattern[]; readonly bound: number } {
  const worths = worthsOf(job)
  const { best: known, nearEnd } = dived(job, countsOf(job), worths.fractional)
  const roundUp = roundUpTo(job.stocks.map(({ cost }) => cost), costOf(known))
  const bound = roundUp(leastCost(worths.each, countsOf(job)))
  if (costOf(known) <= bound) return { patterns: known, bound }
  const search = { job, worths: worths.each, roundUp, work: effort(searchSteps) }
  const closer = searchedRest(search, nearEnd, known)
  if (costOf(closer) <= bound) return { patterns: closer, bound }
  const { better = closer, complete } = searched({ ...search, work: effort(searchSteps) }, countsOf(job), costOf(closer))
  return { patterns: better, bound: complete ? costOf(better) : bound }
}

/** Keeps the bars that were settled first and searches for the rest only. */
function searchedRest(search: Search, { patterns, left }: Begun, known: readonly Pattern[]): readonly Pattern[] {
  const { better } = searched(search, left, costOf(known) - costOf(patterns))
  return better ? [...patterns, ...better] : known
}

/** Nanometers and counts are whole; anything else is a fault of the caller. */
function checkWhole({ pieces, stockLengths, kerf = 0, trim = 0 }: CuttingOrder): void {
  const isWhole = (value: number, least: number) => Number.isSafeInteger(value) && value >= least
  if (stockLengths.length === 0) throw new Error('no stock length is given')
  if (![...stockLengths, ...pieces.map(({ length }) => length)].every((length) => isWhole(length, 1))) throw new Error('a length is not a whole number of nanometers above 0')
  if (![kerf, trim, ...pieces.map(({ count }) => count)].every((value) => isWhole(value, 0))) throw new Error('a count, a saw cut or a trim is not a whole number')
}
