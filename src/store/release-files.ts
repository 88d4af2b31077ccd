import { createHash } from 'node:crypto'
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod'
import type { CatalogDocument } from '../catalog/catalog.ts'
import { documentsIn, manifestFaults, releaseManifest, releaseName, type ReleaseManifest } from '../catalog/release.ts'
import { compareReleases } from '../catalog/release-version.ts'
import { releasesFolder } from './catalog-files.ts'
import { checkSignature, type PublicKey } from './release-signature.ts'

/** The file of digests by which every cut release is locked, byte for byte. */
export const indexFile = 'index.json'
const locked = z.record(releaseName, z.strictObject({ catalog: z.string(), manifest: z.string() }))
export type ReleaseIndex = z.infer<typeof locked>

export type ReleaseCode = 'unknownRelease' | 'unreadableRelease' | 'alteredRelease' | 'unsignedRelease' | 'unknownKey' | 'faultyRelease'

/** Why a release is not to be used: what is wrong with which of its files. */
export interface ReleaseProblem {
  readonly code: ReleaseCode
  readonly path: string
  readonly detail: string
}

export type Verified<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly ReleaseProblem[] }

/** A release whose bytes are those that were cut. */
export interface ReadRelease {
  readonly manifest: ReleaseManifest
  readonly documents: readonly CatalogDocument[]
  /** The id of the trusted key; null where no signature was demanded. */
  readonly signedBy: string | null
}

/** The digests of all cut releases; none where nothing was cut yet. */
export async function readIndex(catalogFolder: string): Promise<Verified<ReleaseIndex>> {
  try {
    return { ok: true, value: locked.parse(JSON.parse(await readFile(join(catalogFolder, releasesFolder, indexFile), 'utf8'))) }
  } catch (error) {
    return isAbsence(error) ? { ok: true, value: {} } : refusal('unreadableRelease', `${releasesFolder}/${indexFile}`, String(error))
  }
}

/** The names of all cut releases, earliest first. */
export async function releasesIn(catalogFolder: string): Promise<Verified<readonly string[]>> {
  const index = await readIndex(catalogFolder)
  return index.ok ? { ok: true, value: Object.keys(index.value).toSorted(compareReleases) } : index
}

/** Folders of releases that the index does not know: a cut that broke off, or something that was put there. */
export async function strayReleases(catalogFolder: string): Promise<readonly string[]> {
  const [index, entries] = [await readIndex(catalogFolder), await readdir(join(catalogFolder, releasesFolder), { withFileTypes: true }).catch(() => [])]
  return entries.filter((entry) => entry.isDirectory() && !(index.ok && Object.hasOwn(index.value, entry.name))).map(({ name }) => name)
}

/** Reads a release and makes sure that it is what was cut. With keys, one of them must have signed it. */
export async function readRelease(catalogFolder: string, release: string, trusted: readonly PublicKey[] | null = null): Promise<Verified<ReadRelease>> {
  const index = await readIndex(catalogFolder)
  if (!index.ok) return index
  const digests = Object.hasOwn(index.value, release) ? index.value[release] : undefined
  const folder = `${releasesFolder}/${release}`
  if (!digests) return refusal('unknownRelease', folder, `No release ${release} was cut. Cut: ${Object.keys(index.value).join(', ') || 'none'}.`)
  try {
    const [catalog, manifest] = [await readFile(join(catalogFolder, folder, 'catalog.json')), await readFile(join(catalogFolder, folder, 'manifest.json'))]
    const signature = await readFile(join(catalogFolder, folder, 'manifest.sig'), 'utf8').catch(absentAsUndefined)
    const altered = [...lockFault(`${folder}/catalog.json`, catalog, digests.catalog), ...lockFault(`${folder}/manifest.json`, manifest, digests.manifest)]
    return altered.length > 0 ? { ok: false, problems: altered } : verified({ release, folder, catalog, manifest, signature, trusted })
  } catch (error) {
    return refusal('unreadableRelease', folder, String(error))
  }
}

export function sha256Of(bytes: Buffer): string {
  return `sha256:${createHash('sha256').update(bytes).digest('hex')}`
}

interface Bytes {
  readonly release: string
  readonly folder: string
  readonly catalog: Buffer
  readonly manifest: Buffer
  readonly signature: string | undefined
  readonly trusted: readonly PublicKey[] | null
}

function verified({ release, folder, catalog, manifest: bytes, signature, trusted }: Bytes): Verified<ReadRelease> {
  const signed = trusted === null ? null : checkSignature(bytes, signature, trusted)
  if (signed?.ok === false) return refusal(signed.code, `${folder}/manifest.sig`, signed.detail)
  const parsed = releaseManifest.safeParse(JSON.parse(bytes.toString('utf8')))
  if (!parsed.success) return refusal('faultyRelease', `${folder}/manifest.json`, z.prettifyError(parsed.error))
  const manifest = parsed.data
  const documents = documentsIn(catalog.toString('utf8'))
  const faults = [
    ...(manifest.release === release ? [] : [`the manifest is that of ${manifest.release}`]),
    ...(manifest.catalogFile === sha256Of(catalog) ? [] : ['catalog.json is not the one that the manifest names']),
    ...manifestFaults(manifest, documents),
  ]
  return faults.length > 0
    ? { ok: false, problems: faults.map((detail) => ({ code: 'alteredRelease', path: folder, detail })) }
    : { ok: true, value: { manifest, documents, signedBy: signed?.key ?? null } }
}

function lockFault(path: string, bytes: Buffer, digest: string): readonly ReleaseProblem[] {
  return sha256Of(bytes) === digest ? [] : [{ code: 'alteredRelease', path, detail: `Its bytes are not those that were cut: ${indexFile} says ${digest}.` }]
}

export function refusal(code: ReleaseCode, path: string, detail: string): { ok: false; problems: readonly ReleaseProblem[] } {
  return { ok: false, problems: [{ code, path, detail }] }
}

function isAbsence(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'ENOENT'
}

function absentAsUndefined(error: unknown): undefined {
  if (!isAbsence(error)) throw error
}
