import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import type { Catalog } from '../catalog/catalog.ts'
import type { ReadFile } from './catalog-files.ts'

/** Where the build leaves the catalog that it proved: beside the compiled code. */
export const preparedFile = join(import.meta.dirname, '../catalog.prepared.json')

/** All that decides how a catalog is read and whether it is refused. The files that the service starts from are joined of these modules by the same build. */
const judges: readonly string[] = ['units', 'opening', 'catalog', 'quantities', 'evaluation']
const readers = /^(catalog-files|load-catalog|prepared-catalog)\.[jt]s$/
const code = join(import.meta.dirname, '..')

/**
 * The catalog as it was when these very files were proved by this very code. Undefined where nothing was prepared, or where
 * one byte, one file more or one less differs: then it has to be read and proved.
 */
export function preparedCatalog(files: readonly ReadFile[], place = preparedFile): Catalog | undefined {
  const written = textIn(place)
  const end = written?.indexOf('\n') ?? -1
  if (written === undefined || end === -1) return undefined
  const text = written.slice(end + 1)
  return written.slice(0, end) === sealOf(files, text) ? catalogIn(text) : undefined
}

/** Leaves a catalog that was proved from these files for later starts. */
export function prepareCatalog(files: readonly ReadFile[], catalog: Catalog, place = preparedFile): void {
  const text = textOf(catalog)
  writeFileSync(place, `${sealOf(files, text)}\n${text}`)
}

export function forgetPrepared(place = preparedFile): void {
  rmSync(place, { force: true })
}

/** SHA-256 over the code, over every file by its path, and over what was prepared. A file that cannot be read is as a file of another text. */
function sealOf(files: readonly ReadFile[], text: string): string {
  const read = files.map((file) => ('bytes' in file ? [file.path, sha256(file.bytes)] : [file.path, file.detail]))
  return sha256(JSON.stringify([codeDigest(), read, sha256(text)]))
}

function codeDigest(): string {
  const hash = createHash('sha256')
  for (const file of [...judges.flatMap((folder) => modulesIn(folder, /\.[jt]s$/)), ...modulesIn('store', readers)]) hash.update(`${file.replaceAll(sep, '/')}\n`).update(readFileSync(join(code, file)))
  return hash.digest('hex')
}

function modulesIn(folder: string, wanted: RegExp): readonly string[] {
  const entries = readdirSync(join(code, folder), { recursive: true, withFileTypes: true })
  return entries.filter(({ name }) => wanted.test(name)).map(({ parentPath, name }) => join(parentPath, name).slice(code.length + 1)).toSorted()
}

function sha256(content: string | Buffer): string {
  return createHash('sha256').update(content).digest('hex')
}

function textIn(place: string): string | undefined {
  try {
    return readFileSync(place, 'utf8')
  } catch {
    return undefined
  }
}

/** JSON has no maps, so each is written as the list of its entries. */
function textOf({ release, digest, amendments, ...maps }: Catalog): string {
  return JSON.stringify({ release, digest, amendments, ...Object.fromEntries(Object.entries(maps).map(([name, map]) => [name, [...map]])) })
}

type Written = { readonly [K in keyof Catalog]: Catalog[K] extends ReadonlyMap<infer Id, infer T> ? readonly (readonly [Id, T])[] : Catalog[K] }

function catalogIn(text: string): Catalog {
  const { publications, rules, jurisdictions, adoptions, parameters, tables, cautions, buildings, documents, ...rest } = JSON.parse(text) as Written
  return {
    ...rest,
    publications: new Map(publications), rules: new Map(rules), jurisdictions: new Map(jurisdictions), adoptions: new Map(adoptions),
    parameters: new Map(parameters), tables: new Map(tables), cautions: new Map(cautions), buildings: new Map(buildings), documents: new Map(documents),
  }
}
