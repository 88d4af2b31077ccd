import { randomUUID } from 'node:crypto'
import { readFile, writeFile } from 'node:fs/promises'
import { parse } from 'yaml'
import type { Catalog } from '../catalog/catalog.ts'
import { drawOpening } from '../operations/draw-opening.ts'
import type { EvaluateOptions } from './evaluate-file.ts'
import { failureText, type CommandResult } from './output.ts'

export interface DrawOptions extends Omit<EvaluateOptions, 'json'> {
  readonly kind?: string | undefined
  /** Where the drawing goes; to the standard output when left out. */
  readonly out?: string | undefined
}

/** Draws one opening from a YAML or JSON file. */
export async function drawFile(file: string, { kind = 'elevation', out, ...around }: DrawOptions, catalog: Catalog): Promise<CommandResult> {
  try {
    const opening: unknown = parse(await readFile(file, 'utf8'), { maxAliasCount: 0 })
    const answer = drawOpening.run({ catalog, now: () => new Date(), newId: randomUUID }, { ...around, opening, kind })
    if (!answer.ok) return { text: failureText(answer), exitCode: 2 }
    if (out === undefined) return { text: answer.value.svg, exitCode: 0 }
    await writeFile(out, answer.value.svg)
    return { text: `${answer.value.title}: ${out}\n`, exitCode: 0 }
  } catch (error) {
    return { text: `${file}: ${error instanceof Error ? error.message : String(error)}\n`, exitCode: 2 }
  }
}
