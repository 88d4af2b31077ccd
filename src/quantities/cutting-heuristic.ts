import { after, costOf, nothing, shortestFor, type Counts, type CuttingJob, type Pattern } from './cutting-job.ts'
import { bestFilling } from './cutting-knapsack.ts'
import type { Fractional } from './cutting-relaxation.ts'

/** The best of some ways of cutting that are quick and need not be the best there is. */
export function quickly(job: CuttingJob, left: Counts): readonly Pattern[] {
  return cheapest([firstFit(job, left), longestThenFull(job, left)])
}

/** Bars that are settled, and what is still to be cut. */
export interface Begun {
  readonly patterns: readonly Pattern[]
  readonly left: Counts
}

/** Whole times of the fractional solution, and what is left over after them. */
export function wholeTimes(left: Counts, fractional: Fractional): Begun {
  return begun(left, fractional.map(({ pattern, times }) => ({ pattern, times: Math.floor(times + 1e-9) })))
}

/** The patterns that come nearest to one more time, each once. */
export function nearestToWhole(left: Counts, fractional: Fractional, most: number): Begun {
  const nearest = fractional.toSorted((one, other) => (other.times % 1) - (one.times % 1)).slice(0, most)
  return begun(left, nearest.map(({ pattern }) => ({ pattern, times: 1 })))
}

function begun(left: Counts, wanted: Fractional): Begun {
  const patterns: Pattern[] = []
  let rest = left
  for (const { pattern, times } of wanted) {
    for (let time = 1; time <= times && fitsIn(pattern.takes, rest); time += 1) {
      patterns.push(pattern)
      rest = after(rest, pattern.takes)
    }
  }
  return { patterns, left: rest }
}

export function cheapest(plans: readonly (readonly Pattern[])[]): readonly Pattern[] {
  return plans.reduce((one, other) => (costOf(other) < costOf(one) ? other : one))
}

/** Pieces from long to short, each onto the first bar with room; then every bar onto the shortest stock that holds it. */
function firstFit(job: CuttingJob, left: Counts): readonly Pattern[] {
  const longest = job.stocks.at(-1)?.room ?? 0
  const bars: { takes: number[]; room: number }[] = []
  for (const [size, { length }] of job.sizes.entries()) {
    for (let piece = 0; piece < (left[size] ?? 0); piece += 1) {
      let bar = bars.find(({ room }) => room >= length)
      if (!bar) bars.push(bar = { takes: job.sizes.map(() => 0), room: longest })
      bar.takes[size] = (bar.takes[size] ?? 0) + 1
      bar.room -= length
    }
  }
  return bars.flatMap(({ takes }) => onShortest(job, takes))
}

/** The longest piece left, and beside it whatever fills its bar best; on the stock of which the greatest part is used. */
function longestThenFull(job: CuttingJob, left: Counts): readonly Pattern[] {
  const lengths = job.sizes.map(({ length }) => length)
  const patterns: Pattern[] = []
  let rest = left
  while (!nothing(rest)) {
    const first = rest.findIndex((count) => count > 0)
    const one = lengths.map((_, index) => (index === first ? 1 : 0))
    const others = after(rest, one)
    const options = job.stocks.filter(({ room }) => room >= (lengths[first] ?? 0)).map((stock) => {
      const { takes, worth } = bestFilling(lengths, lengths, others, stock.room - (lengths[first] ?? 0))
      return { pattern: { stock, takes: takes.map((many, index) => many + (one[index] ?? 0)) }, used: (worth + (lengths[first] ?? 0)) / stock.cost }
    })
    const { pattern } = options.reduce((best, other) => (other.used > best.used ? other : best))
    patterns.push(pattern)
    rest = after(rest, pattern.takes)
  }
  return patterns
}

function onShortest(job: CuttingJob, takes: Counts): readonly Pattern[] {
  const stock = shortestFor(job, takes)
  return stock ? [{ stock, takes }] : []
}

function fitsIn(takes: Counts, left: Counts): boolean {
  return takes.every((many, index) => many <= (left[index] ?? 0))
}
