import { countsOf, type Counts, type CuttingJob } from './cutting-job.ts'
import { bestFilling } from './cutting-knapsack.ts'
import { relaxed, type Fractional } from './cutting-relaxation.ts'

/**
 * What each size is worth in bought length, so that no bar can bring more than it costs.
 * Whatever is left to be cut then costs at least the sum of its worths.
 */
export interface Worths {
  readonly each: readonly number[]
  /** The patterns of the fractional solution and how often each is cut, as a start for whole ones. */
  readonly fractional: Fractional
}

const priceSteps = 2 ** 24

/**
 * The fractional bound of Gilmore and Gomory (Operations Research 9, 1961). Its prices come out of floating-point arithmetic;
 * they are rounded and then scaled so that no bar exceeds its cost (Farley, Operations Research 38, 1990), which makes the bound hold whatever the rounding did.
 */
export function worthsOf(job: CuttingJob): Worths {
  const { prices, fractional } = relaxed(job)
  const whole = prices.map((price) => Math.max(0, Math.floor(price * priceSteps)))
  const lengths = job.sizes.map(({ length }) => length)
  const candidates = [scaled(job, whole), scaled(job, lengths)]
  const counts = countsOf(job)
  const [first = [], second = []] = candidates
  return { each: leastCost(first, counts) >= leastCost(second, counts) ? first : second, fractional }
}

/** The length that has to be bought for these counts, before it is rounded up to whole bars. */
export function leastCost(worths: readonly number[], counts: Counts): number {
  const sum = worths.reduce((total, worth, index) => total + worth * (counts[index] ?? 0), 0)
  return sum - sum * 1e-9
}

function scaled(job: CuttingJob, prices: readonly number[]): readonly number[] {
  const lengths = job.sizes.map(({ length }) => length)
  const most = Math.max(...job.stocks.map(({ cost, room }) => bestFilling(lengths, prices, countsOf(job), room).ceiling / cost))
  return most > 0 ? prices.map((price) => price / most) : prices.map(() => 0)
}
