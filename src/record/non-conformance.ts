import type { Finding } from '../evaluation/document.ts'
import { isHidden } from '../opening/facts.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import type { Miss } from './finding-history.ts'
import type { OpeningRecord, Recorded } from './opening-record.ts'
import type { Place } from './outcomes.ts'
import { grantFor, type Grant } from './waivers.ts'

/**
 * Where a miss stands on its way to being settled. Only a reading that meets the rule settles it: somebody's word that it was
 * mended is kept, and asks for that reading.
 */
export const nonConformanceStates = ['open', 'remedyChosen', 'saidMended', 'notMended', 'waived', 'settled'] as const
export type NonConformanceState = (typeof nonConformanceStates)[number]

export interface NonConformance extends Miss {
  readonly title: string
  readonly state: NonConformanceState
  readonly force: Finding['force'] | null
  readonly measured: string | null
  readonly required: string | null
  /** Whether later work has hidden it, which decides between the two remedies. */
  readonly covered: boolean
  readonly remedy: string | null
  readonly cautions: readonly string[]
  readonly chosen: Recorded<'remedy'> | null
  readonly verification: Recorded<'verification'> | null
  readonly grant: Grant | null
}

/** Every miss with what was found, how to put it right as the work stands now, and what was done about it. */
export function nonConformances(misses: readonly Miss[], findings: readonly Finding[], record: OpeningRecord, grants: readonly Grant[]): readonly NonConformance[] {
  const byRule = new Map(findings.map((finding) => [finding.rule, finding]))
  return misses.map((miss) => {
    const done = doneAbout(miss, record, grants)
    return { ...miss, ...foundOf(byRule.get(miss.rule), miss, record.holdPoint), ...done, state: stateOf(miss, done) }
  })
}

type Found = Pick<NonConformance, 'title' | 'force' | 'measured' | 'required' | 'covered' | 'remedy' | 'cautions'>

/** As the last look found it; a rule that is gone from the catalog leaves only its id. */
function foundOf(finding: Finding | undefined, { rule, member }: Place, holdPoint: HoldPoint | null): Found {
  if (!finding) return { title: rule, force: null, measured: null, required: null, covered: false, remedy: null, cautions: [] }
  const covered = finding.fact !== null && isHidden(finding.fact, holdPoint)
  const measured = finding.members.find((end) => end.member === member)?.measured ?? finding.measured
  const remedy = covered ? finding.remedy?.afterCoverUp : finding.remedy?.beforeCoverUp
  return { title: finding.title, force: finding.force, measured: measured?.text ?? null, required: finding.required.text, covered, remedy: remedy ?? null, cautions: finding.cautions }
}

type Done = Pick<NonConformance, 'chosen' | 'verification' | 'grant'>

/** A remedy counts from the first miss on; a verification only since the outcome last changed. */
function doneAbout(miss: Miss, { remedies, verifications }: OpeningRecord, grants: readonly Grant[]): Done {
  return {
    chosen: remedies.findLast(({ held, receivedAt }) => concerns(held, miss) && receivedAt >= miss.since) ?? null,
    verification: verifications.findLast(({ held, receivedAt }) => concerns(held, miss) && receivedAt >= miss.changed) ?? null,
    grant: grantFor(miss.rule, grants) ?? null,
  }
}

function stateOf({ status }: Miss, { chosen, verification, grant }: Done): NonConformanceState {
  if (status === 'settled') return 'settled'
  if (grant?.inForce) return 'waived'
  if (verification) return verification.held.result === 'mended' ? 'saidMended' : 'notMended'
  return chosen ? 'remedyChosen' : 'open'
}

/** What names no end is about both. */
export function concerns(held: { readonly rule: string; readonly member?: Place['member'] | undefined }, { rule, member }: Place): boolean {
  return held.rule === rule && ((held.member ?? null) === null || member === null || held.member === member)
}
