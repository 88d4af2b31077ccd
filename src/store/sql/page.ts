import type { Page } from '../records.ts'

/** A page of rows in the order of their ids; the query asks for one more than a page holds, to know whether there is another. */
export function pageOf<T extends { readonly id: string }>(rows: readonly T[], first: number): Page<T> {
  const items = rows.slice(0, first)
  return { items, next: rows.length > first ? (items.at(-1)?.id ?? null) : null }
}
