/** A flashing to be made from shorter pieces, in nanometers from the left end of its blank. */
export interface SpliceJob {
  readonly cutLength: number
  readonly stockLength: number
  readonly lap: number
  readonly leftDam: number
  readonly rightDam: number
  /** The ends of the opening. */
  readonly jambs: readonly [left: number, right: number]
}

export interface Stretch {
  readonly from: number
  readonly to: number
}

export interface Spliced {
  readonly pieces: readonly Stretch[]
  readonly laps: readonly Stretch[]
  /** Least distance from a lap to an end of the opening or to a dam; negative where a lap lies over an end of the opening. */
  readonly clear: number
}

/** The fewest pieces: each further one adds the stock length less a lap. Undefined where the lap is as long as the stock. */
export function fewestPieces(length: number, stockLength: number, lap: number): number | undefined {
  if (length <= stockLength) return 1
  return lap < stockLength ? Math.ceil((length - lap) / (stockLength - lap)) : undefined
}

/**
 * Full lengths from the left, each lap drawn back toward the left where it would come nearer than one lap to an end of the opening or to a dam.
 * Where that needs more pieces, the laps stay as far away as the fewest pieces let them. Undefined where a lap would have to lie in a dam.
 */
export function spliced(job: SpliceJob, count: number): Spliced | undefined {
  const laps = lapsClearBy(job, count, job.lap) ?? clearest(job, count) ?? lapsClearBy({ ...job, jambs: [-Infinity, Infinity] }, count, 0)
  if (!laps) return undefined
  const starts = [0, ...laps.map(({ from }) => from)]
  const ends = [...laps.map(({ to }) => to), job.cutLength]
  return { laps, pieces: starts.map((from, index) => ({ from, to: ends[index] ?? job.cutLength })), clear: Math.min(...laps.map((lap) => clearOf(job, lap))) }
}

/** The farthest place in reach each time cannot be bettered: whatever follows has less to bridge. */
function lapsClearBy(job: SpliceJob, count: number, clear: number): readonly Stretch[] | undefined {
  const laps: Stretch[] = []
  let start = 0
  for (let piece = 1; piece < count; piece += 1) {
    const from = farthestPlace(job, start + job.stockLength - job.lap, clear)
    if (from <= start || from < job.leftDam + clear) return undefined
    laps.push({ from, to: from + job.lap })
    start = from
  }
  return job.cutLength - start <= job.stockLength ? laps : undefined
}

function farthestPlace({ cutLength, lap, rightDam, jambs: [left, right] }: SpliceJob, reach: number, clear: number): number {
  let place = Math.min(reach, cutLength - rightDam - clear - lap)
  for (const jamb of [right, left]) if (place + lap + clear > jamb && place < jamb + clear) place = jamb - clear - lap
  return place
}

/** By halving: what is possible at one distance is possible at every smaller one. */
function clearest(job: SpliceJob, count: number): readonly Stretch[] | undefined {
  let [possible, impossible] = [0, job.lap]
  let laps = lapsClearBy(job, count, possible)
  while (laps && impossible - possible > 1) {
    const middle = Math.floor((possible + impossible) / 2)
    const found = lapsClearBy(job, count, middle)
    if (found) [laps, possible] = [found, middle]
    else impossible = middle
  }
  return laps
}

function clearOf({ cutLength, leftDam, rightDam, jambs }: SpliceJob, { from, to }: Stretch): number {
  return Math.min(from - leftDam, cutLength - rightDam - to, ...jambs.map((jamb) => Math.max(from - jamb, jamb - to)))
}
