import { closest, distance } from 'fastest-levenshtein'
import type { z } from 'zod'
import type { Checked, Problem } from '../opening/problem.ts'
import { shapeProblems } from '../opening/shape-problems.ts'
import { amendmentEnvelope, mostModifications, type Amendment } from './amendment.ts'
import { shapesByKind, type Modification } from './modification.ts'
import { substitutions } from './substitution.ts'

/** Beyond this the rest is not read until these are mended, so that an answer takes less than the question. */
const mostProblems = 200

/**
 * Reads an amendment as it came over the wire or out of a file. Each modification is read as the kind that it names, so that a
 * slip in it is told once and in the words of that kind.
 */
export function readAmendment(content: unknown): Checked<Amendment> {
  const envelope = amendmentEnvelope.safeParse(content, { reportInput: true })
  const problems: Problem[] = envelope.success ? [] : [...shapeProblems(amendmentEnvelope, envelope.error)]
  const modifications: Modification[] = []
  for (const [index, one] of modificationsIn(content).entries()) {
    if (problems.length > mostProblems) return { ok: false, problems: shortened(problems) }
    const read = readModification(one, `/modifications/${index}`)
    if (read.ok) modifications.push(read.value)
    else problems.push(...read.problems)
  }
  return envelope.success && problems.length === 0 ? { ok: true, value: { ...envelope.data, modifications } } : { ok: false, problems: shortened(problems) }
}

function modificationsIn(content: unknown): readonly unknown[] {
  const list = isRecord(content) ? content['modifications'] : undefined
  return Array.isArray(list) && list.length <= mostModifications ? list : []
}

function readModification(content: unknown, pointer: string): Checked<Modification> {
  const schema = shapeOf(content)
  if ('detail' in schema) return { ok: false, problems: [{ ...schema, pointer: `${pointer}${schema.pointer}` }] }
  const parsed = schema.shape.safeParse(content, { reportInput: true })
  if (parsed.success) return { ok: true, value: parsed.data }
  return { ok: false, problems: shapeProblems(schema.shape, parsed.error).map((problem) => ({ ...problem, pointer: `${pointer}${problem.pointer}` })) }
}

function shapeOf(content: unknown): { readonly shape: z.ZodType<Modification> } | Problem {
  if (!isRecord(content)) return { code: 'wrongType', pointer: '', detail: 'must be an object' }
  const kind = nameAmong(shapesByKind, content['kind'], '/kind', verbs)
  if (typeof kind !== 'string') return kind
  if (kind !== 'substitution') return { shape: shapesByKind[kind] }
  const { target } = content
  if (!isRecord(target)) return { code: target === undefined ? 'missingKey' : 'wrongType', pointer: '/target', detail: 'must be an object with "rule" and "part"' }
  const part = nameAmong(substitutions, target['part'], '/target/part', {})
  return typeof part === 'string' ? { shape: substitutions[part] } : part
}

/** Words of instruments, and the kind of modification that they mean. */
const verbs: Readonly<Record<string, keyof typeof shapesByKind>> = {
  replace: 'substitution', revise: 'substitution', change: 'substitution', amend: 'substitution', add: 'insertion', insert: 'insertion', new: 'insertion',
  delete: 'repeal', strike: 'repeal', remove: 'repeal', renumber: 'renumbering', redesignate: 'renumbering',
}

/** The key that a text names, or the one problem to tell about it. */
function nameAmong<K extends string>(known: Readonly<Record<K, unknown>>, given: unknown, pointer: string, meant: Readonly<Record<string, K>>): K | Problem {
  const keys = Object.keys(known) as K[]
  const all = `one of ${keys.join(', ')}`
  if (given === undefined || given === null) return { code: 'missingKey', pointer, detail: `is required: ${all}` }
  if (typeof given !== 'string') return { code: 'wrongType', pointer, detail: `must be ${all}` }
  if (keys.includes(given as K)) return given as K
  const shown = given.slice(0, 40)
  const near = Object.hasOwn(meant, shown) ? meant[shown] : closest(shown, keys)
  const suggestion = near !== undefined && (meant[shown] === near || distance(shown, near) <= shown.length / 3) ? ` Did you mean "${near}"?` : ''
  return { code: 'notAllowed', pointer, detail: `"${shown}" is not known here.${suggestion} It must be ${all}.` }
}

function shortened(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= mostProblems) return problems
  return [...problems.slice(0, mostProblems), { code: 'notAllowed', pointer: '', detail: 'There are more problems of shape. Mend these first; then the rest is read.' }]
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
