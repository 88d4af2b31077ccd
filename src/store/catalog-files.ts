import { readdir, readFile } from 'node:fs/promises'
import { join, relative, sep } from 'node:path'
import { parse } from 'yaml'
import type { CatalogDocument, CatalogProblem } from '../catalog/catalog.ts'

/** Where releases are kept once they are cut; no part of the catalog that is being worked on. */
export const releasesFolder = 'releases'

/** Reads every YAML and JSON file below a folder, but the releases. What cannot be read or parsed is reported; the rest is still read. */
export async function readCatalogFiles(folder: string): Promise<{ documents: readonly CatalogDocument[]; problems: readonly CatalogProblem[] }> {
  const files = await filesBelow(folder)
  if (!Array.isArray(files)) return { documents: [], problems: [files] }
  const read = await Promise.all(files.toSorted().map((file) => readDocument(file, relative(folder, file).split(sep).join('/'))))
  return { documents: read.filter((one) => 'content' in one), problems: read.filter((one) => 'code' in one) }
}

async function filesBelow(folder: string): Promise<string[] | CatalogProblem> {
  try {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true })
    const files = entries.filter((entry) => entry.isFile() && /\.(ya?ml|json)$/.test(entry.name)).map((entry) => join(entry.parentPath, entry.name))
    return files.filter((file) => relative(folder, file).split(sep)[0] !== releasesFolder)
  } catch (error) {
    return unreadable(folder, error)
  }
}

async function readDocument(file: string, path: string): Promise<CatalogDocument | CatalogProblem> {
  try {
    return { path, content: parse(await readFile(file, 'utf8'), { maxAliasCount: 0, uniqueKeys: true, prettyErrors: true }) as unknown }
  } catch (error) {
    return unreadable(path, error)
  }
}

function unreadable(path: string, error: unknown): CatalogProblem {
  return { code: 'unreadableFile', path, pointer: '', detail: error instanceof Error ? error.message : String(error) }
}
