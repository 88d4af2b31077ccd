import { readdirSync, readFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import type { CatalogDocument, CatalogProblem } from '../catalog/catalog.ts'

/** Where releases are kept once they are cut; no part of the catalog that is being worked on. */
export const releasesFolder = 'releases'

/** A file of the catalog, byte for byte. */
export interface CatalogFile {
  readonly path: string
  readonly bytes: Buffer
}

/** What stands in a file of the catalog, or why that cannot be known. */
export type ReadFile = CatalogFile | CatalogProblem

export interface CatalogDocuments {
  readonly documents: readonly CatalogDocument[]
  readonly problems: readonly CatalogProblem[]
}

/** Reads every YAML and JSON file below a folder, but the releases. What cannot be read or parsed is reported; the rest is still read. */
export function readCatalogFiles(folder: string): Promise<CatalogDocuments> {
  return parseCatalogFiles(filesIn(folder))
}

/** Every YAML and JSON file below a folder, but the releases, in the order of their paths. One after the other: small files are read sooner so than side by side. */
export function filesIn(folder: string): readonly ReadFile[] {
  const paths = pathsBelow(folder)
  return Array.isArray(paths) ? paths.toSorted().map((path) => readBytes(folder, path)) : [paths]
}

/** What is written in the files. The package that reads YAML is loaded only for this. */
export async function parseCatalogFiles(files: readonly ReadFile[]): Promise<CatalogDocuments> {
  const { parse } = await import('yaml')
  const parsed = files.map((file): CatalogDocument | CatalogProblem => {
    if ('code' in file) return file
    try {
      return { path: file.path, content: parse(file.bytes.toString('utf8'), { maxAliasCount: 0, uniqueKeys: true, prettyErrors: true }) as unknown }
    } catch (error) {
      return unreadable(file.path, error)
    }
  })
  return { documents: parsed.filter((one) => 'content' in one), problems: parsed.filter((one) => 'code' in one) }
}

function pathsBelow(folder: string): string[] | CatalogProblem {
  try {
    const entries = readdirSync(folder, { recursive: true, withFileTypes: true })
    const start = join(folder, sep).length
    const paths = entries.filter((entry) => entry.isFile() && /\.(ya?ml|json)$/.test(entry.name)).map((entry) => join(entry.parentPath, entry.name).slice(start).replaceAll(sep, '/'))
    return paths.filter((path) => !path.startsWith(`${releasesFolder}/`))
  } catch (error) {
    return unreadable(folder, error)
  }
}

function readBytes(folder: string, path: string): ReadFile {
  try {
    return { path, bytes: readFileSync(join(folder, path)) }
  } catch (error) {
    return unreadable(path, error)
  }
}

function unreadable(path: string, error: unknown): CatalogProblem {
  return { code: 'unreadableFile', path, pointer: '', detail: error instanceof Error ? error.message : String(error) }
}
