/** One place at which two answers differ, each value as JSON text; null where one has nothing there. */
export interface AnswerDifference {
  readonly pointer: string
  readonly kept: string | null
  readonly now: string | null
}

/**
 * Where two evaluations differ. Lists are compared by the id of their entries, so that a rule that was added does not
 * make all that follow it look different.
 */
export function answerDifferences(kept: unknown, now: unknown, pointer = ''): readonly AnswerDifference[] {
  const [before, after] = [members(kept), members(now)]
  if (!before || !after) return JSON.stringify(kept) === JSON.stringify(now) ? [] : [{ pointer, kept: textOf(kept), now: textOf(now) }]
  const keys = [...new Set([...before.keys(), ...after.keys()])]
  return keys.flatMap((key) => answerDifferences(before.get(key), after.get(key), `${pointer}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`))
}

function members(value: unknown): ReadonlyMap<string, unknown> | undefined {
  if (Array.isArray(value)) return new Map(value.map((entry, index) => [nameOf(entry) ?? String(index), entry] as const))
  return typeof value === 'object' && value !== null ? new Map(Object.entries(value)) : undefined
}

const names = ['rule', 'id', 'fact'] as const

function nameOf(entry: unknown): string | undefined {
  if (typeof entry !== 'object' || entry === null) return undefined
  const record = entry as Readonly<Record<string, unknown>>
  const name = names.map((key) => record[key]).find((value) => typeof value === 'string')
  return name !== undefined && typeof record['member'] === 'string' && 'given' in record ? `${name} ${record['member']}` : name
}

function textOf(value: unknown): string | null {
  return value === undefined ? null : JSON.stringify(value)
}
