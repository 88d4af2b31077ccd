import { lastingPart } from '../catalog/canonical.ts'
import type { Catalog } from '../catalog/catalog.ts'
import type { Limit } from '../catalog/limit.ts'
import type { ResolvedRule, RuleSet } from '../catalog/rule-set.ts'
import { recent } from '../opening/recent.ts'
import { recallQuantities, type RecallQuantity } from '../quantities/recall.ts'
import { factsIn } from './condition.ts'
import { judgeOf, type Judge } from './judge.ts'
import type { Ruling } from './ruling.ts'

/**
 * What is remembered of the openings that were evaluated last under one rule set. The openings of a building have most of their
 * facts in common; a rule or a quantity that goes by those alone answers as it did, with the same object, whose text is then kept too.
 */
export interface Recollection {
  readonly quantity: RecallQuantity
  /** The rules in their order. */
  readonly judges: readonly Judge[]
}

/** As many rule sets as are asked in turn: a few codes, a few dates. */
const mostRuleSets = 4

const recollections = recent<Recollection>({ most: mostRuleSets })

export function recollectionOf({ rules }: Pick<RuleSet, 'rules'>, catalog: Catalog): Recollection {
  return recollections([rules, catalog], () => ({ quantity: recallQuantities(), judges: rules.map((resolved) => recalling(resolved, catalog)) }))
}

function recalling(resolved: ResolvedRule, catalog: Catalog): Judge {
  const { check } = resolved.rule
  const judge = judgeOf(resolved, catalog)
  const facts = factsOf(resolved, catalog)
  const quantity = 'quantity' in check ? check.quantity : undefined
  const recall = recent<Ruling>({ again: ({ finding }) => lastingPart(finding) })
  return (subject) => {
    const parts: unknown[] = [subject.holdPoint, subject.adopted, quantity === undefined ? undefined : subject.quantities.get(quantity)]
    for (const path of facts) parts.push(subject.opening.facts.get(path))
    return recall(parts, () => judge(subject))
  }
}

/** All facts that a finding may go by. */
function factsOf({ rule: { appliesWhen, check }, limit }: ResolvedRule, catalog: Catalog): readonly string[] {
  return [...new Set([...('fact' in check ? [check.fact] : []), ...(appliesWhen ? factsIn(appliesWhen) : []), ...factsInLimit(limit, catalog)])]
}

function factsInLimit(limit: Limit, { tables }: Catalog): readonly string[] {
  if ('of' in limit) return [limit.of]
  return 'table' in limit ? (tables.get(limit.table)?.lookup?.keys ?? []).map(({ fact }) => fact) : []
}
