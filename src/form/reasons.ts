import type { Catalog } from '../catalog/catalog.ts'
import type { ResolvedRule, RuleSet } from '../catalog/rule-set.ts'
import { factsIn } from '../evaluation/condition.ts'
import type { Assessment, ComputedQuantity } from '../evaluation/document.ts'
import { facts } from '../opening/facts.ts'
import { askedById } from '../quantities/asked-by.ts'

/** Who asks for a fact: rules that apply or may apply, and quantities that are computed for the crew. */
export interface Reasons {
  readonly rules: readonly ResolvedRule[]
  readonly quantities: readonly Pick<ComputedQuantity, 'id' | 'title'>[]
}

/** Every fact that somebody asks for, with who does. What is ruled out for this opening asks for nothing, and so do quantities that openings are only described for by whoever wants them. */
export function reasonsByFact({ rules }: RuleSet, catalog: Catalog, { findings, quantities }: Pick<Assessment, 'findings' | 'quantities'>): ReadonlyMap<string, Reasons> {
  const asking = rules.map((rule, index) => ({ rule, needs: factsOfRule(rule, catalog), applies: findings[index]?.outcome !== 'notApplicable' }))
  const computed = quantities.map((quantity) => ({ quantity, needs: needsOf(quantity), mayNeed: askedById(quantity.id) }))
  const found = [...facts.keys()].map((fact): readonly [string, Reasons] => {
    const about = asking.filter(({ needs }) => needs.has(fact))
    const applying = about.filter(({ applies }) => applies).map(({ rule }) => rule)
    const isRuledOut = about.length > 0 && applying.length === 0
    const computing = computed.filter(({ needs, mayNeed }) => needs.has(fact) || (!isRuledOut && mayNeed.has(fact))).map(({ quantity }) => quantity)
    return [fact, { rules: applying.toSorted((a, b) => rank[a.rule.force] - rank[b.rule.force] || checks(b, fact) - checks(a, fact)), quantities: computing }]
  })
  return new Map(found.filter(([, reasons]) => reasons.rules.length + reasons.quantities.length > 0))
}

function needsOf({ missing, inputs }: ComputedQuantity): ReadonlySet<string> {
  return new Set([...missing, ...inputs.map(({ from }) => from)])
}

/** What a rule has to know: whether it applies, what it checks, and what its limit depends on. */
function factsOfRule({ rule, limit }: ResolvedRule, { tables }: Catalog): ReadonlySet<string> {
  const checked = 'fact' in rule.check ? [rule.check.fact] : [...askedById(rule.check.quantity)]
  const dependedOn = 'proportion' in limit ? [limit.of] : 'table' in limit ? (tables.get(limit.table)?.lookup?.keys ?? []).map(({ fact }) => fact) : []
  return new Set([...(rule.appliesWhen ? factsIn(rule.appliesWhen) : []), ...checked, ...dependedOn])
}

const rank = { mandatory: 0, recommended: 1, informative: 2 } as const

/** A rule about the fact itself says more than one that only depends on it. */
function checks({ rule: { check } }: ResolvedRule, fact: string): number {
  return 'fact' in check && check.fact === fact ? 1 : 0
}
