import type { FullEvaluation } from '../evaluation/evaluate.ts'
import { valueOf, type Opening } from '../opening/opening.ts'
import type { QuantityResult } from '../quantities/result.ts'
import { millimetres } from '../units/length.ts'

export type End = 'left' | 'right'
export const ends: readonly End[] = ['left', 'right']

/** A row of a table beside a quantity: lengths in millimeters, texts as they are. */
export type Row = readonly (number | string | null)[]

/** What is known of an opening, in millimeters and degrees; every fact that is asked for and not known is remembered. */
export interface Known {
  readonly length: (path: string, end?: End) => number | undefined
  /** The same without remembering that it was asked for: for how much is shown, not for what is drawn. */
  readonly glimpse: (path: string, end?: End) => number | undefined
  readonly amount: (path: string) => number | undefined
  /** A count, a length or a choice as somebody gave it, and not as it follows from other facts; without remembering that it was asked for. */
  readonly told: (path: string) => number | string | undefined
  readonly flag: (path: string, end?: End) => boolean | undefined
  readonly choice: (path: string) => string | undefined
  /** The rows of a table of a computed quantity; undefined where it is not computed. */
  readonly rows: (quantity: string, table?: number) => readonly Row[] | undefined
  readonly result: (quantity: string) => QuantityResult | undefined
  readonly lacking: () => readonly string[]
}

export function knownOf(opening: Opening, evaluation: FullEvaluation): Known {
  const lacking = new Set<string>()
  const read = <T>(path: string, value: T | undefined): T | undefined => {
    if (value === undefined) lacking.add(path)
    return value
  }
  const at = (path: string, end?: End) => (end === undefined ? valueOf(opening, path) : opening.facts.get(path)?.[ends.indexOf(end)]?.value)
  const number = (path: string, end?: End) => { const value = at(path, end); return typeof value === 'object' ? value.amount : undefined }
  const result = (quantity: string) => {
    const found = evaluation.quantities.get(quantity) ?? evaluation.onRequest(quantity)
    for (const path of found?.missing ?? []) if (!path.includes(' ')) lacking.add(path)
    return found
  }
  return {
    length: (path, end) => { const value = read(path, number(path, end)); return value === undefined ? undefined : millimetres(value) },
    glimpse: (path, end) => { const value = number(path, end); return value === undefined ? undefined : millimetres(value) },
    amount: (path) => read(path, number(path)),
    told: (path) => { if (opening.facts.get(path)?.[0]?.derivedFrom !== undefined) return undefined; const value = at(path); return typeof value === 'string' ? value : number(path) },
    flag: (path, end) => { const value = at(path, end); return read(path, typeof value === 'boolean' ? value : undefined) },
    choice: (path) => { const value = at(path); return read(path, typeof value === 'string' ? value : undefined) },
    rows: (quantity, table = 0) => rowsOf(result(quantity), table),
    result,
    lacking: () => [...lacking],
  }
}

function rowsOf(result: QuantityResult | undefined, index: number): readonly Row[] | undefined {
  const table = result?.status === 'computed' ? result.tables[index] : undefined
  return table?.rows.map((row) => row.map((cell, column) => (typeof cell === 'number' && table.columns[column]?.dimension === 'length' ? millimetres(cell) : cell)))
}

/** Over a shelf angle the head flashing has no ends beside this opening. */
export function flashingRunsOn(known: Known): boolean {
  return known.choice('head.support.kind') === 'shelfAngle' || known.flag('head.flashing.continuousPastOpening') === true
}

/** One length of a row. */
export function numberIn(row: Row | undefined, column: number): number | undefined {
  const cell = row?.[column]
  return typeof cell === 'number' ? cell : undefined
}

/** The brick as laid, in millimeters. */
export interface BrickSizes {
  readonly height: number
  readonly length: number
  readonly thickness: number | undefined
  readonly joint: number
  readonly course: number
}

export function brickOf(known: Known): BrickSizes | undefined {
  const row = known.rows('coursing.brick')?.[0]
  const [height, length, joint, course] = [0, 1, 3, 4].map((column) => numberIn(row, column))
  if (height === undefined || length === undefined || joint === undefined || course === undefined) return undefined
  return { height, length, thickness: numberIn(row, 2), joint, course }
}
