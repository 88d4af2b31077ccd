import { z } from 'zod'
import type { Catalog, CatalogDocument } from './catalog.ts'
import { digestOf, digestOfText } from './digest.ts'
import { date } from './identifier.ts'
import { outcome } from './rule.ts'

/** "2026.1.0": one spelling for one release, so that no two names mean the same. */
export const releaseName = z.string().regex(/^\d{4}\.(?:0|[1-9]\d{0,3})\.(?:0|[1-9]\d{0,3})$/, 'must be a release like "2026.1.0"').meta({ maxLength: 14 })

const digest = z.string().regex(/^sha256:[0-9a-f]{64}$/)
const counted = z.int().min(0)

/** A reference opening at a place: by a jurisdiction's adopted code, or by a published edition alone. */
const where = {
  vector: z.string(),
  jurisdiction: z.string().nullable(),
  publication: z.string().nullable(),
  edition: z.string().nullable(),
  asOf: date,
}

const differences = z.strictObject({
  rulesAdded: z.array(z.string()),
  rulesRemoved: z.array(z.string()),
  rulesChanged: z.array(z.string()),
  /** What was added, removed, or changed in more than words, sources and evidence: "rule weep.spacing". */
  requirements: z.array(z.string()),
  /** Null where the rule is not among those of the place. */
  outcomes: z.array(z.strictObject({ ...where, rule: z.string(), before: outcome.nullable(), after: outcome.nullable() })),
  /** Null where the quantity is not one of this opening. */
  quantities: z.array(z.strictObject({ ...where, quantity: z.string(), before: z.string().nullable(), after: z.string().nullable() })),
  counts: z.strictObject({ rulesAdded: counted, rulesRemoved: counted, rulesChanged: counted, requirements: counted, outcomes: counted, quantities: counted }),
})
export type ReleaseDifferences = z.infer<typeof differences>

/** What a release states of itself, and of the one before it. It binds every byte of the release. */
export const releaseManifest = z.strictObject({
  format: z.literal('wythe-release/1'),
  release: releaseName,
  note: z.string().nullable(),
  /** Of the evaluation by which the differences were found. */
  method: z.string(),
  cutFrom: releaseName.nullable(),
  /** The digest that evaluations by this release show. */
  catalogDigest: digest,
  /** Over the bytes of catalog.json. */
  catalogFile: digest,
  /** Over the canonical form of each document, so that an altered one can be named. */
  files: z.array(z.strictObject({ path: z.string(), digest })),
  /** How many limits stand on which evidence. */
  evidence: z.strictObject({ primary: counted, secondary: counted, memory: counted }),
  differences,
  /** Over the canonical form of all else in here. */
  digest,
})
export type ReleaseManifest = z.infer<typeof releaseManifest>

interface Cut extends Pick<ReleaseManifest, 'release' | 'note' | 'method' | 'cutFrom' | 'differences'> {
  readonly documents: readonly CatalogDocument[]
  readonly catalog: Catalog
}

export function manifestOf({ release, note, method, cutFrom, differences: found, documents, catalog }: Cut): ReleaseManifest {
  const body: Omit<ReleaseManifest, 'digest'> = {
    format: 'wythe-release/1',
    release, note, method, cutFrom,
    catalogDigest: catalog.digest,
    catalogFile: digestOfText(catalogText(documents)),
    files: filesOf(documents),
    evidence: evidenceIn(catalog),
    differences: found,
  }
  return { ...body, digest: digestOf(body) }
}

/** Where a manifest and the documents that come with it do not belong together. */
export function manifestFaults({ digest: stated, ...body }: ReleaseManifest, documents: readonly CatalogDocument[]): readonly string[] {
  const held = new Map(filesOf(documents).map((one) => [one.path, one.digest]))
  const missing = body.files.filter(({ path }) => !held.has(path)).map(({ path }) => `${path} is missing`)
  const altered = body.files.filter((one) => held.has(one.path) && held.get(one.path) !== one.digest).map(({ path }) => `${path} is not as it was when the release was cut`)
  const named = new Set(body.files.map(({ path }) => path))
  const added = [...held.keys()].filter((path) => !named.has(path)).map((path) => `${path} is not in the manifest`)
  return [...(digestOf(body) === stated ? [] : ['the manifest is not what its own digest says']), ...missing, ...altered, ...added]
}

/**
 * All documents as one text, a line each. Keys stay in the order in which they were written, because the first tells what a
 * document is; the paths are sorted, so that the same documents give the same text.
 */
export function catalogText(documents: readonly CatalogDocument[]): string {
  return `{\n${sorted(documents).map(({ path, content }) => `${JSON.stringify(path)}: ${JSON.stringify(content)}`).join(',\n')}\n}\n`
}

/** Throws where the text is not JSON. */
export function documentsIn(text: string): readonly CatalogDocument[] {
  return Object.entries(JSON.parse(text) as Readonly<Record<string, unknown>>).map(([path, content]) => ({ path, content }))
}

function filesOf(documents: readonly CatalogDocument[]): ReleaseManifest['files'] {
  return sorted(documents).map(({ path, content }) => ({ path, digest: digestOf(content) }))
}

function sorted(documents: readonly CatalogDocument[]): readonly CatalogDocument[] {
  return documents.toSorted((a, b) => (a.path < b.path ? -1 : 1))
}

function evidenceIn({ rules }: Catalog): ReleaseManifest['evidence'] {
  const limits = [...rules.values()].flatMap((rule) => rule.limits)
  const count = (grade: string) => limits.filter(({ evidence }) => evidence === grade).length
  return { primary: count('primary'), secondary: count('secondary'), memory: count('memory') }
}
