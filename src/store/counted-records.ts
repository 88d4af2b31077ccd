import type { Records } from './records.ts'

export interface RecordCounts {
  /** One entry was put on record that was not there before. */
  readonly recorded: (kind: string) => void
  /** A call threw; a refusal is an answer and no failure. */
  readonly failed: (call: string) => void
}

/** The same records, with what they do and fail to do told as it happens. */
export function countedRecords(records: Records, { recorded, failed }: RecordCounts): Records {
  const calls = Object.entries(records as unknown as Readonly<Record<string, Call>>).map(([call, run]) => [call, call === 'onAdoption' ? run : telling(run, () => failed(call))] as const)
  const watched = Object.fromEntries(calls) as unknown as Records
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

type Call = (...given: readonly unknown[]) => Promise<unknown>

function telling(call: Call, failed: () => void): Call {
  return async (...given) => {
    try {
      return await call(...given)
    } catch (error) {
      failed()
      throw error
    }
  }
}
