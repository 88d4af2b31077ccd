import type { Records } from './records.ts'

/** Stands around one call of the store. */
export type FollowCall = <T>(call: string, work: () => Promise<T>) => Promise<T>

type Call = (...given: readonly unknown[]) => Promise<unknown>

/** What is not a question to the store that ends with its answer. */
const passedOver: readonly string[] = ['onAdoption', 'close']

/** The same records, with something around each call. */
export function followedRecords(records: Records, follow: FollowCall): Records {
  const calls = Object.entries(records as unknown as Readonly<Record<string, Call>>)
  return Object.fromEntries(calls.map(([call, run]) => [call, passedOver.includes(call) ? run : (...given: readonly unknown[]) => follow(call, () => run(...given))])) as unknown as Records
}
