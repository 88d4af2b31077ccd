import { digestOf } from '../catalog/digest.ts'
import { openingId } from './entry.ts'
import { grouped } from './grouped.ts'
import type { ReadRow, RowProblem } from './schedule-row.ts'

/** One opening that a sheet makes, with its design. */
export interface ScheduledDesign {
  readonly row: number
  readonly opening: string
  readonly description: Readonly<Record<string, unknown>>
}

/** The openings of a row: one by its id, or, where the sheet counts them, each by itself with a number behind its id, also where it is one. */
export function openingsOf({ row, mark, id, quantity, description }: ReadRow): readonly ScheduledDesign[] {
  const opening = idFrom(id)
  if (quantity === null) return [{ row, opening, description }]
  return Array.from({ length: quantity }, (_, index) => ({ row, opening: `${opening}-${index + 1}`, description: { ...description, reference: `${mark}-${index + 1}` } }))
}

/** Openings whose id cannot be one, and those that stand in more than one row; there is no telling which row is right. */
export function idProblems(openings: readonly ScheduledDesign[], column: string): readonly RowProblem[] {
  const unfit = openings.flatMap(({ row, opening }) => {
    const read = openingId.safeParse(opening)
    return opening === '' || read.success ? [] : [{ row, column, code: 'notAllowed', detail: `"${opening.slice(0, 120)}" cannot be the id of an opening: ${read.error.issues[0]?.message ?? ''}.` }]
  })
  const rows = [...grouped(openings, ({ opening }) => opening)].map(([opening, some]) => ({ opening, rows: [...new Set(some.map(({ row }) => row))] }))
  const twice = rows.filter(({ opening, rows }) => opening !== '' && rows.length > 1)
  return [...unfit, ...twice.flatMap(({ opening, rows }) => rows.map((row) => ({ row, column, code: 'duplicate', detail: `"${opening}" stands in row ${rows.filter((other) => other !== row).join(', ')} as well.` })))]
}

/** The id of the entry of an opening in an import: a UUID of version 8 (RFC 9562) made from a digest, so that the same import sent twice is one. */
export function importedEntryId(project: string, imported: string, opening: string): string {
  const hex = digestOf({ project, imported, opening }).replace('sha256:', '')
  const variant = ((parseInt(hex.charAt(16), 16) & 3) | 8).toString(16)
  return [hex.slice(0, 8), hex.slice(8, 12), `8${hex.slice(13, 16)}`, `${variant}${hex.slice(17, 20)}`, hex.slice(20, 32)].join('-')
}

/** A mark may hold what an id cannot: a hyphen takes its place, but for the ends. */
function idFrom(mark: string): string {
  return mark.replace(/^[^\w.~-]+|[^\w.~-]+$/g, '').replace(/[^\w.~-]+/g, '-')
}
