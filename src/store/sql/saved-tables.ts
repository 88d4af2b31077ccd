import type { Kysely } from 'kysely'
import type { BackupRow } from '../backup-lines.ts'
import type { Db } from './flavor.ts'
import { tables } from './schema.ts'

export interface SavedTable {
  readonly name: string
  /** Its primary key. */
  readonly key: string
}

/** The tables that a backup holds, in the order in which they can be filled. */
export const savedTables: readonly SavedTable[] = Object.entries(tables).flatMap(([name, how]) => ('key' in how ? [{ name, key: how.key }] : []))

export type Row = BackupRow['row']

/** The same database, without knowing what its tables hold. */
export function anyTable(db: Db): Kysely<Record<string, Row>> {
  return db as unknown as Kysely<Record<string, Row>>
}
