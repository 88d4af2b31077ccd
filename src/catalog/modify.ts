import { changeOf, refuse, stale, stepOf, type Change } from './change.ts'
import { limitText } from './limit-text.ts'
import type { Modification } from './modification.ts'
import { targetOf, type Placed } from './placed-modification.ts'
import type { ResolvedRule } from './rule-set.ts'
import { substitute } from './substitute.ts'

type OfKind<K extends Modification['kind']> = Extract<Modification, { kind: K }>

/** Checks one modification against the rules that enter its layer. Nothing is changed until `apply`. */
export function modify(before: ReadonlyMap<string, ResolvedRule>, placed: Placed, onlyMoreStringent: boolean): Change {
  const { modification } = placed
  const current = before.get(targetOf(modification))
  if (modification.kind === 'insertion') return insert(current, placed, modification)
  if (!current) return refuse(placed, 'unknownTarget', `There is no rule "${targetOf(modification)}" to change here; it may be repealed, or not part of the amended edition.`)
  if (modification.kind === 'repeal') return repeal(current, placed, modification)
  if (modification.kind === 'renumbering') return renumber(current, placed, modification)
  return substitute(current, placed, modification, onlyMoreStringent)
}

function insert(current: ResolvedRule | undefined, placed: Placed, { new: rule }: OfKind<'insertion'>): Change {
  if (current) return refuse(placed, 'insertionExists', `"${rule.rule}" is in force already; substitute its limit, or take an id of its own.`)
  if (!rule.rule.startsWith(`${placed.amendment.jurisdiction}.`)) return refuse(placed, 'insertionExists', `A rule of ${placed.amendment.jurisdiction} has an id that starts with "${placed.amendment.jurisdiction}."`)
  const limit = rule.limits.at(-1)
  if (!limit) return refuse(placed, 'unknownTarget', 'The inserted rule has no limit.')
  const comparator = limit.comparator ?? rule.check.comparator
  const chain = [stepOf(placed, { locator: limit.locator, new: limitText(limit, comparator) })]
  return { ok: true, apply: (after) => after.set(rule.rule, { rule, limit, comparator, chain }) }
}

function repeal({ rule, chain }: ResolvedRule, placed: Placed, { old, reason }: OfKind<'repeal'>): Change {
  if (old.revision !== rule.revision) return stale(placed, `revision ${old.revision}`, `revision ${rule.revision}`)
  return { ok: true, apply: (after) => after.delete(rule.rule), repealed: { rule, reason, chain: [...chain, stepOf(placed, {})] } }
}

function renumber(current: ResolvedRule, placed: Placed, { old, new: renamed }: OfKind<'renumbering'>): Change {
  if (old.locator !== current.limit.locator) return stale(placed, `locator ${old.locator}`, `locator ${current.limit.locator}`)
  const step = stepOf(placed, { locator: renamed.locator, old: old.locator, new: renamed.locator })
  return changeOf(current, step, (resolved) => ({ ...resolved, limit: { ...resolved.limit, locator: renamed.locator } }))
}
