import type { Checked } from '../opening/problem.ts'
import { scanJson } from './intake/json-scan.ts'
import { IntakeFault, intakeLimits, type IntakeCode } from './intake/limits.ts'
import { readYaml } from './intake/yaml-text.ts'

/**
 * Reads an amendment out of a text that anybody may have sent. Bounds are kept before anything is built, so that a text made
 * to hurt is refused for little work. Whether it is an amendment at all is for its schema to tell.
 */
export function readAmendmentText(text: string, format: 'json' | 'yaml'): Checked<unknown, IntakeCode> {
  try {
    if (text.length > intakeLimits.length) throw new IntakeFault('textTooLarge', `The text has ${text.length} characters; at most ${intakeLimits.length} are taken in. Split it into several amendments.`)
    return { ok: true, value: format === 'json' ? readJson(text) : readYaml(text) }
  } catch (fault) {
    if (fault instanceof IntakeFault) return { ok: false, problems: [{ code: fault.code, pointer: '', detail: fault.message }] }
    throw fault
  }
}

function readJson(text: string): unknown {
  scanJson(text)
  try {
    return JSON.parse(text)
  } catch (error) {
    throw new IntakeFault('unreadable', `This is not JSON: ${error instanceof Error ? error.message.slice(0, 200) : 'it cannot be read'}.`)
  }
}
