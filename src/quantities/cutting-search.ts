import { leastCost } from './cutting-bound.ts'
import { after, costOf, nothing, shortestFor, type Counts, type CuttingJob, type Effort, type Pattern } from './cutting-job.ts'
import type { RoundUp } from './cutting-sums.ts'

export interface Searched {
  /** Cheaper patterns than were known; undefined where none were found. */
  readonly better: readonly Pattern[] | undefined
  /** True where everything was looked at, so that nothing cheaper than the answer exists. */
  readonly complete: boolean
}

export interface Search {
  readonly job: CuttingJob
  readonly worths: readonly number[]
  readonly roundUp: RoundUp
  readonly work: Effort
}

/** With the least cost at which the same pieces were left before. */
interface Remembering extends Search {
  readonly seen: Map<string, number>
}

/**
 * Depth first: the longest piece left is on some bar, and that bar may be taken as full as can be, so every full bar with that piece is tried.
 * A branch ends where what is left costs too much by the worths, or where the same was left before at no more cost.
 */
export function searched(search: Search, left: Counts, knownCost: number): Searched {
  const all: Remembering = { ...search, seen: new Map() }
  let better: readonly Pattern[] | undefined
  let limit = knownCost
  const visit = (rest: Counts, chosen: readonly Pattern[], cost: number): void => {
    if (cost >= limit) return
    if (nothing(rest)) {
      [better, limit] = [chosen, cost]
      return
    }
    if (!promising(all, rest, cost, limit)) return
    for (const pattern of fullBars(all, rest)) {
      if (all.work.spend()) visit(after(rest, pattern.takes), [...chosen, pattern], cost + pattern.stock.cost)
    }
  }
  visit(left, [], 0)
  return { better, complete: !all.work.isSpent() }
}

function promising({ worths, roundUp, seen }: Remembering, rest: Counts, cost: number, limit: number): boolean {
  if (roundUp(cost + leastCost(worths, rest)) >= limit) return false
  const key = rest.join()
  if ((seen.get(key) ?? Infinity) <= cost) return false
  seen.set(key, cost)
  return true
}

/** Bars with the longest piece left and no room for another, those that bring the most for their cost first. */
function fullBars({ job, worths, work }: Search, rest: Counts): readonly Pattern[] {
  const first = rest.findIndex((count) => count > 0)
  const bars = job.stocks.flatMap((stock) => {
    const takes = rest.map(() => 0)
    const found: Pattern[] = []
    const fill = (size: number, room: number, least: number): void => {
      const length = job.sizes[size]?.length
      if (length === undefined) {
        if (room < shortestLeft(job, rest, takes) && shortestFor(job, takes) === stock) found.push({ stock, takes: [...takes] })
        return
      }
      for (let many = Math.min(rest[size] ?? 0, Math.floor(room / length)); many >= least && work.spend(); many -= 1) {
        takes[size] = many
        fill(size + 1, room - many * length, 0)
      }
      takes[size] = 0
    }
    fill(first, stock.room, 1)
    return found
  })
  return bars.map((pattern) => ({ pattern, loss: costOf([pattern]) - leastCost(worths, pattern.takes) })).toSorted((one, other) => one.loss - other.loss).map(({ pattern }) => pattern)
}

function shortestLeft({ sizes }: CuttingJob, rest: Counts, takes: Counts): number {
  const size = rest.findLastIndex((count, index) => count > (takes[index] ?? 0))
  return sizes[size]?.length ?? Infinity
}
