import type { Catalog } from '../catalog/catalog.ts'
import { limitText } from '../catalog/limit-text.ts'
import type { ChainStep, ResolvedRule } from '../catalog/rule-set.ts'

/** A rule as a form tells of it: what it asks for, on whose authority, and by which amendments. */
export function ruleWords({ rule, limit, comparator, chain }: ResolvedRule, { publications, cautions }: Catalog) {
  const [first] = chain
  return {
    title: rule.title,
    force: rule.force,
    statement: rule.statement,
    holdPoint: rule.holdPoint,
    required: limitText(limit, comparator),
    source: sourceWords(first, publications.get(first?.publication ?? '')?.title),
    locator: first?.locator ?? limit.locator,
    evidence: limit.evidence,
    chain: chain.slice(1).map(stepWords),
    cautions: (rule.cautions ?? []).flatMap((id) => cautions.get(id)?.title ?? []),
  }
}

function sourceWords(step: ChainStep | undefined, title: string | undefined): string {
  if (!step) return ''
  return [title ?? step.publication ?? step.layer, step.edition].filter((word) => word !== null).join(', ')
}

/** "adoption us-xa/irc-2021", "substitution us-xa-101/ord-2025-31#m1: 4 [in_i] becomes 6 [in_i]". */
function stepWords({ action, document, modification, old, new: by }: ChainStep): string {
  const which = `${action} ${document ?? ''}${modification ? `#${modification}` : ''}`.trim()
  return old !== null && by !== null ? `${which}: ${old} becomes ${by}` : which
}
