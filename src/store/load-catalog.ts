import { assembleCatalog, type Assembly } from '../catalog/assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog/catalog.ts'
import { checkCatalog } from '../catalog/checks/check-catalog.ts'
import { checkExamples } from '../evaluation/check-examples.ts'
import { checkQuantities } from '../evaluation/check-quantities.ts'
import { filesIn, parseCatalogFiles, type ReadFile } from './catalog-files.ts'

export type LoadedCatalog = { readonly ok: true; readonly catalog: Catalog } | { readonly ok: false; readonly problems: readonly CatalogProblem[] }

/** Reads, checks and proves a catalog. All defects are told at once; a catalog with any is not handed out. */
export function loadCatalog(folder: string): Promise<LoadedCatalog> {
  return proveCatalog(filesIn(folder))
}

/** The same of files that were read already. */
export async function proveCatalog(files: readonly ReadFile[]): Promise<LoadedCatalog> {
  const { documents, problems } = await parseCatalogFiles(files)
  const assembly = assembleCatalog(documents)
  const defects = [...problems, ...checkCatalog(assembly), ...checkQuantities(assembly.filed)]
  const all = defects.length > 0 ? defects : [...gapsIn(assembly), ...checkExamples(assembly.filed, assembly.catalog)]
  return all.length > 0 ? { ok: false, problems: all } : { ok: true, catalog: assembly.catalog }
}

/** A catalog without rules finds nothing wrong with any wall, and one without a release cannot be named afterwards. */
function gapsIn({ filed, catalog }: Assembly): readonly CatalogProblem[] {
  const gap = (path: string, detail: string): CatalogProblem => ({ code: 'unreadableFile', path, pointer: '', detail })
  return [
    ...(filed.release.length === 0 ? [gap('release.yaml', 'The file that names the release is missing.')] : []),
    ...(catalog.rules.size === 0 ? [gap('rules', 'There is no rule in this folder.')] : []),
  ]
}
