import type { Modification } from './amendment.ts'
import type { CatalogCode, CatalogProblem } from './catalog.ts'
import { digestOfText } from './digest.ts'
import { limitText } from './limit-text.ts'
import type { Limit } from './limit.ts'
import { problemIn, targetOf, type Placed } from './placed-modification.ts'
import { chainStepOf, type ChainStep, type RepealedRule, type ResolvedRule } from './rule-set.ts'
import { isAtLeastAsStrict } from './strictness.ts'

type Rules = ReadonlyMap<string, ResolvedRule>

/** What a modification does to the rules of its layer, or why it is refused. */
export type Change =
  | { readonly ok: true; readonly apply: (after: Map<string, ResolvedRule>) => void; readonly repealed?: RepealedRule }
  | { readonly ok: false; readonly problem: CatalogProblem }

/** Checks one modification against the rules that enter its layer. Nothing is changed until `apply`. */
export function modify(before: Rules, placed: Placed, onlyMoreStringent: boolean): Change {
  const { modification } = placed
  if (modification.kind === 'insertion') return insert(before, placed, modification)
  const current = before.get(targetOf(modification))
  if (!current) return refuse(placed, 'unknownTarget', `There is no rule "${targetOf(modification)}" to change here; it may be repealed, or not part of the amended edition.`)
  if (modification.kind === 'repeal') return repeal(current, placed, modification)
  if (modification.kind === 'renumbering') return renumber(current, placed, modification)
  return modification.target.part === 'statement' ? reword(current, placed, modification) : substitute(current, placed, modification, onlyMoreStringent)
}

type OfKind<K extends Modification['kind']> = Extract<Modification, { kind: K }>

function insert(before: Rules, placed: Placed, { new: rule }: OfKind<'insertion'>): Change {
  if (before.has(rule.rule)) return refuse(placed, 'insertionExists', `"${rule.rule}" is in force already; substitute its limit, or take an id of its own.`)
  if (!rule.rule.startsWith(`${placed.amendment.jurisdiction}.`)) return refuse(placed, 'insertionExists', `A rule of ${placed.amendment.jurisdiction} has an id that starts with "${placed.amendment.jurisdiction}."`)
  const limit = rule.limits.at(-1)
  if (!limit) return refuse(placed, 'unknownTarget', 'The inserted rule has no limit.')
  const comparator = limit.comparator ?? rule.check.comparator
  const chain = [stepOf(placed, 'insertion', { locator: limit.locator, new: limitText(limit, comparator) })]
  return { ok: true, apply: (after) => after.set(rule.rule, { rule, limit, comparator, chain }) }
}

function repeal({ rule, chain }: ResolvedRule, placed: Placed, { old, reason }: OfKind<'repeal'>): Change {
  if (old.revision !== rule.revision) return stale(placed, `revision ${old.revision}`, `revision ${rule.revision}`)
  return { ok: true, apply: (after) => after.delete(rule.rule), repealed: { rule, reason, chain: [...chain, stepOf(placed, 'repeal', {})] } }
}

function renumber(current: ResolvedRule, placed: Placed, { old, new: renamed }: OfKind<'renumbering'>): Change {
  if (old.locator !== current.limit.locator) return stale(placed, `locator ${old.locator}`, `locator ${current.limit.locator}`)
  const step = stepOf(placed, 'renumbering', { locator: renamed.locator, old: old.locator, new: renamed.locator })
  return change(current, step, (resolved) => ({ ...resolved, limit: { ...resolved.limit, locator: renamed.locator } }))
}

type Reword = Extract<OfKind<'substitution'>, { target: { part: 'statement' } }>
type Substitute = Extract<OfKind<'substitution'>, { target: { part: 'limit' } }>

function reword(current: ResolvedRule, placed: Placed, modification: OfKind<'substitution'>): Change {
  const { old, new: reworded } = modification as Reword
  const digest = digestOfText(current.rule.statement)
  if (old.digest !== digest) return stale(placed, `statement ${old.digest}`, `statement ${digest}`)
  const step = stepOf(placed, 'substitution', { locator: reworded.locator, old: current.rule.statement, new: reworded.text })
  return change(current, step, (resolved) => ({ ...resolved, rule: { ...resolved.rule, statement: reworded.text } }))
}

function substitute(current: ResolvedRule, placed: Placed, modification: OfKind<'substitution'>, onlyMoreStringent: boolean): Change {
  const { old, new: replaced } = modification as Substitute
  const differing = Object.entries(old).find(([key, value]) => !sameValue(value, key === 'comparator' ? current.comparator : (current.limit as Record<string, unknown>)[key]))
  if (differing) return stale(placed, `${differing[0]} ${JSON.stringify(differing[1])}`, limitText(current.limit, current.comparator))
  const { comparator = current.comparator, ...amount } = replaced
  const limit: Limit = { ...citationOf(current.limit), ...amount, evidence: 'primary' }
  if (onlyMoreStringent && !isAtLeastAsStrict({ limit, comparator }, current)) {
    return refuse(placed, 'lessStringent', `An outer jurisdiction allows only stricter limits, and "${limitText(limit, comparator)}" is not shown to be as strict as "${limitText(current.limit, current.comparator)}".`)
  }
  const step = stepOf(placed, 'substitution', { locator: replaced.locator, old: limitText(current.limit, current.comparator), new: limitText(limit, comparator) })
  return change(current, step, (resolved) => ({ ...resolved, limit, comparator }))
}

/** The citation of the limit being replaced, without its amount. */
function citationOf({ publication, editions, lastReviewed }: Limit) {
  return { publication, editions, lastReviewed }
}

function sameValue(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}

function stepOf({ amendment, modification }: Placed, action: ChainStep['action'], detail: Partial<ChainStep>): ChainStep {
  const { jurisdiction: layer, amendment: document, instrument, effectiveFrom } = amendment
  return chainStepOf({ layer, action, document, modification: modification.modification, instrument, effectiveFrom, ...detail })
}

/** Two modifications of one layer may touch different parts of one rule, so each changes what the others have left. */
function change(current: ResolvedRule, step: ChainStep, part: (resolved: ResolvedRule) => ResolvedRule): Change {
  const apply = (after: Map<string, ResolvedRule>) => {
    const resolved = after.get(current.rule.rule) ?? current
    after.set(current.rule.rule, { ...part(resolved), chain: [...resolved.chain, step] })
  }
  return { ok: true, apply }
}

function stale(placed: Placed, stated: string, inForce: string): Change {
  return refuse(placed, 'staleAmendment', `States the old value as ${stated}, but what is in force is ${inForce}. Amend what is in force.`)
}

function refuse(placed: Placed, code: CatalogCode, detail: string): Change {
  return { ok: false, problem: problemIn(placed, code, detail) }
}
