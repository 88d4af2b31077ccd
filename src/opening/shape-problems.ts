import { closest, distance } from 'fastest-levenshtein'
import { z } from 'zod'
import { pointerOf, type Problem } from './problem.ts'

export type ShapeCode = 'unknownKey' | 'missingKey' | 'wrongType' | 'notAllowed' | 'outOfRange'

type Issue = z.core.$ZodIssue
type Path = readonly (string | number | symbol)[]

/** Everything that is wrong with the shape of a document, one problem for each place, all at once. */
export function shapeProblems(schema: z.ZodType, error: z.ZodError): readonly Problem<ShapeCode>[] {
  return error.issues.flatMap((issue) => problemsOf(schema, issue, []))
}

function problemsOf(schema: z.ZodType, issue: Issue, above: Path): readonly Problem<ShapeCode>[] {
  const path = [...above, ...issue.path]
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(schema, path, key))
  if (issue.code === 'invalid_union') return problemsOfUnion(schema, issue, path)
  return [{ code: codeOf(issue), pointer: pointerOf(path), detail: detailOf(issue) }]
}

/** Of a choice between shapes, the one that fits best is the one to talk about. */
function problemsOfUnion(schema: z.ZodType, issue: Extract<Issue, { code: 'invalid_union' }>, path: Path): readonly Problem<ShapeCode>[] {
  if (issue.input === undefined && issue.errors.flat().every((inner) => isAbsent(inner))) {
    return [{ code: 'missingKey', pointer: pointerOf(path), detail: 'is required' }]
  }
  const depth = (issues: readonly Issue[]) => Math.max(0, ...issues.map((inner) => inner.path.length + (inner.code === 'unrecognized_keys' ? 1 : 0)))
  const best = issue.errors.toSorted((a, b) => depth(b) - depth(a) || a.length - b.length)[0] ?? []
  if (depth(best) > 0) return best.flatMap((inner) => problemsOf(schema, inner, path))
  const expected = issue.errors.flat().map(expectedBy).filter((text) => text !== undefined)
  return [{ code: 'wrongType', pointer: pointerOf(path), detail: expected.length > 0 ? `must be ${[...new Set(expected)].join(' or ')}` : 'does not have an allowed form' }]
}

function unknownKey(schema: z.ZodType, path: Path, key: string): Problem<ShapeCode> {
  const known = keysAt(schema, path)
  const near = known.length > 0 ? closest(key, known as string[]) : undefined
  const suggestion = near !== undefined && distance(key, near) <= Math.max(2, key.length / 3) ? ` Did you mean "${near}"?` : ''
  return { code: 'unknownKey', pointer: pointerOf([...path, key]), detail: `"${key}" is not known here.${suggestion || ` Known: ${known.join(', ')}.`}` }
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
  return issue.path.length === 0 && (issue.code === 'invalid_type' || issue.code === 'invalid_value') && issue.input === undefined
}

function codeOf(issue: Issue): ShapeCode {
  if (issue.code === 'invalid_type') return issue.input === undefined ? 'missingKey' : 'wrongType'
  if (issue.code === 'invalid_value') return issue.input === undefined ? 'missingKey' : 'notAllowed'
  return issue.code === 'too_big' || issue.code === 'too_small' ? 'outOfRange' : 'notAllowed'
}

function detailOf(issue: Issue): string {
  if ((issue.code === 'invalid_type' || issue.code === 'invalid_value') && issue.input === undefined) return 'is required'
  return expectedBy(issue) === undefined ? issue.message : `must be ${expectedBy(issue)}`
}

function expectedBy(issue: Issue): string | undefined {
  if (issue.code === 'invalid_type') return `${/^[aeiou]/.test(issue.expected) ? 'an' : 'a'} ${issue.expected}`
  if (issue.code === 'invalid_value') return issue.values.length === 1 ? JSON.stringify(issue.values[0]) : `one of ${issue.values.map((value) => JSON.stringify(value)).join(', ')}`
  return undefined
}
