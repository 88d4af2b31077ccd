import type { Catalog } from '../catalog/catalog.ts'
import type { Reason } from '../catalog/rule.ts'
import type { ResolvedRule } from '../catalog/rule-set.ts'
import type { FactDefinition } from '../opening/fact.ts'
import { facts } from '../opening/facts.ts'
import { compareHoldPoints, type HoldPoint } from '../opening/hold-points.ts'
import type { Opening, Readings } from '../opening/opening.ts'
import type { QuantityResult } from '../quantities/result.ts'
import { factsIn, truthOf } from './condition.ts'
import type { Finding } from './document.ts'
import { findingOf, type Decision } from './finding.ts'
import { judgeReading, undecided, type MemberResult } from './member.ts'
import { requirementOf, type Requirement } from './requirement.ts'

/** What a rule is judged against. */
export interface Subject {
  readonly opening: Opening
  readonly quantities: ReadonlyMap<string, QuantityResult>
  readonly catalog: Pick<Catalog, 'tables' | 'cautions'>
  /** False when no code was adopted on the date. */
  readonly adopted: boolean
  /** Where the work stands; what an earlier operation hid can no longer be seen. */
  readonly holdPoint: HoldPoint | null
}

/** Judges one rule. Unknown stays unknown: a rule never passes for want of a fact. */
export function judge(resolved: ResolvedRule, subject: Subject): Finding {
  const requirement = requirementOf(resolved.limit, resolved.comparator, subject.opening, subject.catalog)
  return findingOf(resolved, requirement, decide(resolved, requirement, subject), subject.catalog)
}

function decide({ rule, comparator }: ResolvedRule, requirement: Requirement, subject: Subject): Decision {
  if (!subject.adopted && rule.force === 'mandatory') return notDetermined('notAdopted', [])
  if (isPaired(rule)) return worstEnd(ends.map((end) => decideWhere({ rule, comparator }, requirement, { ...subject, opening: atEnd(subject.opening, end) })))
  return decideWhere({ rule, comparator }, requirement, subject)
}

type Judged = Pick<ResolvedRule, 'rule' | 'comparator'>

function decideWhere({ rule, comparator }: Judged, requirement: Requirement, subject: Subject): Decision {
  const applies = rule.appliesWhen ? truthOf(rule.appliesWhen, subject.opening) : ({ is: true } as const)
  if (applies.is === false) return { outcome: 'notApplicable', decidedBy: applies.decidedBy }
  if (applies.is === undefined) return notDetermined(applies.missing.length === 0 ? 'conflictingEvidence' : reasonFor(applies.missing, subject), applies.missing, applies.conflicting)
  const readings = 'fact' in rule.check ? factReadings(rule.check.fact, subject.opening) : quantityReadings(rule.check.quantity, subject.quantities)
  if ('decision' in readings) return readings.decision
  if (requirement.kind === 'unknown') return notDetermined(requirement.missing.length > 0 ? reasonFor(requirement.missing, subject) : requirement.reason, requirement.missing)
  const results = readings.map((reading) => judgeReading(reading, requirement, comparator))
  const missing = 'fact' in rule.check && results.some(({ reason }) => reason === 'missing') ? [rule.check.fact] : []
  return worstOf(results.map((result) => withReason(result, missing, subject)), readings, missing)
}

const ends = [0, 1] as const

/** A condition on one end and a check at each end go together, end by end: a joint at the left jamb asks nothing of the right. */
function isPaired({ check, appliesWhen }: ResolvedRule['rule']): boolean {
  const hasEnds = (path: string) => facts.get(path)?.perEnd === true
  return 'fact' in check && hasEnds(check.fact) && appliesWhen !== undefined && factsIn(appliesWhen).some(hasEnds)
}

/** The opening as it is at one end. */
function atEnd(opening: Opening, end: 0 | 1): Opening {
  const known = [...opening.facts].map(([path, readings]) => [path, readings.length === 2 ? [readings[end]] : readings] as const)
  return { ...opening, facts: new Map(known.filter(([, readings]) => readings.some((reading) => reading !== undefined))) }
}

/** What two ends decided, as one: the worst speaks, and an end to which the rule does not apply is silent. */
function worstEnd(decisions: readonly Decision[]): Decision {
  const speaking = decisions.flatMap((decision) => (decision.outcome === 'notApplicable' ? [] : [decision]))
  const silent = decisions.find((decision) => decision.outcome === 'notApplicable')
  if (speaking.length === 0 && silent) return silent
  const worst = speaking.toSorted((a, b) => byRank(a, b))[0]
  if (!worst) throw new Error('a rule at two ends was judged at none')
  const member = (['left', 'right'] as const)[decisions.indexOf(worst)] ?? null
  return { ...worst, member, members: decisions.map((decision) => (decision.outcome === 'notApplicable' ? { ...undecided(null, null), outcome: 'notApplicable' as const } : decision)) }
}

function factReadings(path: string, { facts: known }: Opening): Readings {
  return known.get(path) ?? (facts.get(path)?.perEnd ? [undefined, undefined] : [undefined])
}

/** A computed quantity as a reading; where it could not be computed, the decision that follows. */
function quantityReadings(id: string, quantities: Subject['quantities']): Readings | { readonly decision: Decision } {
  const computed = quantities.get(id)
  if (!computed || computed.status === 'notApplicable') return { decision: { outcome: 'notApplicable', decidedBy: [`quantity ${id}`] } }
  if (typeof computed.value !== 'number' || computed.dimension === null) return { decision: notDetermined(computed.reason ?? 'missing', computed.missing.filter((path) => facts.has(path))) }
  return [{ value: { dimension: computed.dimension, amount: computed.value }, text: computed.text, derivedFrom: computed.inputs.map(({ from }) => from) }]
}

function withReason(result: MemberResult, missing: readonly string[], subject: Subject): MemberResult {
  return result.reason === 'missing' ? undecided(reasonFor(missing, subject), null) : result
}

/** Any failing end fails; else any undecided end leaves it undecided; else it passes. The worst end speaks for the rule. */
function worstOf(results: readonly MemberResult[], readings: Readings, missing: readonly string[]): Decision {
  const order = results.map((_, index) => index).toSorted((a, b) => {
    const [first, second] = [results[a], results[b]]
    return first && second ? byRank(first, second) : 0
  })
  const index = order[0] ?? 0
  const worst = results[index] ?? undecided('missing', null)
  const member = results.length === 2 ? ((['left', 'right'] as const)[index] ?? null) : null
  return { ...worst, member, members: results, missing: worst.outcome === 'notDetermined' ? missing : [], derivedFrom: readings[index]?.derivedFrom ?? [] }
}

const rank = { fail: 0, notDetermined: 1, pass: 2, notApplicable: 3 } as const

function byRank(a: Pick<MemberResult, 'outcome' | 'spare'>, b: Pick<MemberResult, 'outcome' | 'spare'>): number {
  return rank[a.outcome] - rank[b.outcome] || (a.spare ?? 0) - (b.spare ?? 0)
}

function notDetermined(reason: Reason, missing: readonly string[], conflicting: readonly string[] = []): Decision {
  return { ...undecided(reason, null), missing, conflicting }
}

/** Covered when the work has passed the point that hid every missing fact; else simply missing. */
function reasonFor(missing: readonly string[], { holdPoint }: Subject): Reason {
  const hidden = (definition: FactDefinition | undefined) => holdPoint !== null && definition?.hiddenBy !== undefined && compareHoldPoints(holdPoint, definition.hiddenBy) >= 0
  return missing.length > 0 && missing.every((path) => hidden(facts.get(path))) ? 'covered' : 'missing'
}
