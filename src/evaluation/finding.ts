import type { Catalog } from '../catalog/catalog.ts'
import type { Reason } from '../catalog/rule.ts'
import type { ResolvedRule } from '../catalog/rule-set.ts'
import { facts } from '../opening/facts.ts'
import type { Finding } from './document.ts'
import type { EndResult, MemberResult } from './member.ts'
import type { Requirement } from './requirement.ts'

/** What was decided about a rule, before it is put into the words of a finding. */
export type Decision =
  | (MemberResult & {
      readonly member?: Finding['member']
      readonly members?: readonly EndResult[]
      readonly missing: readonly string[]
      /** Facts of the condition that others contradict. */
      readonly conflicting?: readonly string[]
      readonly derivedFrom?: readonly string[]
    })
  | { readonly outcome: 'notApplicable'; readonly decidedBy: readonly string[] }

/** The one place where a finding is put together. */
export function findingOf(resolved: ResolvedRule, { shown }: Requirement, decision: Decision, { cautions }: Pick<Catalog, 'cautions'>): Finding {
  const { rule, limit, comparator, chain } = resolved
  const failed = decision.outcome === 'fail'
  return {
    rule: rule.rule,
    revision: rule.revision,
    title: rule.title,
    statement: rule.statement,
    part: rule.part,
    holdPoint: rule.holdPoint,
    force: rule.force,
    outcome: decision.outcome,
    fact: 'fact' in rule.check ? rule.check.fact : null,
    quantity: 'quantity' in rule.check ? rule.check.quantity : null,
    comparator,
    required: shown,
    ...decisionOf(decision),
    remedy: failed ? rule.remedy : null,
    cautions: failed ? (rule.cautions ?? []).flatMap((id) => cautions.get(id)?.text ?? []) : [],
    evidence: limit.evidence,
    lastReviewed: limit.lastReviewed,
    printedConflict: 'printedConflict' in limit ? (limit.printedConflict ?? null) : null,
    disagreements: (rule.disagreements ?? []).map((one) => ({ ...one, note: one.note ?? null })),
    chain: [...chain],
  }
}

type Decided = Pick<
  Finding,
  'reason' | 'nextStep' | 'member' | 'measured' | 'margin' | 'members' | 'withinResolution' | 'differsByUnit' | 'missing' | 'decidedBy' | 'derivedFrom'
>

const nothingDecided: Decided = {
  reason: null, nextStep: null, member: null, measured: null, margin: null, members: [], withinResolution: false, differsByUnit: false, missing: [], decidedBy: [], derivedFrom: [],
}

function decisionOf(decision: Decision): Decided {
  if (decision.outcome === 'notApplicable') return { ...nothingDecided, decidedBy: [...decision.decidedBy] }
  const { reason, member = null, measured, margin, members = [], withinResolution, differsByUnit, missing, conflicting = [], derivedFrom = [] } = decision
  return {
    ...nothingDecided, reason, nextStep: reason && nextStep(reason, missing, conflicting), member, measured, margin, members: membersOf(members), withinResolution, differsByUnit,
    missing: [...missing], derivedFrom: [...derivedFrom],
  }
}

function membersOf(results: readonly EndResult[]): Finding['members'] {
  if (results.length < 2) return []
  return results.map(({ outcome, measured, margin }, index) => ({ member: index === 0 ? 'left' : 'right', outcome, measured, margin }))
}

/** Each reason for not deciding has its own next step. */
function nextStep(reason: Reason, missing: readonly string[], conflicting: readonly string[]): string {
  const [titles, doubtful] = [missing, conflicting].map((paths) => paths.map((path) => facts.get(path)?.title ?? path).join('; '))
  const steps: Readonly<Record<Reason, string>> = {
    missing: `Find out: ${titles || 'the facts the calculation lacks'}.`,
    covered: `No longer in sight: ${titles}. A dated record from before it was covered, a borescope or one brick taken out can settle it; a look at the finished face cannot.`,
    conflictingEvidence: `Two facts of the description contradict each other${doubtful ? ` (${doubtful})` : ''}. Look again before deciding.`,
    outsidePrescriptive: 'Outside what the prescriptive rule covers. A licensed professional has to design it.',
    methodDoesNotHold: 'The method of calculation does not hold here. A licensed professional has to decide.',
    ruleUndecided: 'The adopted text contradicts itself; ask the authority having jurisdiction which figure governs.',
    notAdopted: 'No code was in force here on this date. Name an edition, another date or another jurisdiction.',
  }
  return steps[reason]
}
