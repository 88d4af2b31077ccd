import { amendRules } from '../amend.ts'
import type { Amendment } from '../amendment.ts'
import type { FiledDocuments } from '../assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog.ts'
import { isInForce } from '../in-force.ts'
import { targetsOf, type ModificationProblem } from '../placed-modification.ts'
import { editionsById, onlyRules, pathTo, publishedRules, withReferences } from '../resolve.ts'
import { checkModifications } from './modifications.ts'

/** Resolves every amended place on every date on which something changes there, and reports what an amendment cannot do. */
export function checkAmendments(filed: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  const fileOf = new Map(filed.amendment.map(({ path, entry }) => [entry.amendment, path]))
  const problems = filed.amendment.flatMap(({ entry }) => resolutionProblems(entry, catalog))
  const found = [...new Map(problems.map((problem) => [keyOf(problem), problem])).values()]
  return [
    ...found.map(({ code, path, pointer, detail }) => ({ code, path: fileOf.get(path) ?? path, pointer, detail })),
    ...checkModifications(filed.amendment, catalog),
  ]
}

export function keyOf({ path, pointer, code, detail }: CatalogProblem): string {
  return `${path}${pointer}${code}${detail}`
}

/** The rules and the time to look at. */
interface Narrowed {
  readonly rules: ReadonlySet<string>
  /** Whether a date is of interest; all are when left out. */
  readonly on?: (date: string) => boolean
}

/**
 * What goes wrong with the rules that an amendment changes, on every date of its life on which something changes for them.
 * The problems may be those of other amendments.
 */
export function resolutionProblems(amendment: Amendment, catalog: Catalog, { rules: only, on = () => true }: Narrowed = { rules: targetsOf(amendment) }): readonly ModificationProblem[] {
  const path = pathTo(catalog, amendment.jurisdiction) ?? []
  const narrowed = onlyRules(catalog, only)
  const dates = datesWithin(amendment, path, narrowed, only).filter(on)
  return basesOf(amendment, catalog).flatMap((editions) =>
    dates.flatMap((asOf) => amendRules(catalog, { path, editions, asOf, only }, publishedRules(narrowed, { adoption: undefined, editions }, asOf)).problems),
  )
}

/** Every code edition that is, or brings with it, an amended edition. */
function basesOf({ amends }: Amendment, catalog: Catalog) {
  const bases = [...editionsById(catalog).values()].map((edition) => withReferences(catalog, edition))
  return bases.filter((editions) => editions.some(({ publication, edition }) => publication === amends.publication && amends.editions.includes(edition)))
}

/** The dates in the life of an amendment on which another one of these rules begins or ends here, or a source of theirs is issued. */
function datesWithin(amendment: Amendment, path: readonly string[], { amendments, publications, rules }: Catalog, only: ReadonlySet<string>): readonly string[] {
  const ofRules = new Set(amendments.filter((one) => [...only].some((id) => targetsOf(one).has(id))).map((one) => one.amendment))
  const bearing = amendments.filter(({ amendment: id, jurisdiction, supersedes }) => path.includes(jurisdiction) && (ofRules.has(id) || supersedes.some((other) => ofRules.has(other))))
  const changes = bearing.flatMap(({ effectiveFrom, effectiveUntil }) => [effectiveFrom, effectiveUntil ?? effectiveFrom])
  const cited = new Set([...rules.values()].flatMap(({ limits }) => limits.map(({ publication }) => publication)))
  const issued = [...cited].flatMap((id) => publications.get(id)?.editions.map((edition) => edition.issued) ?? [])
  return [...new Set([amendment.effectiveFrom, ...changes, ...issued])].filter((date) => isInForce(amendment, date)).toSorted()
}
