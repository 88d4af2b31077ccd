import type { Catalog } from '../catalog/catalog.ts'
import type { ResolvedRule, RuleSet } from '../catalog/rule-set.ts'
import { factsIn } from '../evaluation/condition.ts'
import type { Assessment } from '../evaluation/document.ts'
import { facts } from '../opening/facts.ts'
import { askedBy, askedById } from '../quantities/asked-by.ts'
import type { QuantityDefinition } from '../quantities/define.ts'
import { everydayQuantities } from '../quantities/index.ts'

/** Who asks for a fact: rules that apply or may apply, and quantities that are computed for the crew. */
export interface Reasons {
  readonly rules: readonly ResolvedRule[]
  readonly quantities: readonly QuantityDefinition[]
}

/** Every fact that somebody asks for, with who does. What is ruled out for this opening asks for nothing. */
export function reasonsByFact({ rules }: RuleSet, catalog: Catalog, { findings }: Pick<Assessment, 'findings'>, isComputed: (quantity: string) => boolean): ReadonlyMap<string, Reasons> {
  const applying = rules.filter((_, index) => findings[index]?.outcome !== 'notApplicable').map((rule) => ({ rule, needs: factsOfRule(rule, catalog) }))
  const computed = everydayQuantities.filter(({ id }) => isComputed(id)).map((quantity) => ({ quantity, needs: askedBy(quantity) }))
  const found = [...facts.keys()].map((fact) => {
    const asking = applying.filter(({ needs }) => needs.has(fact)).map(({ rule }) => rule)
    return [fact, { rules: asking.toSorted((a, b) => rank[a.rule.force] - rank[b.rule.force] || checks(b, fact) - checks(a, fact)), quantities: computed.filter(({ needs }) => needs.has(fact)).map(({ quantity }) => quantity) }] as const
  })
  return new Map(found.filter(([, reasons]) => reasons.rules.length + reasons.quantities.length > 0))
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
