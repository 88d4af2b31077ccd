import type { Cell, SheetTable } from './csv-text.ts'

/** The columns of a table of things: what stands over each and what of a thing stands in it. */
export type Columns<T> = readonly (readonly [title: string, of: (one: T) => Cell])[]

export function tableOf<T>(all: readonly T[], columns: Columns<T>): SheetTable {
  return { header: columns.map(([title]) => title), rows: all.map((one) => columns.map(([, of]) => of(one))) }
}

export function listed(all: readonly string[]): string {
  return all.join('; ')
}

interface InBoth {
  readonly inchPound: string
  readonly si: string
}

/** An amount in each of the two unit systems. */
export function inBoth<T>(title: string, of: (one: T) => InBoth | null): Columns<T> {
  return [[`${title} (inch-pound)`, (one) => of(one)?.inchPound ?? null], [`${title} (SI)`, (one) => of(one)?.si ?? null]]
}
