import { stringify } from 'csv-stringify/sync'

/** One cell; null is an empty one. */
export type Cell = string | number | boolean | null

export interface SheetTable {
  readonly header: readonly string[]
  readonly rows: readonly (readonly Cell[])[]
}

/**
 * A table as RFC 4180 has it: a header, CRLF, quotes where they are needed. A text that a spreadsheet would take for a formula
 * is led by an apostrophe; a number stays a number.
 */
export function csvText({ header, rows }: SheetTable, { byteOrderMark }: { readonly byteOrderMark: boolean }): string {
  return stringify([header, ...rows], { record_delimiter: '\r\n', escape_formulas: true, bom: byteOrderMark, cast: { boolean: (value) => (value ? 'yes' : 'no') } })
}
