import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible'

/** So many units in so many seconds, for each caller and each replica. */
export interface Quota {
  readonly units: number
  readonly window: number
}

/** What a request leaves of its caller's quota. */
interface Standing {
  readonly allowed: boolean
  readonly left: number
  readonly secondsLeft: number
}

export interface QuotaKeeper {
  readonly quota: Quota
  readonly take: (caller: string, units: number) => Promise<Standing>
}

export function keepQuota(quota: Quota): QuotaKeeper {
  const limiter = new RateLimiterMemory({ points: quota.units, duration: quota.window })
  const standing = ({ remainingPoints, msBeforeNext }: RateLimiterRes, allowed: boolean): Standing => ({ allowed, left: remainingPoints, secondsLeft: Math.max(1, Math.ceil(msBeforeNext / 1_000)) })
  return {
    quota,
    async take(caller, units) {
      try {
        // One request may be dearer than the whole quota: it takes all there is.
        return standing(await limiter.consume(caller, Math.min(units, quota.units)), true)
      } catch (refusal) {
        if (!(refusal instanceof RateLimiterRes)) throw refusal
        // What is refused costs nothing, so that something cheaper may still be asked.
        return standing(await limiter.reward(caller, Math.min(units, quota.units)), false)
      }
    },
  }
}
