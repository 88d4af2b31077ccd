import { existsSync } from 'node:fs'
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { assembleCatalog } from '../catalog/assemble.ts'
import type { Catalog, CatalogDocument } from '../catalog/catalog.ts'
import { catalogText, manifestOf, releaseName, type ReleaseManifest } from '../catalog/release.ts'
import { compareReleases, versionFault } from '../catalog/release-version.ts'
import { method } from '../evaluation/evaluate.ts'
import { releaseDifferences } from '../evaluation/release-differences.ts'
import { vectorsOf } from '../evaluation/release-vectors.ts'
import { readCatalogFiles, releasesFolder } from './catalog-files.ts'
import { loadCatalog } from './load-catalog.ts'
import { loadRelease } from './load-release.ts'
import { indexFile, readIndex, releasesIn, sha256Of } from './release-files.ts'
import { signatureOf } from './release-signature.ts'

export type Cut = { readonly ok: true; readonly manifest: ReleaseManifest } | { readonly ok: false; readonly reasons: readonly string[] }

/** Cuts the catalog as it stands into a release that is never written again. Nothing is left behind when it is refused. */
export async function cutRelease(catalogFolder: string, release: string, note?: string): Promise<Cut> {
  const reasons = await obstacles(catalogFolder, release)
  if (reasons.length > 0) return { ok: false, reasons }
  const proved = await provedCatalog(catalogFolder)
  if (!proved.ok) return proved
  const { documents, catalog } = proved
  if (catalog.release !== release) return refused(`The catalog calls itself ${catalog.release}. Write "release: ${release}" into its release.yaml first: evaluations show that name.`)
  const previous = await previousRelease(catalogFolder)
  if (!previous.ok) return previous
  const vectors = vectorsOf(catalog)
  if (!vectors.ok) return { ok: false, reasons: vectors.problems.map(({ pointer, detail }) => `${pointer}: ${detail}`) }
  const cutFrom = previous.catalog?.release ?? null
  const differences = releaseDifferences(previous.catalog, catalog, vectors.value)
  const tooSmall = versionFault(release, cutFrom, differences)
  if (tooSmall !== undefined) return refused(tooSmall)
  const manifest = manifestOf({ release, note: note ?? proved.note, method, cutFrom, documents, catalog, differences })
  await writeRelease(catalogFolder, manifest, catalogText(documents))
  return { ok: true, manifest }
}

export type Signed = { readonly ok: true; readonly file: string } | { readonly ok: false; readonly reasons: readonly string[] }

/** Signs a release that is as it was cut. A signature that is there already is not written over. */
export async function signRelease(catalogFolder: string, release: string, privateKey: string): Promise<Signed> {
  const loaded = await loadRelease(catalogFolder, release)
  if (!loaded.ok) return { ok: false, reasons: loaded.problems.map(({ path, detail }) => `${path}: ${detail}`) }
  const folder = join(catalogFolder, releasesFolder, release)
  const file = join(folder, 'manifest.sig')
  if (existsSync(file)) return refused(`${file} is there already. Take it away first if another key is to sign.`)
  await writeFile(file, signatureOf(await readFile(join(folder, 'manifest.json')), privateKey), { flag: 'wx' })
  return { ok: true, file }
}

async function obstacles(catalogFolder: string, release: string): Promise<readonly string[]> {
  if (!releaseName.safeParse(release).success) return [`"${release}" is not a release like "2026.1.0".`]
  const index = await readIndex(catalogFolder)
  if (!index.ok) return index.problems.map(({ path, detail }) => `${path}: ${detail}`)
  const folder = join(catalogFolder, releasesFolder, release)
  if (Object.hasOwn(index.value, release)) return [`Release ${release} was cut already. A release is never written again; take the next number.`]
  return existsSync(folder) ? [`${folder} is there, but ${indexFile} does not name it: a cut broke off there. Remove it and cut again.`] : []
}

type Proved = { readonly ok: true; readonly documents: readonly CatalogDocument[]; readonly catalog: Catalog; readonly note: string | null } | Extract<Cut, { ok: false }>

/** The documents, and the catalog that was proved from them by all checks and examples. */
async function provedCatalog(catalogFolder: string): Promise<Proved> {
  const loaded = await loadCatalog(catalogFolder)
  if (!loaded.ok) return { ok: false, reasons: loaded.problems.map(({ code, path, pointer, detail }) => `${path}${pointer} ${code}: ${detail}`) }
  const { documents } = await readCatalogFiles(catalogFolder)
  const { catalog, filed } = assembleCatalog(documents)
  if (catalog.digest !== loaded.catalog.digest) return refused('The files of the catalog changed while they were read. Cut again.')
  return { ok: true, documents, catalog, note: filed.release[0]?.entry.note ?? null }
}

async function previousRelease(catalogFolder: string): Promise<{ readonly ok: true; readonly catalog: Catalog | null } | Extract<Cut, { ok: false }>> {
  const names = await releasesIn(catalogFolder)
  const last = names.ok ? names.value.at(-1) : undefined
  if (last === undefined) return { ok: true, catalog: null }
  const loaded = await loadRelease(catalogFolder, last)
  return loaded.ok ? { ok: true, catalog: loaded.value.catalog } : { ok: false, reasons: loaded.problems.map(({ path, detail }) => `the release before, ${path}: ${detail}`) }
}

/** The folder appears whole or not at all, and counts only once the index names it. */
async function writeRelease(catalogFolder: string, manifest: ReleaseManifest, catalog: string): Promise<void> {
  const folder = join(catalogFolder, releasesFolder)
  const unfinished = join(folder, `.${manifest.release}.unfinished`)
  const text = `${JSON.stringify(manifest, null, 2)}\n`
  await rm(unfinished, { recursive: true, force: true })
  await mkdir(unfinished, { recursive: true })
  await writeFile(join(unfinished, 'catalog.json'), catalog)
  await writeFile(join(unfinished, 'manifest.json'), text)
  await rename(unfinished, join(folder, manifest.release))
  await lockRelease(catalogFolder, manifest.release, { catalog: sha256Of(Buffer.from(catalog)), manifest: sha256Of(Buffer.from(text)) })
}

async function lockRelease(catalogFolder: string, release: string, digests: { readonly catalog: string; readonly manifest: string }): Promise<void> {
  const index = await readIndex(catalogFolder)
  if (!index.ok) throw new Error(`${indexFile} cannot be read any more`)
  const entries = Object.entries({ ...index.value, [release]: digests }).toSorted(([a], [b]) => compareReleases(a, b))
  const file = join(catalogFolder, releasesFolder, indexFile)
  await writeFile(`${file}.unfinished`, `${JSON.stringify(Object.fromEntries(entries), null, 2)}\n`)
  await rename(`${file}.unfinished`, file)
}

function refused(reason: string): { ok: false; reasons: readonly string[] } {
  return { ok: false, reasons: [reason] }
}
