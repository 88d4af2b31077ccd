import { z } from 'zod'
import { failure, type Answer } from './operation.ts'

/** Cursor paging, the same for every list. */
export const paging = {
  first: z.coerce.number().int().min(1).max(200).nullish().meta({ description: 'How many to answer at most; 50 when left out.' }),
  after: z.string().max(600).nullish().meta({ description: 'Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge.' }),
}

export function pageOf<T extends z.ZodType>(item: T, id: string) {
  return z
    .strictObject({ items: z.array(item), nextCursor: z.string().nullable().meta({ description: 'Null on the last page.' }) })
    .meta({ id })
}

interface Paging {
  readonly first?: number | null | undefined
  readonly after?: string | null | undefined
}

/** One page of a list that is sorted by key, after a key that is in it. */
export function page<T>(items: readonly T[], keyOf: (item: T) => string, { first, after }: Paging): Answer<{ items: T[]; nextCursor: string | null }> {
  const size = first ?? 50
  const start = after === null || after === undefined ? 0 : items.findIndex((item) => keyOf(item) === after) + 1
  if (start === 0 && after !== null && after !== undefined) {
    return failure('invalidInput', [{ code: 'notAllowed', pointer: '/after', detail: 'continues after something that is no longer in this list. Start again without it.' }])
  }
  const shown = items.slice(start, start + size)
  const last = shown.at(-1)
  return { ok: true, value: { items: shown, nextCursor: last !== undefined && start + size < items.length ? keyOf(last) : null } }
}
