import type { Records } from './records.ts'

export interface RecordsPlace {
  /** A PostgreSQL database; where it is given, the folder is not used. */
  readonly databaseUrl?: string | undefined
  /** The folder of the embedded store, created on the first start; `:memory:` for one that is forgotten. */
  readonly dataDir: string
}

/** Opens the records and brings their tables up to date. An error says which file or database, without its password. Only the driver that is asked for is loaded. */
export async function openRecords({ databaseUrl, dataDir }: RecordsPlace): Promise<Records> {
  if (databaseUrl !== undefined) return (await import('./sql/open-postgres.ts')).openPostgres(databaseUrl)
  return (await import('./sql/open-sqlite.ts')).openSqlite(dataDir)
}
