import { randomUUID } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { parse } from 'yaml'
import type { Catalog } from '../catalog/catalog.ts'
import { evaluateOpening } from '../operations/evaluate-opening.ts'
import { cautionsText, evaluationText } from './evaluation-text.ts'
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
  let opening: unknown
  try {
    opening = parse(await readFile(file, 'utf8'), { maxAliasCount: 0 })
  } catch (error) {
    return { text: `${file}: ${error instanceof Error ? error.message : String(error)}\n`, exitCode: 2 }
  }
  const answer = evaluateOpening.run({ catalog, now: () => new Date(), newId: randomUUID }, { ...around, opening })
  if (!answer.ok) return { text: failureText(answer), exitCode: 2 }
  const text = json ? `${JSON.stringify(answer.value, null, 2)}\n` : `${evaluationText(answer.value)}\n${cautionsText([answer.value])}`
  return { text, exitCode: answer.value.summary.verdict === 'fail' ? 1 : 0 }
}
