import { effort, type Counts } from './cutting-job.ts'

/** Pieces worth the most that one bar has room for. `ceiling` is never less than the best there is, even where the work was cut short. */
export interface Filled {
  readonly takes: Counts
  readonly worth: number
  readonly ceiling: number
}

interface Item {
  readonly index: number
  readonly length: number
  readonly worth: number
  readonly count: number
}

const allNodes = 60 * 1e3

/** Bounded knapsack by depth-first branch and bound; the bound fills the rest of the bar with the best pieces, the last one in part. */
export function bestFilling(lengths: readonly number[], worths: readonly number[], counts: Counts, room: number, nodeLimit = allNodes): Filled {
  const items = itemsOf(lengths, worths, counts)
  const work = effort(nodeLimit)
  const takes = lengths.map(() => 0)
  let best: Filled = { takes: [...takes], worth: 0, ceiling: 0 }
  const visit = (at: number, left: number, worth: number): void => {
    if (worth > best.worth) best = { takes: [...takes], worth, ceiling: worth }
    const item = items[at]
    if (!item || worth + inPart(items, at, left) <= best.worth + closeEnough(best.worth)) return
    if (!work.spend()) return
    for (let many = Math.min(item.count, Math.floor(left / item.length)); many >= 0 && !work.isSpent(); many -= 1) {
      takes[item.index] = many
      visit(at + 1, left - many * item.length, worth + many * item.worth)
    }
    takes[item.index] = 0
  }
  visit(0, room, 0)
  return { ...best, ceiling: work.isSpent() ? inPart(items, 0, room) : best.worth + closeEnough(best.worth) }
}

/** Best worth per length first. */
function itemsOf(lengths: readonly number[], worths: readonly number[], counts: Counts): readonly Item[] {
  return lengths
    .map((length, index) => ({ index, length, worth: worths[index] ?? 0, count: counts[index] ?? 0 }))
    .filter(({ worth, count }) => worth > 0 && count > 0)
    .toSorted((one, other) => other.worth / other.length - one.worth / one.length || other.length - one.length)
}

function inPart(items: readonly Item[], from: number, room: number): number {
  let left = room
  let worth = 0
  for (let at = from; at < items.length; at += 1) {
    const item = items[at]
    if (!item) break
    if (item.count * item.length > left) return worth + (left * item.worth) / item.length
    left -= item.count * item.length
    worth += item.count * item.worth
  }
  return worth
}

/** Rounding of the arithmetic; added to every ceiling, so that a bound built on it is never too high. */
function closeEnough(worth: number): number {
  return worth * 1e-12
}
