import { part, type Outcome } from '../catalog/rule.ts'
import type { Summary } from '../evaluation/document.ts'
import { holdPoints, holdPointTitle, type HoldPoint } from '../opening/hold-points.ts'
import type { Problem } from '../opening/problem.ts'
import { buildingTakeOff, type BuildingTakeOff } from '../quantities/building-take-off.ts'
import { lintelSchedule, type LintelLine } from '../quantities/lintel-schedule.ts'
import type { OpeningReport } from './opening-report.ts'
import { addedBy, type Outcomes, type Tally } from './tallies.ts'
import { walksThrough, type Walk } from './walk.ts'

/** An opening that is on record and is not described far enough to be evaluated. */
export interface NotEvaluated {
  readonly opening: string
  readonly reference: string | null
  readonly holdPoint: HoldPoint | null
  readonly problems: readonly Problem[]
}

export interface HoldPointStatus extends Readonly<Record<Outcome, number>> {
  readonly holdPoint: HoldPoint
  readonly title: string
  /** Openings at which the work may go on, at which it may not, and that were signed off either way; all nought where nothing mandatory is to be seen. */
  readonly ready: number
  readonly notReady: number
  readonly signedOff: number
}

/** A building by its openings. Openings that could not be evaluated are in no count but `openings` and stand by themselves. */
export interface BuildingView {
  readonly openings: number
  readonly evaluated: number
  readonly verdicts: Readonly<Record<Summary['verdict'], number>>
  readonly parts: readonly (Outcomes & { readonly part: Tally['part'] })[]
  readonly holdPoints: readonly HoldPointStatus[]
  readonly walks: readonly Walk[]
  readonly lintels: readonly LintelLine[]
  readonly takeOff: BuildingTakeOff
}

export function buildingView(reports: readonly OpeningReport[], notEvaluated: readonly NotEvaluated[], walkAt: HoldPoint | null): BuildingView {
  const tallies = reports.flatMap((report) => report.tallies)
  const byPart = addedBy(tallies, 'part')
  return {
    openings: reports.length + notEvaluated.length,
    evaluated: reports.length,
    verdicts: verdictsOf(reports),
    parts: part.options.flatMap((one) => { const outcomes = byPart.get(one); return outcomes ? [{ part: one, ...outcomes }] : [] }),
    holdPoints: statusByHoldPoint(reports, addedBy(tallies, 'holdPoint')),
    walks: walksThrough(reports, walkAt),
    lintels: lintelSchedule(reports.map(({ scheduled, lintel }) => ({ reference: scheduled.reference, lintel }))),
    takeOff: buildingTakeOff(reports.map(({ scheduled }) => scheduled)),
  }
}

function verdictsOf(reports: readonly OpeningReport[]): BuildingView['verdicts'] {
  const count = (verdict: Summary['verdict']) => reports.filter(({ summary }) => summary.verdict === verdict).length
  return { pass: count('pass'), attention: count('attention'), incomplete: count('incomplete'), fail: count('fail') }
}

function statusByHoldPoint(reports: readonly OpeningReport[], counts: ReadonlyMap<HoldPoint, Outcomes>): readonly HoldPointStatus[] {
  const readiness = reports.flatMap((report) => report.readiness)
  return holdPoints.flatMap(({ id }) => {
    const outcomes = counts.get(id)
    if (!outcomes) return []
    const here = readiness.filter(({ holdPoint }) => holdPoint === id)
    const ready = here.filter((one) => one.ready).length
    return [{ holdPoint: id, title: holdPointTitle(id), ...outcomes, ready, notReady: here.length - ready, signedOff: here.filter(({ signedOff }) => signedOff).length }]
  })
}
