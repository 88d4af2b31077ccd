import { amendRules } from '../amend.ts'
import type { Amendment } from '../amendment.ts'
import type { FiledDocuments } from '../assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog.ts'
import { isInForce } from '../in-force.ts'
import { editionsById, pathTo, publishedRules, withReferences } from '../resolve.ts'
import type { ResolvedRule } from '../rule-set.ts'
import { checkModifications } from './modifications.ts'

type Editions = ReturnType<typeof withReferences>

/** Resolves every amended place on every date on which something changes there, and reports what an amendment cannot do. */
export function checkAmendments(filed: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  const fileOf = new Map(filed.amendment.map(({ path, entry }) => [entry.amendment, path]))
  const published = publishedOnce(catalog)
  const problems = filed.amendment.flatMap(({ entry }) => {
    const path = pathTo(catalog, entry.jurisdiction) ?? []
    const dates = datesWithin(entry, path, catalog)
    return basesOf(entry, catalog).flatMap((editions) => dates.flatMap((date) => amendRules(catalog, path, editions, date, published(editions, date)).problems))
  })
  const found = [...new Map(problems.map((problem) => [`${problem.path}${problem.pointer}${problem.code}${problem.detail}`, problem])).values()]
  return [...found.map((problem) => ({ ...problem, path: fileOf.get(problem.path) ?? problem.path })), ...checkModifications(filed, catalog)]
}

/** Every code edition that is, or brings with it, an amended edition. */
function basesOf({ amends }: Amendment, catalog: Catalog): readonly Editions[] {
  const bases = [...editionsById(catalog).values()].map((edition) => withReferences(catalog, edition))
  return bases.filter((editions) => editions.some(({ publication, edition }) => publication === amends.publication && amends.editions.includes(edition)))
}

/** The dates in the life of an amendment on which another one here begins or ends, or a publication is issued. */
function datesWithin(amendment: Amendment, path: readonly string[], { amendments, publications }: Catalog): readonly string[] {
  const ofLayers = amendments.filter(({ jurisdiction }) => path.includes(jurisdiction)).flatMap(({ effectiveFrom, effectiveUntil }) => [effectiveFrom, effectiveUntil ?? effectiveFrom])
  const issued = [...publications.values()].flatMap(({ editions }) => editions.map((edition) => edition.issued))
  return [...new Set([...ofLayers, ...issued])].filter((date) => isInForce(amendment, date)).toSorted()
}

function publishedOnce(catalog: Catalog): (editions: Editions, date: string) => readonly ResolvedRule[] {
  const known = new Map<string, readonly ResolvedRule[]>()
  return (editions, date) => {
    const key = `${date} ${editions.map(({ publication, edition }) => `${publication} ${edition}`).join()}`
    const rules = known.get(key) ?? publishedRules(catalog, { adoption: undefined, editions }, date)
    known.set(key, rules)
    return rules
  }
}
