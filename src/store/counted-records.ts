import { followedRecords, type FollowCall } from './followed-records.ts'
import type { Records } from './records.ts'

export interface RecordCounts {
  /** One entry was put on record that was not there before. */
  readonly recorded: (kind: string) => void
  /** A call threw; a refusal is an answer and no failure. */
  readonly failed: (call: string) => void
}

/** The same records, with what they do and fail to do told as it happens. */
export function countedRecords(records: Records, { recorded, failed }: RecordCounts): Records {
  const watched = followedRecords(records, telling(failed))
  return {
    ...watched,
    async appendEntries(...given) {
      const appending = await watched.appendEntries(...given)
      const fresh = appending.ok ? appending.appended.flatMap((one) => (one.outcome === 'recorded' ? [one.entry] : [])) : []
      for (const { kind } of fresh) recorded(kind)
      return appending
    },
  }
}

function telling(failed: (call: string) => void): FollowCall {
  return async (call, work) => {
    try {
      return await work()
    } catch (error) {
      failed(call)
      throw error
    }
  }
}
