import { closest, distance } from 'fastest-levenshtein'
import { z } from 'zod'
import { pointerOf, type Problem } from './problem.ts'

export type ShapeCode = 'unknownKey' | 'missingKey' | 'wrongType' | 'notAllowed' | 'outOfRange'

type Issue = z.core.$ZodIssue
type Path = readonly (string | number | symbol)[]

const mostKeys = 50
const longestKey = 80

/** Everything that is wrong with the shape of a document, one problem for each place, all at once. */
export function shapeProblems(schema: z.ZodType, error: z.ZodError): readonly Problem<ShapeCode>[] {
  return error.issues.flatMap((issue) => problemsOf(schema, issue, []))
}

function problemsOf(schema: z.ZodType, issue: Issue, above: Path): readonly Problem<ShapeCode>[] {
  const path = [...above, ...issue.path]
  if (issue.code === 'unrecognized_keys') return unknownKeys(schema, path, issue.keys)
  if (issue.code === 'invalid_union') return problemsOfUnion(schema, issue, path)
  return [{ code: codeOf(issue), pointer: pointerOf(path), detail: detailOf(issue) }]
}

/** Of a choice between shapes, the one that fits best is the one to talk about. */
function problemsOfUnion(schema: z.ZodType, issue: Extract<Issue, { code: 'invalid_union' }>, path: Path): readonly Problem<ShapeCode>[] {
  if (isAbsent(issue)) return [{ code: 'missingKey', pointer: pointerOf(path), detail: 'is required' }]
  const best = optionsOf(issue).toSorted((a, b) => depth(b) - depth(a) || a.length - b.length)[0] ?? []
  if (depth(best) > 0) return best.flatMap((inner) => problemsOf(schema, inner, path))
  const expected = issue.errors.flat().map(expectedBy).filter((text) => text !== undefined)
  return [{ code: 'wrongType', pointer: pointerOf(path), detail: expectedBy(issue) ? detailOf(issue) : `must be ${[...new Set(expected)].join(' or ')}` }]
}

/** A choice among the options of a choice counts as one choice. */
function optionsOf(issue: Extract<Issue, { code: 'invalid_union' }>): readonly (readonly Issue[])[] {
  return issue.errors.flatMap((issues) => {
    const [inner] = issues
    return issues.length === 1 && inner?.code === 'invalid_union' && inner.path.length === 0 ? optionsOf(inner) : [issues]
  })
}

/** How far into an option the input fitted: a list that is too long is a list all the same, a text is none. */
function depth(issues: readonly Issue[]): number {
  if (issues.some(({ path, code }) => path.length === 0 && code === 'invalid_type')) return 0
  const partly = ['unrecognized_keys', 'too_big', 'too_small']
  return issues.reduce((deepest, { path, code }) => Math.max(deepest, path.length + (partly.includes(code) ? 1 : 0)), 0)
}

/** Each unknown key by itself; of a great many only the first, so that the answer stays shorter than the question. */
function unknownKeys(schema: z.ZodType, path: Path, keys: readonly string[]): readonly Problem<ShapeCode>[] {
  const known = keysAt(schema, path)
  const named = keys.slice(0, mostKeys).map((key) => unknownKey(known, path, key))
  if (keys.length <= mostKeys) return named
  return [...named, { code: 'unknownKey', pointer: pointerOf(path), detail: `has ${keys.length - mostKeys} more keys that are not known here` }]
}

function unknownKey(known: readonly string[], path: Path, key: string): Problem<ShapeCode> {
  const near = known.length > 0 && key.length <= longestKey ? closest(key, known) : undefined
  const suggestion = near !== undefined && distance(key, near) <= Math.max(2, key.length / 3) ? ` Did you mean "${near}"?` : ''
  const shown = key.length <= longestKey ? key : `${key.slice(0, longestKey)}…`
  return { code: 'unknownKey', pointer: pointerOf([...path, key]), detail: `"${shown}" is not known here.${suggestion || ` Known: ${known.join(', ')}.`}` }
}

function keysAt(schema: z.ZodType, path: Path): readonly string[] {
  const inner = unwrap(schema)
  const [key, ...rest] = path
  if (inner instanceof z.ZodObject) {
    if (key === undefined) return Object.keys(inner.shape)
    const child: unknown = inner.shape[String(key)]
    return child instanceof z.ZodType ? keysAt(child, rest) : []
  }
  if (inner instanceof z.ZodArray) return key === undefined ? [] : keysAt(inner.element as z.ZodType, rest)
  if (inner instanceof z.ZodUnion) return [...new Set(inner.options.flatMap((option) => keysAt(option as z.ZodType, path)))]
  return []
}

function unwrap(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodOptional || schema instanceof z.ZodNullable ? unwrap(schema.unwrap() as z.ZodType) : schema
}

function isAbsent(issue: Issue): boolean {
  return ['invalid_type', 'invalid_value', 'invalid_union'].includes(issue.code) && (issue.input === undefined || issue.input === null)
}

function codeOf(issue: Issue): ShapeCode {
  if (isAbsent(issue)) return 'missingKey'
  if (issue.code === 'invalid_type') return 'wrongType'
  return issue.code === 'too_big' || issue.code === 'too_small' ? 'outOfRange' : 'notAllowed'
}

function detailOf(issue: Issue): string {
  if (isAbsent(issue)) return 'is required'
  if (issue.code === 'too_big' || issue.code === 'too_small') return boundOf(issue)
  return expectedBy(issue) === undefined ? issue.message : `must be ${expectedBy(issue)}`
}

function boundOf(issue: Extract<Issue, { code: 'too_big' | 'too_small' }>): string {
  const [bound, least] = issue.code === 'too_big' ? [issue.maximum, 'at most'] : [issue.minimum, issue.inclusive === false ? 'more than' : 'at least']
  const counted: Readonly<Record<string, string>> = { string: 'character', array: 'member' }
  const unit = counted[issue.origin]
  return unit === undefined ? `must be ${least} ${bound}` : `must have ${least} ${bound} ${unit}${bound === 1 ? '' : 's'}`
}

const words: Readonly<Record<string, string>> = { array: 'a list', boolean: 'true or false', int: 'a whole number', object: 'an object' }

/** What a schema asks for: in its own words where it has some, "a length such as …". */
function expectedBy(issue: Issue): string | undefined {
  if (/^an? /.test(issue.message)) return issue.message
  if (issue.code === 'invalid_type') return words[issue.expected] ?? `a ${issue.expected}`
  if (issue.code === 'invalid_value') return issue.values.length === 1 ? JSON.stringify(issue.values[0]) : `one of ${issue.values.map((value) => JSON.stringify(value)).join(', ')}`
  return undefined
}
