import { readFile } from 'node:fs/promises'
import type { Catalog } from '../catalog/catalog.ts'
import type { ReleaseDifferences } from '../catalog/release.ts'
import { requiredVersion } from '../catalog/release-version.ts'
import { releaseDifferences } from '../evaluation/release-differences.ts'
import { vectorsOf } from '../evaluation/release-vectors.ts'
import { cutRelease, signRelease } from '../store/cut-release.ts'
import { loadCatalog } from '../store/load-catalog.ts'
import { loadRelease } from '../store/load-release.ts'
import { releasesIn, strayReleases, type ReleaseProblem } from '../store/release-files.ts'
import { readPublicKeys } from '../store/release-signature.ts'
import { differencesText } from './release-text.ts'
import type { CommandResult } from './output.ts'

/** Cuts the catalog as it stands into an immutable release. */
export async function cut(catalogFolder: string, release: string, note: string | undefined): Promise<CommandResult> {
  const answer = await cutRelease(catalogFolder, release, note)
  if (!answer.ok) return refused(answer.reasons, 'Nothing was cut.')
  const { cutFrom, catalogDigest, evidence, differences } = answer.manifest
  const lines = [
    `Release ${release}${cutFrom === null ? ', the first' : ` after ${cutFrom}`}, ${catalogDigest}`,
    `Limits: ${evidence.primary} primary, ${evidence.secondary} secondary, ${evidence.memory} memory`,
    differencesText(differences),
  ]
  return { text: `${lines.join('\n')}\n`, exitCode: 0 }
}

/** Checks one release or all of them; with a public key, that they are signed by it. */
export async function verify(catalogFolder: string, release: string | undefined, publicKey: string | undefined): Promise<CommandResult> {
  const trusted = publicKey === undefined ? null : await readPublicKeys(publicKey)
  const names = release === undefined ? await releasesIn(catalogFolder) : ({ ok: true, value: [release] } as const)
  if (!names.ok) return refused(names.problems.map(problemText), 'No release can be checked.')
  const strays = release === undefined ? (await strayReleases(catalogFolder)).map((name) => `releases/${name}: not in the index of releases`) : []
  const checked: string[] = []
  const wrong: string[] = [...strays]
  for (const name of names.value) {
    const loaded = await loadRelease(catalogFolder, name, trusted)
    if (loaded.ok) checked.push(`${name} is as it was cut, ${loaded.value.catalog.digest}${loaded.value.signedBy === null ? '' : `, signed by ${loaded.value.signedBy}`}`)
    else wrong.push(...loaded.problems.map(problemText))
  }
  return { text: `${[...checked, ...wrong].join('\n') || 'No release was cut yet.'}\n`, exitCode: wrong.length > 0 ? 1 : 0 }
}

/** Signs a release with an Ed25519 key in PEM form. */
export async function sign(catalogFolder: string, release: string, privateKey: string): Promise<CommandResult> {
  const answer = await signRelease(catalogFolder, release, await readFile(privateKey, 'utf8'))
  return answer.ok ? { text: `${answer.file}\n`, exitCode: 0 } : refused(answer.reasons, 'Nothing was signed.')
}

/** What differs between two releases, or between a release and the catalog as it stands. */
export async function differences(catalogFolder: string, before: string, after: string | undefined, json = false): Promise<CommandResult> {
  const [previous, next] = [await catalogOf(catalogFolder, before), await catalogOf(catalogFolder, after)]
  if ('reasons' in previous) return refused(previous.reasons, `${before} cannot be compared.`)
  if ('reasons' in next) return refused(next.reasons, `${after ?? 'The catalog'} cannot be compared.`)
  const vectors = vectorsOf(next)
  if (!vectors.ok) return refused(vectors.problems.map(({ pointer, detail }) => `${pointer}: ${detail}`), 'The reference openings cannot be read.')
  const found: ReleaseDifferences = releaseDifferences(previous, next, vectors.value)
  if (json) return { text: `${JSON.stringify(found, null, 2)}\n`, exitCode: 0 }
  const least = after === undefined ? `A release of the catalog as it stands is at least ${requiredVersion(before, found)}.\n` : ''
  return { text: `From ${before} to ${after ?? 'the catalog as it stands'}\n${differencesText(found)}\n${least}`, exitCode: 0 }
}

async function catalogOf(catalogFolder: string, release: string | undefined): Promise<Catalog | { readonly reasons: readonly string[] }> {
  if (release === undefined) {
    const loaded = await loadCatalog(catalogFolder)
    return loaded.ok ? loaded.catalog : { reasons: loaded.problems.map(({ path, pointer, detail }) => `${path}${pointer}: ${detail}`) }
  }
  const loaded = await loadRelease(catalogFolder, release)
  return loaded.ok ? loaded.value.catalog : { reasons: loaded.problems.map(problemText) }
}

function problemText({ code, path, detail }: ReleaseProblem): string {
  return `${path}\n  ${code}: ${detail}`
}

function refused(reasons: readonly string[], outcome: string): CommandResult {
  return { text: `${reasons.join('\n')}\n${outcome}\n`, exitCode: 1 }
}
