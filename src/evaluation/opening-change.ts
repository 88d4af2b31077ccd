import type { ResolvedRule } from '../catalog/rule-set.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import { computeSome } from '../quantities/compute.ts'
import { quantities } from '../quantities/index.ts'
import type { QuantityResult } from '../quantities/result.ts'
import type { CatalogRules, ComparedPlace } from './compared-place.ts'
import type { Finding, Summary } from './document.ts'
import { judge } from './judge.ts'
import { quantityInputs } from './quantity-inputs.ts'
import { summarise } from './summary.ts'

/** An opening on which two catalogs are tried. */
export interface TriedOpening {
  readonly reference: string
  readonly opening: Opening
  /** Where it is, when not in the jurisdiction that is asked about. */
  readonly jurisdiction?: string | undefined
  readonly publication?: string | undefined
  readonly holdPoint?: HoldPoint | null | undefined
}

export type FindingState = Pick<Finding, 'outcome' | 'reason' | 'force' | 'margin'> & { readonly required: string }

/** What comes out otherwise for one opening, place and date. */
export interface OpeningChange {
  readonly verdict: { readonly before: Summary['verdict']; readonly after: Summary['verdict'] }
  readonly findings: readonly { readonly rule: string; readonly title: string; readonly before: FindingState | null; readonly after: FindingState | null }[]
}

/** Judges by both catalogs only what may differ, and the rest only once something does. Undefined where nothing does. */
export function compareOpening(tried: TriedOpening, place: ComparedPlace): OpeningChange | undefined {
  if (place.changed.size === 0 && !place.quantitiesMayDiffer) return undefined
  const [before, after] = [judgedBy(tried, place.before), judgedBy(tried, place.after)]
  const differs = isAffected(place, before)
  const [was, is] = [before, after].map(({ rules, finding }) => rules.filter(differs).map(finding))
  const findings = was && is ? changedFindings(was, is) : []
  if (!was || !is || findings.length === 0) return undefined
  const verdict = verdicts(before.rules.filter((rule) => !differs(rule)), before.finding, { findings: was, inPart: place.before.ruleSet.inPart }, { findings: is, inPart: place.after.ruleSet.inPart })
  return { verdict, findings: findings.filter(({ before: old, after: next }) => old?.outcome !== next?.outcome) }
}

/** What the rules come to that do not differ, together with those that do; once one of the former fails it all, the rest does not matter. */
function verdicts(same: readonly ResolvedRule[], finding: Judged['finding'], was: Differing, is: Differing): OpeningChange['verdict'] {
  const rest: Finding[] = []
  for (const rule of same) {
    const found = finding(rule)
    if (summarise([found], false).verdict === 'fail') return { before: 'fail', after: 'fail' }
    rest.push(found)
  }
  const verdictWith = ({ findings, inPart }: Differing) => summarise([...rest, ...findings], inPart).verdict
  return { before: verdictWith(was), after: verdictWith(is) }
}

/** What differs, and whether the code it stands in is held only in part. */
interface Differing {
  readonly findings: readonly Finding[]
  readonly inPart: boolean
}

interface Judged {
  readonly rules: readonly ResolvedRule[]
  readonly finding: (rule: ResolvedRule) => Finding
  /** Whether the quantities were computed from the limit of one of some rules. */
  readonly computesWith: (rules: ReadonlySet<string>) => boolean
}

/** Only what some rule judges can change a finding. */
function judgedQuantities(rules: readonly ResolvedRule[]): readonly string[] {
  return [...new Set(rules.flatMap(({ rule: { check } }) => ('quantity' in check ? [check.quantity] : [])))]
}

function judgedBy({ opening, holdPoint = null }: TriedOpening, { catalog, ruleSet }: CatalogRules): Judged {
  const asked = new Set<string>()
  let computed: ReadonlyMap<string, QuantityResult> | undefined
  const results = () => {
    const inputs = quantityInputs(opening, ruleSet, catalog)
    const limit = (rule: string) => { asked.add(rule); return inputs.limit(rule) }
    computed ??= computeSome(quantities, judgedQuantities(ruleSet.rules), { ...inputs, limit })
    return computed
  }
  const none = new Map<string, QuantityResult>()
  return {
    rules: ruleSet.rules,
    finding: (resolved) => judge(resolved, { opening, quantities: 'quantity' in resolved.rule.check ? results() : none, catalog, adopted: ruleSet.adopted, holdPoint }),
    computesWith: (rules) => { results(); return [...asked].some((rule) => rules.has(rule)) },
  }
}

/**
 * A rule may differ by itself, or by a quantity that is computed with a limit that differs. Computing goes the same way by
 * both catalogs until it asks for such a limit, so one of them tells.
 */
function isAffected({ changed, quantitiesMayDiffer }: ComparedPlace, before: Judged): (rule: ResolvedRule) => boolean {
  const throughQuantities = quantitiesMayDiffer && before.computesWith(changed)
  return ({ rule }) => changed.has(rule.rule) || (throughQuantities && 'quantity' in rule.check)
}

/** Findings that decide otherwise, or weigh otherwise in the verdict. */
function changedFindings(before: readonly Finding[], after: readonly Finding[]): OpeningChange['findings'] {
  const [was, is] = [before, after].map((findings) => new Map(findings.map((one) => [one.rule, one])))
  const ids = [...new Set([...before, ...after].map(({ rule }) => rule))].toSorted()
  return ids.flatMap((rule) => {
    const [old, next] = [was?.get(rule), is?.get(rule)]
    if (old && next && weighTheSame(old, next)) return []
    return [{ rule, title: (next ?? old)?.title ?? rule, before: old ? stateOf(old) : null, after: next ? stateOf(next) : null }]
  })
}

/** What is met, or does not apply, counts the same with any force. */
function weighTheSame(a: Finding, b: Finding): boolean {
  return a.outcome === b.outcome && (a.force === b.force || a.outcome === 'pass' || a.outcome === 'notApplicable')
}

function stateOf({ outcome, reason, force, margin, required }: Finding): FindingState {
  return { outcome, reason, force, margin, required: required.text }
}
