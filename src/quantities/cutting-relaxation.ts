import { countsOf, type CuttingJob, type Pattern } from './cutting-job.ts'
import { bestFilling } from './cutting-knapsack.ts'

/** Patterns that are cut so many times, also a part of a time. */
export type Fractional = readonly { readonly pattern: Pattern; readonly times: number }[]

interface Relaxation {
  /** Per size, in parts of the longest stock. */
  readonly prices: readonly number[]
  readonly fractional: Fractional
}

/** Changed in place: a copy for every exchange would cost more than the arithmetic. */
interface Basis {
  readonly patterns: Pattern[]
  readonly times: Float64Array
  /** Rows go by pattern, columns by size. */
  readonly inverse: readonly Float64Array[]
  readonly prices: Float64Array
}

const pivotLimit = 2 * 1e3
const quickLook = 1e3
const tolerance = 1e-9

/** Column generation: patterns may be cut a part of a time; each round brings in the pattern that saves most at the prices of the round. */
export function relaxed(job: CuttingJob): Relaxation {
  const longest = job.stocks.at(-1)?.cost ?? 1
  const basis = startOf(job, longest)
  for (let round = 0; round < pivotLimit; round += 1) {
    const entering = mostSaving(job, basis.prices, longest, quickLook) ?? mostSaving(job, basis.prices, longest)
    if (!entering || !exchange(basis, entering)) break
  }
  return { prices: [...basis.prices], fractional: basis.patterns.map((pattern, row) => ({ pattern, times: basis.times[row] ?? 0 })) }
}

/** One pattern for each size, with as many of it as a bar holds and are wanted. */
function startOf(job: CuttingJob, longest: number): Basis {
  const starts = job.sizes.map(({ length, count }, index) => {
    const options = job.stocks.map((stock) => ({ stock, many: Math.min(count, Math.floor(stock.room / length)) })).filter(({ many }) => many > 0)
    const best = options.reduce((one, other) => (other.stock.cost * one.many < one.stock.cost * other.many ? other : one))
    return { many: best.many, pattern: { stock: best.stock, takes: job.sizes.map((_, other) => (other === index ? best.many : 0)) }, times: count / best.many }
  })
  return {
    patterns: starts.map(({ pattern }) => pattern),
    times: Float64Array.from(starts, ({ times }) => times),
    inverse: starts.map(({ many }, row) => Float64Array.from(starts, (_, column) => (row === column ? 1 / many : 0))),
    prices: Float64Array.from(starts, ({ many, pattern }) => pattern.stock.cost / longest / many),
  }
}

interface Entering {
  readonly pattern: Pattern
  /** How much more its pieces are worth than its bar costs, in parts of the longest stock. */
  readonly saving: number
}

/** A quick look finds a pattern that saves as long as the prices are far off; only at the end has it to be the best there is. */
function mostSaving(job: CuttingJob, prices: Float64Array, longest: number, nodeLimit?: number): Entering | undefined {
  const lengths = job.sizes.map(({ length }) => length)
  let best: Entering | undefined
  for (const stock of job.stocks) {
    const { takes, worth } = bestFilling(lengths, [...prices], countsOf(job), stock.room, nodeLimit)
    const saving = worth - stock.cost / longest
    if (saving > (best?.saving ?? tolerance)) best = { pattern: { stock, takes }, saving }
  }
  return best
}

/** Brings a pattern in for the one that runs out first. False where none does, which only rounding can bring about. */
function exchange({ patterns, times, inverse, prices }: Basis, { pattern, saving }: Entering): boolean {
  const column = inverse.map((row) => pattern.takes.reduce((sum, many, size) => (many === 0 ? sum : sum + many * (row[size] ?? 0)), 0))
  const leaving = runsOutFirst(column, times)
  const [pivot, pivotRow] = [column[leaving], inverse[leaving]]
  if (pivot === undefined || pivotRow === undefined) return false
  const step = (times[leaving] ?? 0) / pivot
  scale(pivotRow, 1 / pivot)
  for (const [row, share] of column.entries()) {
    if (row === leaving || share === 0) continue
    times[row] = Math.max(0, (times[row] ?? 0) - share * step)
    addTo(inverse[row], pivotRow, -share)
  }
  times[leaving] = step
  addTo(prices, pivotRow, -saving)
  patterns[leaving] = pattern
  return true
}

function scale(row: Float64Array, factor: number): void {
  for (let at = 0; at < row.length; at += 1) row[at] = (row[at] ?? 0) * factor
}

function addTo(row: Float64Array | undefined, other: Float64Array, times: number): void {
  for (let at = 0; row && at < row.length; at += 1) row[at] = (row[at] ?? 0) + (other[at] ?? 0) * times
}

function runsOutFirst(column: readonly number[], times: Float64Array): number {
  let leaving = -1
  let least = Infinity
  for (const [row, share] of column.entries()) {
    const ratio = share > tolerance ? (times[row] ?? 0) / share : Infinity
    if (ratio < least) [leaving, least] = [row, ratio]
  }
  return leaving
}
