import { assembleCatalog } from '../catalog/assemble.ts'
import type { Catalog } from '../catalog/catalog.ts'
import { checkCatalog } from '../catalog/checks/check-catalog.ts'
import { checkQuantities } from '../evaluation/check-quantities.ts'
import { readRelease, refusal, releasesIn, type ReadRelease, type ReleaseProblem, type Verified } from './release-files.ts'
import type { PublicKey } from './release-signature.ts'

/** A release that can be evaluated by. */
export interface LoadedRelease extends ReadRelease {
  readonly catalog: Catalog
}

/**
 * Loads a release as any catalog is loaded: shapes, references, units and amendments are checked by the code of today, which
 * has to understand what it evaluates by. Its examples are not run again; they were when the release was cut, and an example
 * that comes out otherwise today shows in `method`, not here.
 */
export async function loadRelease(catalogFolder: string, release: string, trusted: readonly PublicKey[] | null = null): Promise<Verified<LoadedRelease>> {
  const read = await readRelease(catalogFolder, release, trusted)
  if (!read.ok) return read
  const assembly = assembleCatalog(read.value.documents)
  const defects = [...checkCatalog(assembly), ...checkQuantities(assembly.filed)]
  if (defects.length > 0) return { ok: false, problems: defects.map(({ code, path, pointer, detail }) => ({ code: 'faultyRelease', path: `${release}: ${path}${pointer}`, detail: `${code}: ${detail}` })) }
  const { catalog } = assembly
  const { catalogDigest } = read.value.manifest
  if (catalog.release !== release || catalog.digest !== catalogDigest) return refusal('faultyRelease', release, `It was cut with the digest ${catalogDigest}, and is assembled as ${catalog.release} with ${catalog.digest}.`)
  return { ok: true, value: { ...read.value, catalog } }
}

/** The newest release that can be trusted, and why newer ones cannot. */
export async function newestRelease(catalogFolder: string, trusted: readonly PublicKey[] | null = null): Promise<{ readonly release: LoadedRelease | undefined; readonly refused: readonly ReleaseProblem[] }> {
  const names = await releasesIn(catalogFolder)
  if (!names.ok) return { release: undefined, refused: names.problems }
  const refused: ReleaseProblem[] = []
  for (const name of names.value.toReversed()) {
    const loaded = await loadRelease(catalogFolder, name, trusted)
    if (loaded.ok) return { release: loaded.value, refused }
    refused.push(...loaded.problems)
  }
  return { release: undefined, refused }
}
