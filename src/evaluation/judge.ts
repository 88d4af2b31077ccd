import type { Catalog } from '../catalog/catalog.ts'
import type { Reason } from '../catalog/rule.ts'
import type { ResolvedRule } from '../catalog/rule-set.ts'
import { facts, isHidden } from '../opening/facts.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import { onceFor } from '../opening/once-for.ts'
import type { Opening, Readings } from '../opening/opening.ts'
import type { QuantityResult } from '../quantities/result.ts'
import { compileCondition, factsIn, type KnownFacts } from './condition.ts'
import type { Finding } from './document.ts'
import { findingWriter, type Decision } from './finding.ts'
import { judgeReading, undecided, type MemberResult } from './member.ts'
import { compileRequirement, type Requirement } from './requirement.ts'
import { Ruling } from './ruling.ts'

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

/** A rule of one catalog, made ready to judge any opening. */
export type Judge = (subject: Subject) => Ruling

type Reference = Subject['catalog']

/** Judges one rule. Unknown stays unknown: a rule never passes for want of a fact. */
export function judge(resolved: ResolvedRule, subject: Subject): Finding {
  return judgeOf(resolved, subject.catalog)(subject).finding
}

/** A rule made ready, once for as long as it is in use. */
export function judgeOf(resolved: ResolvedRule, catalog: Reference): Judge {
  return judgesIn(catalog)(resolved)
}

const judgesIn = onceFor((catalog: Reference) => onceFor((resolved: ResolvedRule) => compileRule(resolved, catalog)))

function compileRule(resolved: ResolvedRule, catalog: Reference): Judge {
  const { rule, limit, comparator } = resolved
  const requirementFor = compileRequirement(limit, comparator, catalog)
  const decideWhere = compileDecision(rule, comparator)
  const write = findingWriter(resolved, catalog)
  const isPaired = hasPairedEnds(rule)
  const decide = (requirement: Requirement, subject: Subject): Decision => {
    if (!subject.adopted && rule.force === 'mandatory') return notDetermined('notAdopted', none)
    const { facts: known } = subject.opening
    return isPaired ? worstEnd(ends.map((end) => decideWhere(atEnd(known, end), requirement, subject))) : decideWhere(known, requirement, subject)
  }
  return (subject) => {
    const requirement = requirementFor(subject.opening)
    const decision = decide(requirement, subject)
    return new Ruling(resolved, decision.outcome, () => write(requirement.shown, decision))
  }
}

type Decide = (known: KnownFacts, requirement: Requirement, subject: Subject) => Decision

function compileDecision({ appliesWhen, check }: ResolvedRule['rule'], comparator: ResolvedRule['comparator']): Decide {
  const applies = appliesWhen ? compileCondition(appliesWhen) : undefined
  const readingsIn = 'fact' in check ? factReadings(check.fact) : quantityReadings(check.quantity)
  const checked = 'fact' in check ? [check.fact] : none
  return (known, requirement, subject) => {
    const truth = applies?.(known)
    if (truth?.is === false) return { outcome: 'notApplicable', decidedBy: truth.decidedBy }
    if (truth && truth.is === undefined) return notDetermined(truth.missing.length === 0 ? 'conflictingEvidence' : reasonFor(truth.missing, subject), truth.missing, truth.conflicting)
    const readings = readingsIn(known, subject.quantities)
    if ('decision' in readings) return readings.decision
    if (requirement.kind === 'unknown') return notDetermined(requirement.missing.length > 0 ? reasonFor(requirement.missing, subject) : requirement.reason, requirement.missing)
    const missing = readings.includes(undefined) ? checked : none
    const results = readings.map((reading) => (reading ? judgeReading(reading, requirement, comparator) : undecided(reasonFor(missing, subject), null)))
    return worstOf(results, readings, missing)
  }
}

const none: readonly string[] = []
const ends = [0, 1] as const

/** A condition on one end and a check at each end go together, end by end: a joint at the left jamb asks nothing of the right. */
function hasPairedEnds({ check, appliesWhen }: ResolvedRule['rule']): boolean {
  const hasEnds = (path: string) => facts.get(path)?.perEnd === true
  return 'fact' in check && hasEnds(check.fact) && appliesWhen !== undefined && factsIn(appliesWhen).some(hasEnds)
}

