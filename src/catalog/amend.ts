import type { Amendment, Modification } from './amendment.ts'
import type { Catalog, CatalogProblem } from './catalog.ts'
import { isInForce } from './in-force.ts'
import { modify } from './modify.ts'
import { placeOf, problemIn, targetOf, type Placed } from './placed-modification.ts'
import type { RepealedRule, ResolvedRule } from './rule-set.ts'

interface Edition {
  readonly publication: string
  readonly edition: string
}

/** The rules after some layers, and what those layers repealed. */
export interface AmendedRules {
  readonly rules: readonly ResolvedRule[]
  readonly repealed: readonly RepealedRule[]
  readonly problems: readonly CatalogProblem[]
}

/**
 * Applies the amendments of each layer, outermost first. Inside a layer every modification is checked against the set that
 * enters the layer and then all are applied, so their order cannot matter.
 */
export function amendRules(catalog: Catalog, path: readonly string[], editions: readonly Edition[], asOf: string, published: readonly ResolvedRule[]): AmendedRules {
  return path.reduce<AmendedRules>(
    (entering, layer, depth) => amendLayer(entering, inForceAt(catalog, layer, editions, asOf), policyAbove(catalog, path.slice(0, depth))),
    { rules: published, repealed: [], problems: [] },
  )
}

function inForceAt(catalog: Catalog, layer: string, editions: readonly Edition[], asOf: string): readonly Amendment[] {
  const current = catalog.amendments.filter(
    ({ jurisdiction, amends, ...interval }) =>
      jurisdiction === layer && isInForce(interval, asOf) && editions.some(({ publication, edition }) => publication === amends.publication && amends.editions.includes(edition)),
  )
  const superseded = new Set(current.flatMap(({ supersedes }) => supersedes))
  return current.filter(({ amendment }) => !superseded.has(amendment)).toSorted(byDateThenId)
}

/** So that a chain reads the same whatever the files are called. */
function byDateThenId(a: Amendment, b: Amendment): number {
  if (a.effectiveFrom !== b.effectiveFrom) return a.effectiveFrom < b.effectiveFrom ? -1 : 1
  return a.amendment < b.amendment ? -1 : 1
}

type Policy = 'prohibited' | 'moreStringentOnly' | 'permitted'

/** The strictest word of the outer layers on what a layer below may do. */
function policyAbove(catalog: Catalog, outer: readonly string[]): Policy {
  const said = outer.map((layer) => catalog.jurisdictions.get(layer)?.localAmendment)
  return (['prohibited', 'moreStringentOnly'] as const).find((policy) => said.includes(policy)) ?? 'permitted'
}

function amendLayer(entering: AmendedRules, amendments: readonly Amendment[], policy: Policy): AmendedRules {
  const placed = amendments.flatMap((amendment) => amendment.modifications.map((modification, index) => ({ amendment, modification, index })))
  if (placed.length === 0) return entering
  const before = new Map(entering.rules.map((resolved) => [resolved.rule.rule, resolved]))
  const problems = policy === 'prohibited' ? placed.map((one) => problemIn(one, 'localAmendmentProhibited', 'An outer jurisdiction does not allow local amendments.')) : competing(placed)
  const changes = placed.map((one) => modify(before, one, policy === 'moreStringentOnly'))
  const refused = changes.flatMap((change) => (change.ok ? [] : [change.problem]))
  const after = new Map(before)
  for (const change of changes) if (change.ok) change.apply(after)
  return {
    rules: [...after.values()],
    repealed: [...entering.repealed, ...changes.flatMap((change) => (change.ok && change.repealed ? [change.repealed] : []))],
    problems: [...entering.problems, ...problems, ...refused],
  }
}

/** Two modifications of one layer that touch the same thing: both are named, none wins. */
function competing(placed: readonly Placed[]): readonly CatalogProblem[] {
  return placed.flatMap((one, index) =>
    placed.slice(0, index).filter((other) => touchTheSame(one.modification, other.modification)).map((other) =>
      problemIn(one, 'competingModifications', `${placeOf(one)} and ${placeOf(other)} both change ${targetOf(one.modification)}. Keep one, or let one supersede the other.`),
    ),
  )
}

function touchTheSame(a: Modification, b: Modification): boolean {
  return targetOf(a) === targetOf(b) && (a.kind === 'repeal' || b.kind === 'repeal' || partOf(a) === partOf(b))
}

/** A renumbering changes where the limit stands, so it counts as the limit. */
function partOf(modification: Modification): 'limit' | 'statement' | 'rule' {
  if (modification.kind === 'substitution') return modification.target.part
  return modification.kind === 'renumbering' ? 'limit' : 'rule'
}
