import type { Catalog } from '../catalog/catalog.ts'
import { loadRelease, newestRelease } from './load-release.ts'
import type { ReleaseProblem } from './release-files.ts'
import type { PublicKey } from './release-signature.ts'
import { workingCatalog } from './working-catalog.ts'

interface Defect {
  readonly code: string
  readonly path: string
  readonly detail: string
}

export interface BaseCatalogPlace {
  readonly folder: string
  /** "working", "latest", or the name of a release. */
  readonly release: string
  readonly trusted: readonly PublicKey[] | null
}

export type BaseCatalog =
  /** `passedOver`: newer releases that cannot be trusted. */
  | { readonly ok: true; readonly catalog: Catalog; readonly passedOver: readonly ReleaseProblem[] }
  | { readonly ok: false; readonly problems: readonly Defect[] }

/** The catalog that the service starts from: the working folder, or a release whose bytes and signature hold. */
export async function loadBaseCatalog({ folder, release, trusted }: BaseCatalogPlace): Promise<BaseCatalog> {
  if (release === 'working') {
    const loaded = await workingCatalog(folder)
    return loaded.ok ? { ...loaded, passedOver: [] } : loaded
  }
  if (release !== 'latest') {
    const loaded = await loadRelease(folder, release, trusted)
    return loaded.ok ? { ok: true, catalog: loaded.value.catalog, passedOver: [] } : loaded
  }
  const newest = await newestRelease(folder, trusted)
  if (newest.release) return { ok: true, catalog: newest.release.catalog, passedOver: newest.refused }
  return { ok: false, problems: [...newest.refused, { code: 'unknownRelease', path: folder, detail: 'There is no release that can be trusted.' }] }
}
