import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describeOpening } from '../../src/opening/describe.ts'
import type { Opening } from '../../src/opening/opening.ts'

const folder = new URL('../fixtures/openings/', import.meta.url)

export const openingFiles: readonly string[] = readdirSync(folder).filter((name) => name.endsWith('.yaml'))

/** The document in a fixture, as a caller would send it. */
export function documentOf(file: string): Record<string, unknown> {
  return parse(readFileSync(new URL(file, folder), 'utf8')) as Record<string, unknown>
}

/** An opening that is described without a problem; anything else fails the test with the problems. */
export function described(document: unknown): Opening {
  const answer = describeOpening(document)
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems, null, 1))
  return answer.value
}

/** What is wrong, as "code pointer". */
export function problemsIn(document: unknown): readonly string[] {
  const answer = describeOpening(document)
  return answer.ok ? [] : answer.problems.map(({ code, pointer }) => `${code} ${pointer}`)
}

/** The sentence about one place of the document. */
export function detailAt(document: unknown, pointer: string): string {
  const answer = describeOpening(document)
  const found = answer.ok ? undefined : answer.problems.find((problem) => problem.pointer === pointer)
  return found?.detail ?? 'no problem here'
}

/** A window with its three required facts, and what else a test adds. */
export function windowWith(more: Record<string, unknown> = {}): Record<string, unknown> {
  const { opening, ...rest } = more
  return { opening: { kind: 'window', width: '48 in', height: '60 in', ...(opening as object | undefined) }, ...rest }
}

/** A document with only one fact beside the required ones, at its path. */
export function withFact(path: string, wire: unknown): Record<string, unknown> {
  const [part = '', ...keys] = path.split('.')
  return windowWith({ [part]: nested(keys, wire) })
}

function nested(keys: readonly string[], wire: unknown): unknown {
  const [key, ...rest] = keys
  return key === undefined ? wire : { [key]: nested(rest, wire) }
}
