import { lastingPart } from '../catalog/canonical.ts'
import type { Catalog } from '../catalog/catalog.ts'
import type { Reason } from '../catalog/rule.ts'
import type { ResolvedRule } from '../catalog/rule-set.ts'
import { factTitle } from '../opening/facts.ts'
import { onceFor } from '../opening/once-for.ts'
import type { Reading } from '../opening/opening.ts'
import type { Quantity } from '../units/quantity.ts'
import { quantityText } from '../units/quantity-text.ts'
import type { Finding } from './document.ts'
import type { EndResult, MemberResult } from './member.ts'

/** What was decided about a rule, before it is put into the words of a finding. */
export type Decision = Determined | RuledOut

interface Determined extends MemberResult {
  readonly member?: Finding['member']
  readonly members?: readonly EndResult[]
  readonly missing: readonly string[]
  /** Facts of the condition that others contradict. */
  readonly conflicting?: readonly string[]
  readonly derivedFrom?: readonly string[]
}

interface RuledOut {
  readonly outcome: 'notApplicable'
  readonly decidedBy: readonly string[]
}

type Decided = Pick<
  Finding,
  'reason' | 'nextStep' | 'member' | 'measured' | 'margin' | 'members' | 'withinResolution' | 'differsByUnit' | 'missing' | 'decidedBy' | 'derivedFrom'
>

/** Puts a decision into the words of a finding; `shown` is the requirement as it stands for this opening. */
export type FindingWriter = (shown: Finding['required'], decision: Decision) => Finding

const none = lastingPart<string[]>([])
const noMembers = lastingPart<Finding['members']>([])
const nothingDecided: Decided = {
  reason: null, nextStep: null, member: null, measured: null, margin: null, members: noMembers, withinResolution: false, differsByUnit: false, missing: none, decidedBy: none, derivedFrom: none,
}

/** The one place where findings are put together. What is the same in every finding of a rule is prepared here and shared by all of them. */
export function findingWriter({ rule, limit, comparator, chain }: ResolvedRule, catalog: Pick<Catalog, 'cautions'>): FindingWriter {
  const cautions = lastingPart((rule.cautions ?? []).flatMap((id) => catalog.cautions.get(id)?.text ?? []))
  const disagreements = lastingPart((rule.disagreements ?? []).map((one) => ({ ...one, note: one.note ?? null })))
  const steps = lastingPart([...chain])
  const remedy = lastingPart(rule.remedy)
  const printedConflict = 'printedConflict' in limit ? (limit.printedConflict ?? null) : null
  const fact = 'fact' in rule.check ? rule.check.fact : null
  const quantity = 'quantity' in rule.check ? rule.check.quantity : null
  const write = (shown: Finding['required'], outcome: Finding['outcome'], decided: Decided): Finding => ({
    rule: rule.rule,
    revision: rule.revision,
    title: rule.title,
    statement: rule.statement,
    part: rule.part,
    holdPoint: rule.holdPoint,
    force: rule.force,
    outcome,
    fact,
    quantity,
    comparator,
    required: shown,
    reason: decided.reason,
    nextStep: decided.nextStep,
    member: decided.member,
    measured: decided.measured,
    margin: decided.margin,
    members: decided.members,
    withinResolution: decided.withinResolution,
    differsByUnit: decided.differsByUnit,
    missing: decided.missing,
    decidedBy: decided.decidedBy,
    derivedFrom: decided.derivedFrom,
    remedy: outcome === 'fail' ? remedy : null,
    cautions: outcome === 'fail' ? cautions : none,
    evidence: limit.evidence,
    lastReviewed: limit.lastReviewed,
    printedConflict,
    disagreements,
    chain: steps,
  })
  /** A rule is ruled out by one of the few parts of its condition, so those findings too are the same for every opening. */
  const ruledOut = onceFor((shown: Finding['required']) =>
    onceFor((decidedBy: readonly string[]) => lastingPart(write(shown, 'notApplicable', { ...nothingDecided, decidedBy: [...decidedBy] }))))
  return (shown, decision) => (decision.outcome === 'notApplicable' ? ruledOut(shown)(decision.decidedBy) : write(shown, decision.outcome, decidedOf(decision)))
}

function decidedOf({ reason, member = null, reading, spare, members = [], withinResolution, differsByUnit, missing, conflicting = none, derivedFrom = none }: Determined): Decided {
  return {
    reason, nextStep: reason && nextStep(reason, missing, conflicting), member, measured: measuredOf(reading), margin: marginText(reading, spare), members: membersOf(members), withinResolution, differsByUnit,
    missing: listed(missing), decidedBy: none, derivedFrom: listed(derivedFrom),
  }
}

function listed(paths: readonly string[]): string[] {
  return paths.length === 0 ? none : [...paths]
}

function membersOf(results: readonly EndResult[]): Finding['members'] {
  if (results.length < 2) return noMembers
  return results.map(({ outcome, reading, spare }, index) => ({ member: index === 0 ? 'left' : 'right', outcome, measured: measuredOf(reading), margin: marginText(reading, spare) }))
}

function measuredOf(reading: Reading | null): Finding['measured'] {
  if (!reading) return null
  const { value, text } = reading
  if (typeof value === 'boolean') return { text: value ? 'yes' : 'no', inchPound: null, si: null, nanometres: null }
  if (typeof value !== 'object') return { text, inchPound: null, si: null, nanometres: null }
  return { text, ...bothTexts(value), nanometres: value.dimension === 'length' ? value.amount : null }
}

function marginText(reading: Reading | null, spare: number | null): Finding['margin'] {
  return spare === null || typeof reading?.value !== 'object' ? null : bothTexts({ dimension: reading.value.dimension, amount: spare })
}

function bothTexts(quantity: Quantity) {
  return { inchPound: quantityText(quantity, 'inchPound'), si: quantityText(quantity, 'si') }
}

/** Each reason for not deciding has its own next step. */
function nextStep(reason: Reason, missing: readonly string[], conflicting: readonly string[]): string {
  switch (reason) {
    case 'missing': return `Find out: ${titlesOf(missing) || 'the facts the calculation lacks'}.`
    case 'covered': return `No longer in sight: ${titlesOf(missing)}. A dated record from before it was covered, a borescope or one brick taken out can settle it; a look at the finished face cannot.`
    case 'conflictingEvidence': return `Two facts of the description contradict each other${conflicting.length > 0 ? ` (${titlesOf(conflicting)})` : ''}. Look again before deciding.`
    case 'outsidePrescriptive': return 'Outside what the prescriptive rule covers. A licensed professional has to design it.'
    case 'methodDoesNotHold': return 'The method of calculation does not hold here. A licensed professional has to decide.'
    case 'ruleUndecided': return 'The adopted text contradicts itself; ask the authority having jurisdiction which figure governs.'
    case 'notAdopted': return 'No code was in force here on this date. Name an edition, another date or another jurisdiction.'
  }
}

function titlesOf(paths: readonly string[]): string {
  return paths.map(factTitle).join('; ')
}
