import type { Records } from './records.ts'
import { openPostgres } from './sql/open-postgres.ts'
import { openSqlite } from './sql/open-sqlite.ts'

export interface RecordsPlace {
  /** A PostgreSQL database; where it is given, the folder is not used. */
  readonly databaseUrl?: string | undefined
  /** The folder of the embedded store, created on the first start; `:memory:` for one that is forgotten. */
  readonly dataDir: string
}

/** Opens the records and brings their tables up to date. An error says which file or database, without its password. */
export function openRecords({ databaseUrl, dataDir }: RecordsPlace): Promise<Records> {
  return databaseUrl === undefined ? openSqlite(dataDir) : openPostgres(databaseUrl)
}
