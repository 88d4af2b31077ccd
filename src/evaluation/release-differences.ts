import type { Catalog } from '../catalog/catalog.ts'
import { catalogDifferences } from '../catalog/catalog-differences.ts'
import type { ReleaseDifferences } from '../catalog/release.ts'
import { resolveRules, type Place } from '../catalog/resolve.ts'
import type { Outcome } from '../catalog/rule.ts'
import { evaluate } from './evaluate.ts'
import { placesOf, type Vector } from './release-vectors.ts'

/**
 * What a release changes: in the catalog, and in the answers for reference openings at every place that the catalog before it
 * knew. Both are evaluated by the method of today, so that only the catalog can make a difference.
 */
export function releaseDifferences(previous: Catalog | null, next: Catalog, vectors: readonly Vector[]): ReleaseDifferences {
  const found = previous ? vectors.flatMap((vector) => placesOf(previous, vector.home).map((place) => differencesAt(previous, next, vector, place))) : []
  const lists = {
    ...catalogDifferences(previous, next),
    outcomes: found.flatMap(({ outcomes }) => outcomes),
    quantities: found.flatMap(({ quantities }) => quantities),
  }
  const { rulesAdded, rulesRemoved, rulesChanged, requirements, outcomes, quantities } = lists
  return {
    ...lists,
    counts: {
      rulesAdded: rulesAdded.length, rulesRemoved: rulesRemoved.length, rulesChanged: rulesChanged.length,
      requirements: requirements.length, outcomes: outcomes.length, quantities: quantities.length,
    },
  }
}

function differencesAt(previous: Catalog, next: Catalog, vector: Vector, place: Place): Pick<ReleaseDifferences, 'outcomes' | 'quantities'> {
  const [was, is] = [answersAt(previous, vector, place), answersAt(next, vector, place)]
  const { jurisdiction, publication = null, edition = null, asOf } = place
  const where = { vector: vector.id, jurisdiction, publication, edition, asOf }
  return {
    outcomes: changesIn(was.outcomes, is.outcomes).map(({ id, before, after }) => ({ ...where, rule: id, before, after })),
    quantities: changesIn(was.quantities, is.quantities).map(({ id, before, after }) => ({ ...where, quantity: id, before, after })),
  }
}

interface Answers {
  readonly outcomes: ReadonlyMap<string, Outcome>
  readonly quantities: ReadonlyMap<string, string>
}

/** Nothing where the place cannot be resolved, as after an edition was taken out. */
function answersAt(catalog: Catalog, { opening, holdPoint }: Vector, place: Place): Answers {
  const ruleSet = resolveRules(catalog, place)
  if (!ruleSet.ok) return { outcomes: new Map(), quantities: new Map() }
  const { findings, quantities } = evaluate(opening, ruleSet.value, catalog, holdPoint)
  return {
    outcomes: new Map(findings.map(({ rule, outcome }) => [rule, outcome])),
    quantities: new Map(quantities.map(({ id, value, status }) => [id, value ?? status])),
  }
}

function changesIn<T>(was: ReadonlyMap<string, T>, is: ReadonlyMap<string, T>): readonly { id: string; before: T | null; after: T | null }[] {
  const ids = [...new Set([...was.keys(), ...is.keys()])].toSorted()
  return ids.filter((id) => was.get(id) !== is.get(id)).map((id) => ({ id, before: was.get(id) ?? null, after: is.get(id) ?? null }))
}
