import type { Amendment } from '../catalog/amendment.ts'
import { digestOfDocuments, pathOfAmendment } from '../catalog/assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog/catalog.ts'
import { digestOf } from '../catalog/digest.ts'
import { validateAmendment } from './validate-amendment.ts'

export type ExtendedCatalog = { readonly ok: true; readonly catalog: Catalog } | { readonly ok: false; readonly problems: readonly CatalogProblem[] }

/**
 * A new catalog with some amendments more, or everything that stands in their way; the given one stays as it is. It is the
 * same, digest included, as one loaded from files among which the amendments stand in their places.
 */
export function withAmendments(catalog: Catalog, amendments: readonly Amendment[]): ExtendedCatalog {
  const documents = amendments.map((amendment) => ({ path: pathOfAmendment(amendment), content: amendment }))
  const { amendments: read, problems, affected } = validateAmendment(catalog, documents)
  if (problems.length + affected.length > 0) return { ok: false, problems: [...problems, ...affected] }
  const digests = new Map([...catalog.documents, ...read.map((one) => [pathOfAmendment(one), digestOf(one)] as const)].toSorted(([a], [b]) => (a < b ? -1 : 1)))
  const all = [...catalog.amendments, ...read].toSorted((a, b) => (pathOfAmendment(a) < pathOfAmendment(b) ? -1 : 1))
  return { ok: true, catalog: { ...catalog, amendments: all, documents: digests, digest: digestOfDocuments(digests) } }
}
