import { existsSync } from 'node:fs'
import { join } from 'node:path'

export const root = join(import.meta.dirname, '../..')

/** A file or folder of the build; `npm test` builds before it tests. */
export function compiled(name: string): string {
  const path = join(root, 'dist', name)
  if (!existsSync(path)) throw new Error(`${path} is not there: npm run build`)
  return path
}
