import { randomUUID } from 'node:crypto'
import { writeFile } from 'node:fs/promises'
import type { Catalog } from '../catalog/catalog.ts'
import { drawOpening } from '../operations/draw-opening.ts'
import type { EvaluateOptions } from './evaluate-file.ts'
import { readOpeningFile } from './opening-file.ts'
import { failureText, type CommandResult } from './output.ts'

export interface DrawOptions extends Omit<EvaluateOptions, 'json'> {
  readonly kind?: string | undefined
  /** Where the drawing goes; to the standard output when left out. */
  readonly out?: string | undefined
}

/** Draws one opening from a YAML or JSON file. */
export async function drawFile(file: string, { kind = 'elevation', out, ...around }: DrawOptions, catalog: Catalog): Promise<CommandResult> {
  const read = await readOpeningFile(file)
  if (!read.ok) return { text: read.text, exitCode: 2 }
  const answer = drawOpening.run({ catalog, now: () => new Date(), newId: randomUUID }, { ...around, opening: read.opening, kind })
  if (!answer.ok) return { text: failureText(answer), exitCode: 2 }
  if (out === undefined) return { text: answer.value.svg, exitCode: 0 }
  await writeFile(out, answer.value.svg)
  return { text: `${answer.value.title}: ${out}\n`, exitCode: 0 }
}
