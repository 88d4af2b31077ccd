import { assembleCatalog } from '../catalog/assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog/catalog.ts'
import { checkCatalog } from '../catalog/checks/check-catalog.ts'
import { checkExamples } from '../evaluation/check-examples.ts'
import { checkQuantities } from '../evaluation/check-quantities.ts'
import { readCatalogFiles } from './catalog-files.ts'

export type LoadedCatalog = { readonly ok: true; readonly catalog: Catalog } | { readonly ok: false; readonly problems: readonly CatalogProblem[] }

/** Reads, checks and proves a catalog. All defects are told at once; a catalog with any is not handed out. */
export async function loadCatalog(folder: string): Promise<LoadedCatalog> {
  const { documents, problems } = await readCatalogFiles(folder)
  const assembly = assembleCatalog(documents)
  const defects = [...problems, ...checkCatalog(assembly), ...checkQuantities(assembly.filed)]
  const all = defects.length > 0 ? defects : checkExamples(assembly.filed, assembly.catalog)
  return all.length > 0 ? { ok: false, problems: all } : { ok: true, catalog: assembly.catalog }
}
