import { readFile } from 'node:fs/promises'
import { parse } from 'yaml'

type OpeningFile = { readonly ok: true; readonly opening: unknown } | { readonly ok: false; readonly text: string }

/** The description of an opening in a YAML or JSON file, not yet checked; or why there is none to read. */
export async function readOpeningFile(file: string): Promise<OpeningFile> {
  try {
    return { ok: true, opening: parse(await readFile(file, 'utf8'), { maxAliasCount: 0 }) as unknown }
  } catch (error) {
    return { ok: false, text: `${file}: ${error instanceof Error ? error.message : String(error)}\n` }
  }
}
