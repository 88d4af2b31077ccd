import type { CatalogCode, CatalogProblem } from './catalog.ts'
import { problemIn, type Placed } from './placed-modification.ts'
import { chainStepOf, type ChainStep, type RepealedRule, type ResolvedRule } from './rule-set.ts'

/** What a modification does to the rules of its layer, or why it is refused. */
export type Change =
  | { readonly ok: true; readonly apply: (after: Map<string, ResolvedRule>) => void; readonly repealed?: RepealedRule }
  | { readonly ok: false; readonly problem: CatalogProblem }

/** Two modifications of one layer may touch different parts of one rule, so each changes what the others have left. */
export function changeOf(current: ResolvedRule, step: ChainStep, part: (resolved: ResolvedRule) => ResolvedRule): Change {
  const apply = (after: Map<string, ResolvedRule>) => {
    const resolved = after.get(current.rule.rule) ?? current
    after.set(current.rule.rule, { ...part(resolved), chain: [...resolved.chain, step] })
  }
  return { ok: true, apply }
}

export function stepOf({ amendment, modification }: Placed, detail: Partial<ChainStep>): ChainStep {
  const { jurisdiction: layer, amendment: document, instrument, effectiveFrom, readIn = null } = amendment
  return chainStepOf({ layer, action: modification.kind, document, modification: modification.modification, instrument, effectiveFrom, readIn, ...detail })
}

export function stale(placed: Placed, stated: string, inForce: string): Change {
  return refuse(placed, 'staleAmendment', `States the old value as ${stated}, but what is in force is ${inForce}. Amend what is in force.`)
}

export function refuse(placed: Placed, code: CatalogCode, detail: string): Change {
  return { ok: false, problem: problemIn(placed, code, detail) }
}
