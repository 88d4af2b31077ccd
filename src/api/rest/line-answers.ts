import { notEvaluated, type BatchAnswer, type EvaluateItem } from '../../operations/evaluate-batch.ts'
import { jsonBytes } from '../json.ts'
import { problemTypes } from '../problems.ts'
import { longestLine, type Line } from './lines.ts'

/** What some lines came to: their answers as they go out, each a line of JSON, and what was our fault in them, to be logged. */
export interface LineAnswers {
  readonly bytes: Uint8Array
  readonly faults: readonly LineFault[]
}

export interface LineFault {
  readonly line: number
  readonly error: unknown
}

/** Gathers the answers to lines that go out together. A fault of ours is told on its line; the others are answered all the same. */
export function gatherAnswers(answer: EvaluateItem): { readonly add: (line: Line) => void; readonly all: () => LineAnswers } {
  const parts: Uint8Array[] = []
  const faults: LineFault[] = []
  const add = (line: Line) => {
    const answered = answerTo(line, answer)
    if ('error' in answered) faults.push({ line: line.line, error: answered.error })
    parts.push(answerBytes('error' in answered ? internal(line.line) : answered))
  }
  return { add, all: () => ({ bytes: Buffer.concat(parts), faults }) }
}

/** A line of which nothing can be said, since what should have answered it broke down. */
export function unanswered({ line }: Line, error: unknown): LineAnswers {
  return { bytes: answerBytes(internal(line)), faults: [{ line, error }] }
}

export function answerBytes(answer: BatchAnswer): Buffer {
  return Buffer.concat([jsonBytes(answer), lineFeed])
}

const lineFeed = Buffer.from('\n')

function answerTo(line: Line, answer: EvaluateItem): BatchAnswer | { readonly error: unknown } {
  if ('flaw' in line) return unreadable(line.line, line.flaw, line.flaw === 'tooLarge' ? `The line is longer than ${longestLine} bytes.` : 'The line is not UTF-8.')
  const read = parsed(line.text)
  if (!('value' in read)) return unreadable(line.line, 'malformed', read.why)
  try {
    return answer(read.value, line.line)
  } catch (error) {
    return { error }
  }
}

function parsed(text: string): { readonly value: unknown } | { readonly why: string } {
  try {
    return { value: JSON.parse(text) as unknown }
  } catch (error) {
    return { why: error instanceof Error ? error.message : 'The line is not JSON.' }
  }
}

function internal(line: number): BatchAnswer {
  return unreadable(line, 'internal', `${problemTypes.internal.title}. ${problemTypes.internal.mend}`)
}

function unreadable(line: number, code: 'tooLarge' | 'malformed' | 'internal', detail: string): BatchAnswer {
  return notEvaluated(line, [{ code, pointer: '', detail }], null, code)
}
