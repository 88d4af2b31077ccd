import { cheapest, nearestToWhole, quickly, wholeTimes, type Begun } from './cutting-heuristic.ts'
import { nothing, type Counts, type CuttingJob, type Pattern } from './cutting-job.ts'
import { relaxed, type Fractional } from './cutting-relaxation.ts'

const rounds = 24
const partAtOnce = 1 / 8
const fewPieces = 48

interface Dive {
  readonly best: readonly Pattern[]
  /** Where so few pieces were left that a search may do better with them. */
  readonly nearEnd: Begun
}

/**
 * Whole bars out of the fractional solution: those cut whole times, then the few nearest to one more time;
 * then the fractional solution of what is left, and so on. Every step is also finished the quick way, and the cheapest is kept.
 */
export function dived(job: CuttingJob, counts: Counts, first: Fractional): Dive {
  let fractional = first
  let at: Begun = { patterns: [], left: counts }
  let best = quickly(job, counts)
  let nearEnd: Begun | undefined
  for (let round = 0; round < rounds && !nothing(at.left); round += 1) {
    if (round > 0) fractional = relaxedRest(job, at.left)
    const whole = onTop(at, wholeTimes(at.left, fractional))
    if (pieces(whole.left) <= fewPieces) nearEnd ??= whole
    best = cheapest([best, [...whole.patterns, ...quickly(job, whole.left)]])
    at = onTop(whole, nearestToWhole(whole.left, fractional, Math.ceil(fractional.length * partAtOnce)))
  }
  return { best: cheapest([best, [...at.patterns, ...quickly(job, at.left)]]), nearEnd: nearEnd ?? at }
}

function onTop({ patterns }: Begun, next: Begun): Begun {
  return { patterns: [...patterns, ...next.patterns], left: next.left }
}

function pieces(left: Counts): number {
  return left.reduce((sum, count) => sum + count, 0)
}

/** The fractional solution of what is left, with the sizes that are done put back in as none. */
function relaxedRest(job: CuttingJob, left: Counts): Fractional {
  const kept = left.flatMap((count, index) => (count > 0 ? [index] : []))
  const sizes = kept.flatMap((index) => (job.sizes[index] ? [{ ...job.sizes[index], count: left[index] ?? 0 }] : []))
  return relaxed({ ...job, sizes }).fractional.map(({ pattern, times }) => ({
    times, pattern: { stock: pattern.stock, takes: left.map((_, index) => pattern.takes[kept.indexOf(index)] ?? 0) },
  }))
}
