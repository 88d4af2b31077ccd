import { closest } from 'fastest-levenshtein'
import type { Problem } from '../opening/problem.ts'

export interface SheetColumn {
  readonly index: number
  /** As it stands in the sheet; its number where nothing stands over it. */
  readonly header: string
}

type Found = { readonly ok: true; readonly value: SheetColumn } | { readonly ok: false; readonly problem: Pick<Problem, 'code' | 'detail'> }

/** The column of that header, else the one of that number, counted from 1. */
export function findColumn(name: string, headers: readonly string[]): Found {
  const exact = indexesOf(headers, (header) => header.trim() === name.trim())
  const alike = exact.length > 0 ? exact : indexesOf(headers, (header) => plainWord(header) === plainWord(name))
  if (alike.length > 1) return { ok: false, problem: { code: 'ambiguous', detail: `"${name}" stands over columns ${alike.map((index) => index + 1).join(', ')}. Name the one that is meant by its number.` } }
  const index = alike[0] ?? numbered(name, headers)
  if (index === undefined) return { ok: false, problem: { code: 'unknownColumn', detail: notThere(name, headers) } }
  return { ok: true, value: { index, header: shownHeader(headers[index] ?? '') || `column ${index + 1}` } }
}

function notThere(name: string, headers: readonly string[]): string {
  const there = headers.map((header) => shownHeader(header).slice(0, 80)).filter((header) => header !== '')
  if (there.length === 0) return `There is no column "${name}": nothing stands in the header row. Say with "headerRow" which row has the headers.`
  return `There is no column "${name}". Did you mean "${closest(name.slice(0, 80), there)}"? The sheet has: ${there.map((header) => `"${header}"`).join(', ')}.`
}

function numbered(name: string, headers: readonly string[]): number | undefined {
  const number = /^\d{1,4}$/.test(name.trim()) ? Number(name) : 0
  return number >= 1 && number <= headers.length ? number - 1 : undefined
}

function indexesOf(headers: readonly string[], test: (header: string) => boolean): readonly number[] {
  return headers.flatMap((header, index) => (test(header) ? [index] : []))
}

/** A header may run over several lines of its cell. */
export function shownHeader(header: string): string {
  return header.trim().replace(/\s+/g, ' ')
}

/** Headers and words of a sheet are compared without regard to case and spacing. */
export function plainWord(text: string): string {
  return shownHeader(text).toLowerCase()
}
