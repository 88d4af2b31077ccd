import type { Assessment } from '../evaluation/document.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import { isCovered, type Grant } from './waivers.ts'

/** Whether the work may go on past a hold point, and what stands in the way. */
export interface Readiness {
  readonly holdPoint: HoldPoint
  readonly ready: boolean
  /** Mandatory rules to be seen here that are not decided, by id. */
  readonly undecided: readonly string[]
  /** Mandatory rules to be seen here that are not met and not waived. */
  readonly notMet: readonly string[]
  /** Mandatory rules that are not met or not decided, and that the official has waived or modified. */
  readonly waived: readonly string[]
}

/** A hold point is ready when every mandatory rule to be seen there is decided and met, or waived. */
export function readinessAt(holdPoint: HoldPoint, { findings }: Pick<Assessment, 'findings'>, grants: readonly Grant[]): Readiness {
  const here = findings.filter((finding) => finding.holdPoint === holdPoint && finding.force === 'mandatory')
  const idsOf = (outcome: 'fail' | 'notDetermined') => here.filter((finding) => finding.outcome === outcome && !isCovered(finding, grants)).map(({ rule }) => rule)
  const [undecided, notMet] = [idsOf('notDetermined'), idsOf('fail')]
  return { holdPoint, ready: undecided.length === 0 && notMet.length === 0, undecided, notMet, waived: here.filter((finding) => isCovered(finding, grants)).map(({ rule }) => rule) }
}
