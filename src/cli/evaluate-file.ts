import { randomUUID } from 'node:crypto'
import type { Catalog } from '../catalog/catalog.ts'
import { evaluateOpening } from '../operations/evaluate-opening.ts'
import { cautionsText, evaluationText } from './evaluation-text.ts'
import { readOpeningFile } from './opening-file.ts'
import { failureText, type CommandResult } from './output.ts'

export interface EvaluateOptions {
  readonly jurisdiction?: string | undefined
  readonly asOf?: string | undefined
  readonly edition?: string | undefined
  readonly publication?: string | undefined
  readonly holdPoint?: string | undefined
  readonly json?: boolean | undefined
}

/** Evaluates one opening from a YAML or JSON file. Ends with 1 when a mandatory rule is not met. */
export async function evaluateFile(file: string, { json, ...around }: EvaluateOptions, catalog: Catalog): Promise<CommandResult> {
  const read = await readOpeningFile(file)
  if (!read.ok) return { text: read.text, exitCode: 2 }
  const answer = evaluateOpening.run({ catalog, now: () => new Date(), newId: randomUUID }, { ...around, opening: read.opening })
  if (!answer.ok) return { text: failureText(answer), exitCode: 2 }
  const text = json ? `${JSON.stringify(answer.value, null, 2)}\n` : `${evaluationText(answer.value)}\n${cautionsText([answer.value])}`
  return { text, exitCode: answer.value.summary.verdict === 'fail' ? 1 : 0 }
}
