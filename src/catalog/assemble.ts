import { z } from 'zod'
import type { Checked } from '../opening/problem.ts'
import { shapeProblems } from '../opening/shape-problems.ts'
import { amendment, type Amendment } from './amendment.ts'
import { building } from './building.ts'
import type { Catalog, CatalogDocument, CatalogProblem } from './catalog.ts'
import { digestOf } from './digest.ts'
import { adoptions, jurisdiction } from './jurisdiction.ts'
import { publication } from './publication.ts'
import { readAmendment } from './read-amendment.ts'
import { caution, parameter, table } from './reference.ts'
import { rule } from './rule.ts'

const release = z.strictObject({ release: z.string().regex(/^\d{4}\.\d+\.\d+$/), note: z.string().optional() })

/** What a file holds is told by its first key. */
const kinds = { rule, publication, jurisdiction, adoptions, amendment, parameter, table, caution, release, building } as const
type Kind = keyof typeof kinds
type Entry<K extends Kind> = z.infer<(typeof kinds)[K]>

/** A parsed document together with the file it came from. */
export interface Filed<K extends Kind> {
  readonly path: string
  readonly entry: Entry<K>
}
export type FiledDocuments = { readonly [K in Kind]: readonly Filed<K>[] }

export interface Assembly {
  readonly catalog: Catalog
  readonly filed: FiledDocuments
  readonly problems: readonly CatalogProblem[]
}

/** Puts the files of a catalog together. Files that do not have the shape of their kind are left out and reported. */
export function assembleCatalog(documents: readonly CatalogDocument[]): Assembly {
  const sorted = documents.toSorted((a, b) => (a.path < b.path ? -1 : 1))
  const problems: CatalogProblem[] = []
  const filed = Object.fromEntries(Object.keys(kinds).map((kind) => [kind, []])) as unknown as { [K in Kind]: Filed<K>[] }
  for (const document of sorted) problems.push(...file(document, filed))
  const digests = new Map(sorted.flatMap(({ path, content }) => (kindOf(content) === 'building' ? [] : [[path, digestOf(content)] as const])))
  return { catalog: catalogOf(filed, digests), filed, problems: [...problems, ...duplicates(filed)] }
}

/** The digest of a catalog: over the paths and digests of its documents, so that one more need not mean reading all again. */
export function digestOfDocuments(documents: ReadonlyMap<string, string>): string {
  return digestOf([...documents].toSorted(([a], [b]) => (a < b ? -1 : 1)))
}

/** Where an amendment stands in a catalog, whether it came as a file or was adopted through the service. */
export function pathOfAmendment({ amendment: id }: Pick<Amendment, 'amendment'>): string {
  return `jurisdictions/${id.replace('/', '/amendments/')}.yaml`
}

function file({ path, content }: CatalogDocument, filed: { [K in Kind]: Filed<K>[] }): readonly CatalogProblem[] {
  const kind = kindOf(content)
  if (!kind) return [{ code: 'unknownDocument', path, pointer: '', detail: `starts with none of the keys ${Object.keys(kinds).join(', ')}` }]
  const read = readEntry(kind, content)
  if (!read.ok) return read.problems.map(({ pointer, detail }) => ({ code: 'shape', path, pointer, detail }))
  const list = filed[kind] as Filed<Kind>[]
  list.push({ path, entry: read.value })
  return []
}

function readEntry(kind: Kind, content: unknown): Checked<Entry<Kind>> {
  if (kind === 'amendment') return readAmendment(content)
  const schema: z.ZodType<Entry<Kind>> = kinds[kind]
  const parsed = schema.safeParse(content, { reportInput: true })
  return parsed.success ? { ok: true, value: parsed.data } : { ok: false, problems: shapeProblems(schema, parsed.error) }
}

function kindOf(content: unknown): Kind | undefined {
  const first = typeof content === 'object' && content !== null ? Object.keys(content)[0] : undefined
  return first !== undefined && Object.hasOwn(kinds, first) ? (first as Kind) : undefined
}

function catalogOf(filed: FiledDocuments, documents: ReadonlyMap<string, string>): Catalog {
  return {
    release: filed.release[0]?.entry.release ?? '0.0.0',
    digest: digestOfDocuments(documents),
    publications: byId(filed.publication, ({ publication: id }) => id),
    rules: byId(filed.rule, ({ rule: id }) => id),
    jurisdictions: byId(filed.jurisdiction, ({ jurisdiction: id }) => id),
    adoptions: new Map(filed.adoptions.map(({ entry }) => [entry.adoptions, entry.list])),
    amendments: filed.amendment.map(({ entry }) => entry),
    documents,
    parameters: byId(filed.parameter, ({ parameter: id }) => id),
    tables: byId(filed.table, ({ table: id }) => id),
    cautions: byId(filed.caution, ({ caution: id }) => id),
    buildings: byId(filed.building, ({ building: id }) => id),
  }
}

function byId<T>(filed: readonly { readonly entry: T }[], id: (entry: T) => string): ReadonlyMap<string, T> {
  return new Map(filed.map(({ entry }) => [id(entry), entry] as const).toSorted(([a], [b]) => (a < b ? -1 : 1)))
}

function duplicates(filed: FiledDocuments): readonly CatalogProblem[] {
  return (Object.keys(kinds) as Kind[]).flatMap((kind) => {
    const seen = new Map<string, string>()
    return filed[kind].flatMap(({ path, entry }): CatalogProblem[] => {
      const id = String(Object.values(entry)[0])
      const first = seen.get(id)
      seen.set(id, first ?? path)
      return first === undefined ? [] : [{ code: 'duplicate', path, pointer: `/${kind}`, detail: `${kind} "${id}" is already in ${first}. Ids are used once.` }]
    })
  })
}
