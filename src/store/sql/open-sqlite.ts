import { mkdir } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { setTimeout as later } from 'node:timers/promises'
import Database from 'libsql'
import type { Records } from '../records.ts'
import { lastSequence } from './adoptions.ts'
import { pollSequence, watchAdoptions } from './adoption-watch.ts'
import type { Db, Flavor } from './flavor.ts'
import { CamelCasePlugin, Kysely, sql } from 'kysely'
import { migrate } from './migrate.ts'
import type { Schema } from './schema.ts'
import { sqlRecords } from './sql-records.ts'
import { isBusy, libsqlDialect, readPatience } from './sqlite-dialect.ts'

/** Two processes on one file see each other's adoptions this often; one look costs some microseconds. */
const lookEvery = 250

export const sqlite: Flavor = {
  text: 'text',
  // Its transactions hold the write lock from their start.
  lockMigrations: async () => undefined,
  appendOnly: (table) => ['update', 'delete'].map((verb) => sql`
    create trigger ${sql.id(`${table}_no_${verb}`)} before ${sql.raw(verb)} on ${sql.id(table)}
    begin select raise(abort, ${sql.lit(`${table} takes new rows only`)}); end`),
  among: (column, values) => sql<boolean>`${sql.ref(column)} in (select value from json_each(${JSON.stringify(values)}))`,
  // A transaction holds the write lock from its start, so that nobody else is claiming.
  lockFree: (deliveries) => deliveries,
  // Other processes look for themselves.
  tell: async () => undefined,
}

/** Opens the file in the folder, both of which are created on the first start; `:memory:` lasts until it is closed. */
export async function openSqlite(dataDir: string): Promise<Records> {
  const file = fileIn(dataDir)
  try {
    if (file !== dataDir) await mkdir(dataDir, { recursive: true })
    const db = overFile(await openFile(file))
    await migrate(db, sqlite).catch(async (error: unknown) => { await db.destroy(); throw error })
    return sqlRecords(db, sqlite, watchAdoptions((watch) => pollSequence(watch, () => lastSequence(db), lookEvery).stop))
  } catch (error) {
    throw new Error(`The records in ${file} cannot be opened: ${error instanceof Error ? error.message : String(error)}`, { cause: error })
  }
}

export function fileIn(dataDir: string): string {
  return dataDir === ':memory:' ? dataDir : join(resolve(dataDir), 'records.sqlite')
}

export function overFile(database: Database.Database): Db {
  return new Kysely<Schema>({ dialect: libsqlDialect(database), plugins: [new CamelCasePlugin()] })
}

export async function openFile(file: string): Promise<Database.Database> {
  const database = new Database(file)
  database.exec(`pragma busy_timeout = ${readPatience}`)
  await useLog(database, Date.now() + readPatience)
  database.exec('pragma synchronous = full; pragma foreign_keys = on')
  return database
}

/** The change to a write-ahead log does not wait for another process that is doing the same. */
async function useLog(database: Database.Database, patience: number): Promise<void> {
  for (;;) {
    try {
      database.exec('pragma journal_mode = wal')
      return
    } catch (error) {
      if (!isBusy(error) || Date.now() > patience) throw error
      await later(10)
    }
  }
}