/** The facts as they are at one end. */
function atEnd(known: KnownFacts, end: 0 | 1): KnownFacts {
  return {
    get: (path) => {
      const readings = known.get(path)
      const here = readings?.length === 2 ? [readings[end]] : readings
      return here?.some((reading) => reading !== undefined) ? here : undefined
    },
  }
}

/** What two ends decided, as one: the worst speaks, and an end to which the rule does not apply is silent. */
function worstEnd(decisions: readonly Decision[]): Decision {
  const speaking = decisions.flatMap((decision) => (decision.outcome === 'notApplicable' ? [] : [decision]))
  const silent = decisions.find((decision) => decision.outcome === 'notApplicable')
  if (speaking.length === 0 && silent) return silent
  const worst = speaking[indexOfWorst(speaking)]
  if (!worst) throw new Error('a rule at two ends was judged at none')
  const member = members[decisions.indexOf(worst)] ?? null
  return { ...worst, member, members: decisions.map((decision) => (decision.outcome === 'notApplicable' ? { ...undecided(null, null), outcome: 'notApplicable' as const } : decision)) }
}

const members = ['left', 'right'] as const

type ReadingsIn = (known: KnownFacts, quantities: Subject['quantities']) => Readings | { readonly decision: Decision }

function factReadings(path: string): ReadingsIn {
  const unknown = facts.get(path)?.perEnd ? [undefined, undefined] : [undefined]
  return (known) => known.get(path) ?? unknown
}

/** A computed quantity as a reading; where it could not be computed, the decision that follows. */
function quantityReadings(id: string): ReadingsIn {
  const ruledOut = { decision: { outcome: 'notApplicable', decidedBy: [`quantity ${id}`] } } as const
  return (_, quantities) => {
    const computed = quantities.get(id)
    if (!computed || computed.status === 'notApplicable') return ruledOut
    if (typeof computed.value !== 'number' || computed.dimension === null) return { decision: notDetermined(computed.reason ?? 'missing', computed.missing.filter((path) => facts.has(path))) }
    return [{ value: { dimension: computed.dimension, amount: computed.value }, text: computed.text, derivedFrom: computed.inputs.map(({ from }) => from) }]
  }
}

/** Any failing end fails; else any undecided end leaves it undecided; else it passes. The worst end speaks for the rule. */
function worstOf(results: readonly MemberResult[], readings: Readings, missing: readonly string[]): Decision {
  const index = indexOfWorst(results)
  const { outcome, reason, reading, spare, withinResolution, differsByUnit } = results[index] ?? undecided('missing', null)
  const member = results.length === 2 ? (members[index] ?? null) : null
  return {
    outcome, reason, reading, spare, withinResolution, differsByUnit, member,
    members: results, missing: outcome === 'notDetermined' ? missing : none, derivedFrom: readings[index]?.derivedFrom ?? none,
  }
}

const rank = { fail: 0, notDetermined: 1, pass: 2, notApplicable: 3 } as const

type Ranked = Pick<MemberResult, 'outcome' | 'spare'>

/** Of equals, the first. */
function indexOfWorst(results: readonly Ranked[]): number {
  let worst = 0
  for (let index = 1; index < results.length; index += 1) if (isWorse(results[index], results[worst])) worst = index
  return worst
}

function isWorse(one: Ranked | undefined, other: Ranked | undefined): boolean {
  if (!one || !other) return false
  return (rank[one.outcome] - rank[other.outcome] || (one.spare ?? 0) - (other.spare ?? 0)) < 0
}

function notDetermined(reason: Reason, missing: readonly string[], conflicting: readonly string[] = []): Decision {
  return { ...undecided(reason, null), missing, conflicting }
}

/** Covered when the work has passed the point that hid every missing fact; else simply missing. */
function reasonFor(missing: readonly string[], { holdPoint }: Subject): Reason {
  return missing.length > 0 && missing.every((path) => isHidden(path, holdPoint)) ? 'covered' : 'missing'
}
