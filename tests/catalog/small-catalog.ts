import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { parse, stringify } from 'yaml'
import type { CatalogDocument } from '../../src/catalog/catalog.ts'
import { readCatalogFiles } from '../../src/store/catalog-files.ts'
import { loadCatalog, type LoadedCatalog } from '../../src/store/load-catalog.ts'

/** What to change in the small catalog, file by file. */
export interface Patch {
  /** JSON Pointers and their new values; a pointer that ends in "-" appends. */
  readonly set?: Readonly<Record<string, Readonly<Record<string, unknown>>>>
  readonly unset?: Readonly<Record<string, readonly string[]>>
  readonly put?: Readonly<Record<string, unknown>>
  readonly move?: Readonly<Record<string, string>>
  /** Files as they are typed, for what is not YAML at all. */
  readonly text?: Readonly<Record<string, string>>
}

const folder = join(import.meta.dirname, '../fixtures/small-catalog')

/** Writes the small catalog with its changes into a folder of its own and loads it from there, as the service does. */
export async function loadPatched(patch: Patch): Promise<LoadedCatalog> {
  const files = await patchedFiles(patch)
  const place = await mkdtemp(join(tmpdir(), 'catalog-'))
  try {
    await Promise.all([...files].map(([path, text]) => write(join(place, path), text)))
    return await loadCatalog(place)
  } finally {
    await rm(place, { recursive: true })
  }
}

/** The small catalog with its changes as parsed documents. */
export async function patchedDocuments(patch: Patch): Promise<readonly CatalogDocument[]> {
  return [...(await patchedFiles(patch))].map(([path, text]) => ({ path, content: parse(text) as unknown }))
}

async function patchedFiles({ set = {}, unset = {}, put = {}, move = {}, text = {} }: Patch): Promise<ReadonlyMap<string, string>> {
  const { documents } = await readCatalogFiles(folder)
  const contents = new Map<string, unknown>(documents.map(({ path, content }) => [path, content]))
  for (const [path, changes] of Object.entries(set)) for (const [pointer, value] of Object.entries(changes)) setAt(contents.get(path), pointer, value)
  for (const [path, pointers] of Object.entries(unset)) for (const pointer of pointers) setAt(contents.get(path), pointer, undefined)
  for (const [path, content] of Object.entries(put)) contents.set(path, content)
  const moved = [...contents].map(([path, content]) => [move[path] ?? path, stringify(content)] as const)
  return new Map([...moved, ...Object.entries(text)])
}

function setAt(document: unknown, pointer: string, value: unknown): void {
  const keys = pointer.split('/').slice(1)
  const last = keys.pop()
  const parent = keys.reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], document)
  if (last === undefined || typeof parent !== 'object' || parent === null) throw new Error(`nothing at ${pointer}`)
  if (Array.isArray(parent) && last === '-') parent.push(value)
  else if (value === undefined) Reflect.deleteProperty(parent, last)
  else Reflect.set(parent, last, value)
}

async function write(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true })
  await writeFile(path, text)
}
