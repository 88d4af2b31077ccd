import { fileURLToPath } from 'node:url'
import type { Piscina } from 'piscina'
import type { Catalog } from '../../catalog/catalog.ts'
import { onceFor } from '../../opening/once-for.ts'
import type { Batch } from '../../operations/evaluate-batch.ts'
import type { LineWork, LineWorkDone } from './line-worker.ts'
import type { Line } from './lines.ts'

/** Threads beside the one that serves, which answer lines of batches. There are none until they are wanted, and none some time after. */
export interface LineThreads {
  readonly count: number
  /** Whether they can be given work; wakes them where they cannot. */
  readonly areReady: () => boolean
  /** Answers lines of a batch. Rejects when the thread that was to do it broke down. */
  readonly answer: (batch: Pick<Batch, 'catalog' | 'settings'>, lines: readonly Line[], counted: boolean) => Promise<LineWorkDone>
  readonly close: () => Promise<void>
}

export interface ThreadOptions {
  readonly count: number
  readonly log: { readonly error: (detail: object, message: string) => void }
  /** The program of a thread; the one beside this file when left out. */
  readonly program?: string
  readonly idleMilliseconds?: number
}

const beside = fileURLToPath(new URL('./line-worker.js', import.meta.url))

/** In MB. What a line needs dies young, so that little room is enough for it; there is some for a catalog many times as large as ours. */
const resourceLimits = { maxYoungGenerationSizeMb: 6, maxOldGenerationSizeMb: 256 }

/** Makes nothing before it is wanted, so that a service without long batches starts and rests as if there were no threads. */
export function lineThreads({ count, log, program = beside, idleMilliseconds = 10_000 }: ThreadOptions): LineThreads {
  let pool: Pool | undefined
  let opening: Promise<void> | undefined
  const numberOf = numbering()
  const inTurn = turns(count)
  const tell = (error: unknown) => { log.error({ err: error }, 'a thread for batches broke down') }
  const breakDown = (error: unknown) => {
    pool = undefined
    tell(error)
  }
  const wake = async () => {
    try {
      pool ??= await openPool({ count, program, idleMilliseconds }, breakDown)
      await pool.wake()
    } catch (error) {
      breakDown(error)
    } finally {
      opening = undefined
    }
  }
  return {
    count,
    areReady: () => {
      if (!opening && pool?.hasThreads() === true) return true
      opening ??= wake()
      return false
    },
    answer: ({ catalog, settings }, lines, counted) => inTurn(async () => {
      const work = { number: numberOf(catalog), catalog: null, settings, lines, counted }
      const used = pool
      try {
        const done = (await used?.run(work)) ?? (await used?.run({ ...work, catalog }))
        if (!done) throw new Error('there are no threads for batches')
        return done
      } catch (error) {
        tell(error)
        throw error
      }
    }),
    close: async () => {
      await opening
      await pool?.destroy()
    },
  }
}

interface Pool {
  readonly hasThreads: () => boolean
  readonly wake: () => Promise<unknown>
  readonly run: (work: LineWork) => Promise<LineWorkDone | null>
  readonly destroy: () => Promise<void>
}

/** What is given to a pool that breaks down is refused with what broke it, since nobody might take it up again. */
async function openPool({ count, program, idleMilliseconds }: Required<Omit<ThreadOptions, 'log'>>, onBroken: (error: unknown) => void): Promise<Pool> {
  const { Piscina } = await import('piscina')
  const pool: Piscina<LineWork, LineWorkDone | null> = new Piscina({ filename: program, minThreads: 0, maxThreads: count, idleTimeout: idleMilliseconds, resourceLimits, recordTiming: false })
  const underWay = new Set<(error: unknown) => void>()
  pool.on('error', (error) => {
    onBroken(error)
    for (const refuse of underWay) refuse(error)
  })
  const run = async (work: LineWork): Promise<LineWorkDone | null> => {
    const { promise, refuse } = refusable()
    underWay.add(refuse)
    try {
      return await Promise.race([pool.run(work), promise])
    } finally {
      underWay.delete(refuse)
    }
  }
  return {
    hasThreads: () => pool.threads.length > 0,
    wake: () => Promise.all(Array.from({ length: count }, () => run(nothing))),
    run,
    destroy: () => pool.destroy(),
  }
}

/** One for each piece of work: to wait for one that is never refused would keep whatever was waited for beside it. */
function refusable(): { readonly promise: Promise<never>; readonly refuse: (error: unknown) => void } {
  let refuse: (error: unknown) => void = () => undefined
  const promise = new Promise<never>((_, reject) => { refuse = reject })
  return { promise, refuse }
}

const nothing: LineWork = { number: 0, catalog: null, settings: {}, lines: [], counted: false }

/** By which a thread knows a catalog again; two that say the same are two. */
function numbering(): (catalog: Catalog) => number {
  let last = 0
  return onceFor(() => (last += 1))
}

/** Lets so many work at once, since what waits in the queue of a pool is forgotten when the last of its threads breaks down. */
function turns(count: number): <T>(work: () => Promise<T>) => Promise<T> {
  let free = count
  const waiting: (() => void)[] = []
  return async (work) => {
    if (free > 0) free -= 1
    else await new Promise<void>((resolve) => { waiting.push(resolve) })
    try {
      return await work()
    } finally {
      const next = waiting.shift()
      if (next) next()
      else free += 1
    }
  }
}
