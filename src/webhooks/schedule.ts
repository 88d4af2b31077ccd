const [second, minute, hour] = [1_000, 60_000, 3_600_000]

/** How long after each failed attempt the next one follows, in milliseconds: the example schedule of Standard Webhooks 1.0.0, ten attempts in some 76 hours. */
export const delays: readonly number[] = [5 * second, 5 * minute, 30 * minute, 2 * hour, 5 * hour, 10 * hour, 14 * hour, 20 * hour, 24 * hour]

/** Retries are scattered by up to this part of their delay, so that what failed together does not come back together. */
const scatter = 0.1
/** A receiver is not waited for longer than this. */
const longest = 24 * hour

interface Failure {
  /** How many attempts have been made. */
  readonly attempts: number
  /** The Retry-After header, in seconds or as an HTTP date (RFC 9110). */
  readonly retryAfter: string | null
  readonly now: Date
  /** From 0 up to 1. */
  readonly random: number
}

/** When to try next; undefined after the last attempt. A receiver that asks for more time gets it. */
export function nextAttempt({ attempts, retryAfter, now, random }: Failure): Date | undefined {
  const delay = delays[attempts - 1]
  if (delay === undefined) return undefined
  const scattered = delay * (1 + scatter * random)
  return new Date(now.getTime() + Math.min(Math.max(scattered, askedFor(retryAfter, now)), Math.max(longest, scattered)))
}

function askedFor(retryAfter: string | null, now: Date): number {
  if (retryAfter === null) return 0
  if (/^\d+$/.test(retryAfter)) return Number(retryAfter) * second
  const until = Date.parse(retryAfter)
  return Number.isNaN(until) ? 0 : until - now.getTime()
}
