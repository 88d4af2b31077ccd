/** A size to be cut, so many times: its length and one saw cut, so that what is left of a bar is counted right. */
interface Size {
  readonly length: number
  readonly count: number
}

/** A stock length: what it costs in bought length, and the room on it for pieces that each bring one saw cut along. */
interface StockRoom {
  readonly cost: number
  readonly room: number
}

/** Which sizes come off one bar, and how many of each; `takes` goes by the order of the sizes. */
export interface Pattern {
  readonly stock: StockRoom
  readonly takes: readonly number[]
}

/**
 * A cutting job in whole nanometres: sizes from long to short, stock from short to long.
 * The last piece of a bar needs no saw cut after it, so a bar has room for one cut more than it is long.
 */
export interface CuttingJob {
  readonly sizes: readonly Size[]
  readonly stocks: readonly StockRoom[]
}

export type Counts = readonly number[]

/** Stock on which not even the shortest piece has room is left out. */
export function cuttingJob(lengths: ReadonlyMap<number, number>, stockLengths: readonly number[], kerf: number, trim: number): CuttingJob {
  const sizes = [...lengths].map(([length, count]) => ({ length: length + kerf, count })).toSorted((one, other) => other.length - one.length)
  const shortest = sizes.at(-1)?.length ?? 0
  const stocks = [...new Set(stockLengths)].toSorted((one, other) => one - other).map((cost) => ({ cost, room: cost - trim + kerf }))
  return { sizes, stocks: stocks.filter(({ room }) => room >= shortest) }
}

export function countsOf({ sizes }: CuttingJob): Counts {
  return sizes.map(({ count }) => count)
}

export function costOf(patterns: readonly Pattern[]): number {
  return patterns.reduce((sum, { stock }) => sum + stock.cost, 0)
}

export function lengthOf({ sizes }: CuttingJob, takes: Counts): number {
  return sizes.reduce((sum, { length }, index) => sum + length * (takes[index] ?? 0), 0)
}

/** What is still to be cut after one bar. */
export function after(left: Counts, takes: Counts): Counts {
  return left.map((count, index) => count - (takes[index] ?? 0))
}

export function nothing(left: Counts): boolean {
  return left.every((count) => count === 0)
}

/** The shortest stock that holds these pieces. */
export function shortestFor(job: CuttingJob, takes: Counts): StockRoom | undefined {
  const length = lengthOf(job, takes)
  return job.stocks.find(({ room }) => room >= length)
}

/** How much work may be done, counted in steps, so that the answer hangs on no clock. */
export interface Effort {
  /** Takes one step; false once there are none left. */
  readonly spend: () => boolean
  readonly isSpent: () => boolean
}

export function effort(limit: number): Effort {
  let left = limit
  return { spend: () => (left -= 1) >= 0, isSpent: () => left < 0 }
}
