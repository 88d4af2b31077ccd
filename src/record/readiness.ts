import type { Assessment, Finding } from '../evaluation/document.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import type { Recorded } from './opening-record.ts'

/** Whether the work may go on past a hold point, and what stands in the way. */
export interface Readiness {
  readonly holdPoint: HoldPoint
  readonly ready: boolean
  /** Mandatory rules to be seen here that are not decided, by id. */
  readonly undecided: readonly string[]
  /** Mandatory rules to be seen here that are not met and not waived. */
  readonly notMet: readonly string[]
  /** Mandatory rules that are not met, and that the official has waived or modified. */
  readonly waived: readonly string[]
}

/** A hold point is ready when every mandatory rule to be seen there is decided, and met or waived. */
export function readinessAt(holdPoint: HoldPoint, { findings }: Pick<Assessment, 'findings'>, waivers: readonly Recorded<'waiver'>[], on: string): Readiness {
  const here = findings.filter((finding) => finding.holdPoint === holdPoint && finding.force === 'mandatory')
  const isFreed = ({ rule }: Finding) => isWaived(rule, waivers, on)
  const failing = here.filter(({ outcome }) => outcome === 'fail')
  const undecided = here.filter((finding) => finding.outcome === 'notDetermined' && !isFreed(finding)).map(({ rule }) => rule)
  const notMet = failing.filter((finding) => !isFreed(finding)).map(({ rule }) => rule)
  return { holdPoint, ready: undecided.length === 0 && notMet.length === 0, undecided, notMet, waived: here.filter((finding) => finding.outcome !== 'pass' && isFreed(finding)).map(({ rule }) => rule) }
}

/** Whether the official has freed an opening from a rule, or allowed it to be met in another way, on a day. */
export function isWaived(rule: string, waivers: readonly Recorded<'waiver'>[], on: string): boolean {
  return waivers.some(({ held }) => held.rule === rule && isInForce(held.expires ?? null, on))
}

/** Through its last day. */
export function isInForce(expires: string | null, on: string): boolean {
  return expires === null || on.slice(0, 10) <= expires
}
