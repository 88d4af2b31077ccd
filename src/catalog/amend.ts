import type { Amendment } from './amendment.ts'
import type { Catalog } from './catalog.ts'
import { isInForce } from './in-force.ts'
import type { Modification } from './modification.ts'
import { modify } from './modify.ts'
import { placeOf, problemIn, targetOf, type ModificationProblem, type Placed } from './placed-modification.ts'
import type { RepealedRule, ResolvedRule } from './rule-set.ts'

interface Edition {
  readonly publication: string
  readonly edition: string
}

/** Where and when rules are amended. */
export interface AmendedPlace {
  /** From the outermost layer inward. */
  readonly path: readonly string[]
  readonly editions: readonly Edition[]
  readonly asOf: string
  /** The rules that are of interest; all when left out. */
  readonly only?: ReadonlySet<string> | undefined
}

/** The rules after some layers, and what those layers repealed. */
export interface AmendedRules {
  readonly rules: readonly ResolvedRule[]
  readonly repealed: readonly RepealedRule[]
  readonly problems: readonly ModificationProblem[]
}

/**
 * Applies the amendments of each layer, outermost first. Inside a layer every modification is checked against the set that
 * enters the layer and then all are applied, so their order cannot matter.
 */
export function amendRules(catalog: Catalog, place: AmendedPlace, published: readonly ResolvedRule[]): AmendedRules {
  return place.path.reduce<AmendedRules>(
    (entering, layer, depth) => amendLayer(entering, placedIn(catalog, layer, place), policyAbove(catalog, place.path.slice(0, depth))),
    { rules: published, repealed: [], problems: [] },
  )
}

function placedIn(catalog: Catalog, layer: string, place: AmendedPlace): readonly Placed[] {
  return inForceAt(catalog, layer, place).flatMap((amendment) =>
    amendment.modifications.flatMap((modification, index) => (place.only?.has(targetOf(modification)) ?? true ? [{ amendment, modification, index }] : [])),
  )
}

/** The amendments of a layer that are in force, without those that another one supersedes. */
export function inForceAt({ amendments }: Pick<Catalog, 'amendments'>, layer: string, { editions, asOf }: Pick<AmendedPlace, 'editions' | 'asOf'>): readonly Amendment[] {
  const current = amendments.filter(
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
export function policyAbove({ jurisdictions }: Pick<Catalog, 'jurisdictions'>, outer: readonly string[]): Policy {
  const said = outer.map((layer) => jurisdictions.get(layer)?.localAmendment)
  return (['prohibited', 'moreStringentOnly'] as const).find((policy) => said.includes(policy)) ?? 'permitted'
}

function amendLayer(entering: AmendedRules, placed: readonly Placed[], policy: Policy): AmendedRules {
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

/** Of a great many that touch the same thing, each is told against so many of the others. */
const mostOpponents = 3

/** Two modifications of one layer that touch the same thing: both are named, none wins. */
function competing(placed: readonly Placed[]): readonly ModificationProblem[] {
  const byTarget = new Map<string, Placed[]>()
  return placed.flatMap((one) => {
    const target = targetOf(one.modification)
    const earlier = byTarget.get(target) ?? []
    const opponents = earlier.filter((other) => touchTheSame(one.modification, other.modification)).slice(0, mostOpponents)
    byTarget.set(target, earlier)
    earlier.push(one)
    return opponents.map((against) => ({
      ...problemIn(one, 'competingModifications', `${placeOf(one)} and ${placeOf(against)} both change ${target}. Keep one, or let one supersede the other.`),
      against,
    }))
  })
}

function touchTheSame(a: Modification, b: Modification): boolean {
  return a.kind === 'repeal' || b.kind === 'repeal' || partOf(a) === partOf(b)
}

/** A renumbering changes where the limit stands and a list of materials is a limit, so both count as the limit. */
function partOf(modification: Modification): string {
  if (modification.kind === 'renumbering') return 'limit'
  if (modification.kind !== 'substitution') return 'rule'
  return modification.target.part === 'materials' ? 'limit' : modification.target.part
}
