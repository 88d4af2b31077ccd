import { CsvError, parse } from 'csv-parse/sync'
import type { Checked, Problem } from '../opening/problem.ts'
import type { SheetRow } from '../record/schedule-row.ts'

export interface Sheet {
  readonly headers: readonly string[]
  /** The rows below the headers, numbered as a spreadsheet counts them. */
  readonly rows: readonly SheetRow[]
}

export const mostRows = 10_000

/** Cells that hold a whole column by mistake, a quote that is never closed, end here. */
const longestRow = 100_000

/** Reads CSV as RFC 4180 has it and as it comes: with or without a byte order mark, with any of three line ends, with inch marks in cells without quotes. */
export function readSheet(csv: string, headerRow: number, delimiter: string | null): Checked<Sheet> {
  if (csv.trim().replace('\uFEFF', '') === '') return refused('missingKey', '/csv', 'The sheet is empty.')
  const read = cellsOf(csv, delimiter ?? delimiterOf(csv, headerRow), headerRow + mostRows + 1)
  if (!read.ok) return read
  const headers = read.value[headerRow - 1]
  if (!headers) return refused('outOfRange', '/headerRow', `The sheet has ${read.value.length} rows; there is no row ${headerRow}.`)
  const rows = read.value.slice(headerRow).map((cells, index) => ({ row: headerRow + index + 1, cells }))
  if (rows.length > mostRows) return refused('outOfRange', '/csv', `The sheet has more than ${mostRows} rows below the headers. Send it in parts.`)
  return rows.some(({ cells }) => !isBlank(cells)) ? { ok: true, value: { headers, rows } } : refused('missingKey', '/csv', `The sheet has no row below the headers in row ${headerRow}.`)
}

export function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '')
}

function cellsOf(csv: string, delimiter: string, most: number): Checked<readonly (readonly string[])[]> {
  try {
    return { ok: true, value: parse(csv, { delimiter, to: most, bom: true, record_delimiter: ['\r\n', '\n', '\r'], relax_column_count: true, relax_quotes: true, max_record_size: longestRow }) }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    return refused('unreadable', '/csv', detailOf(error))
  }
}

function detailOf({ code, message, lines }: CsvError & { readonly lines?: unknown }): string {
  if (code === 'CSV_QUOTE_NOT_CLOSED') return 'A cell begins with a quote that is never closed. Close it, and write a quote within a cell that is in quotes twice.'
  if (code === 'CSV_MAX_RECORD_SIZE') return `A row is longer than ${longestRow} characters${typeof lines === 'number' ? `, near line ${lines}` : ''}. Perhaps a quote is not closed.`
  return `${message}. Write CSV as RFC 4180 has it.`
}

/** The sign that divides the header row into the most cells. */
function delimiterOf(csv: string, headerRow: number): string {
  const widths = [',', ';', '\t', '|'].map((sign) => {
    const read = cellsOf(csv, sign, headerRow)
    return { sign, width: read.ok ? (read.value[headerRow - 1]?.length ?? 0) : 0 }
  })
  return widths.reduce((widest, one) => (one.width > widest.width ? one : widest)).sign
}

function refused(code: string, pointer: string, detail: string): { readonly ok: false; readonly problems: readonly Problem[] } {
  return { ok: false, problems: [{ code, pointer, detail }] }
}
