import type { Summary } from '../evaluation/document.ts'
import type { FullEvaluation } from '../evaluation/evaluate.ts'
import { compareHoldPoints, type HoldPoint } from '../opening/hold-points.ts'
import { valueOf, type Opening } from '../opening/opening.ts'
import { quantitiesTakenOff } from '../quantities/building-take-off.ts'
import { scheduledLintel, type ScheduledLintel } from '../quantities/lintel-schedule.ts'
import type { ScheduledOpening } from '../quantities/schedule-pieces.ts'
import type { UnitSystem } from '../units/dimension.ts'
import { factsToCollect, type FactToCollect } from './facts-to-collect.ts'
import { mandatoryFailures, type MandatoryFailure } from './mandatory-failures.ts'
import type { Basis, OpeningRecord } from './opening-record.ts'
import { readinessAt, type Readiness } from './readiness.ts'
import { talliesOf, type Tally } from './tallies.ts'
import { grantsOn } from './waivers.ts'

/** Whether the work may go on past a hold point at one opening, and whether somebody has signed that it may. */
export interface OpeningReadiness extends Readiness {
  readonly signedOff: boolean
}

/** What one evaluation of an opening gives to the view of its building; the evaluation itself is let go. */
export interface OpeningReport {
  readonly opening: string
  readonly reference: string | null
  /** In which it was described. */
  readonly unitSystem: UnitSystem
  readonly holdPoint: HoldPoint | null
  readonly summary: Summary
  readonly tallies: readonly Tally[]
  /** Where something mandatory is to be seen, in the order of the work. */
  readonly readiness: readonly OpeningReadiness[]
  /** Mandatory rules that are not decided and that a look can no longer decide, because the work has hidden what to look at. */
  readonly noLongerInSight: readonly string[]
  readonly failures: readonly MandatoryFailure[]
  readonly toCollect: readonly FactToCollect[]
  /** Under its id, since two openings may have the same mark. */
  readonly scheduled: ScheduledOpening
  readonly lintel: ScheduledLintel | undefined
}

/** What an opening was evaluated by, and when somebody asks. */
export interface Look {
  readonly basis: Basis
  readonly record: OpeningRecord
  readonly opening: Opening
  readonly on: string
}

export function openingReport({ basis, record, opening, on }: Look, { assessment, quantities }: FullEvaluation): OpeningReport {
  const grants = grantsOn(record.waivers, on)
  const tallies = talliesOf(assessment.findings)
  const section = valueOf(opening, 'head.support.section')
  const results = new Map([...quantities].filter(([id]) => quantitiesTakenOff.has(id)))
  const scheduled: ScheduledOpening = { reference: record.opening, count: 1, results, ...(typeof section === 'string' ? { section } : {}) }
  return {
    opening: record.opening,
    reference: assessment.subject.reference,
    unitSystem: assessment.subject.unitSystem,
    holdPoint: record.holdPoint,
    summary: assessment.summary,
    tallies,
    readiness: [...new Set(assessment.findings.flatMap(({ force, holdPoint }) => (force === 'mandatory' ? [holdPoint] : [])))].toSorted(compareHoldPoints).map((holdPoint) => ({
      ...readinessAt(holdPoint, assessment, grants),
      signedOff: record.signOffs.some(({ held }) => held.holdPoint === holdPoint),
    })),
    noLongerInSight: assessment.findings.filter(({ force, reason }) => force === 'mandatory' && reason === 'covered').map(({ rule }) => rule),
    failures: mandatoryFailures(assessment.findings, record, { basis, grants }),
    toCollect: factsToCollect(assessment, record.holdPoint),
    scheduled,
    lintel: scheduledLintel(opening, scheduled),
  }
}
