import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'

/** The root of the repository. */
export const root = join(import.meta.dirname, '..')

/** The files below a folder of the repository whose name ends so, by their path below it. */
export function readTexts(folder: string, ending: string): ReadonlyMap<string, string> {
  const place = join(root, folder)
  const files = readdirSync(place, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile() && entry.name.endsWith(ending))
  const paths = files.map((entry) => relative(place, join(entry.parentPath, entry.name)).split(sep).join('/')).toSorted()
  return new Map(paths.map((path) => [path, readFileSync(join(place, path), 'utf8')]))
}
