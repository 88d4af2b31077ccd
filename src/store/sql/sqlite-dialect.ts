import { setTimeout as later } from 'node:timers/promises'
import type Database from 'libsql'
import type { CompiledQuery, DatabaseConnection, Dialect, QueryResult, SqliteDatabase, SqliteStatement } from 'kysely'
import { SelectQueryNode, SqliteAdapter, SqliteDriver, SqliteIntrospector, SqliteQueryCompiler } from 'kysely'

/** How long a read may hold the thread while another process recovers or tidies the file. */
export const readPatience = 5_000
/** How long a write waits for those of other processes; the service goes on meanwhile. */
const writePatience = 10_000

/**
 * Kysely over libsql. Every write runs in a transaction that holds the write lock from its start: only BEGIN ever finds the
 * file busy. A prepared statement that does so stays open in libsql, and its connection would see no later commit again.
 */
export function libsqlDialect(database: Database.Database): Dialect {
  return {
    createDriver: () => new LibsqlDriver(database),
    createQueryCompiler: () => new SqliteQueryCompiler(),
    createAdapter: () => new SqliteAdapter(),
    createIntrospector: (db) => new SqliteIntrospector(db),
  }
}

class LibsqlDriver extends SqliteDriver {
  readonly #database: Database.Database

  constructor(database: Database.Database) {
    super({ database: remembering(database) })
    this.#database = database
  }

  override async acquireConnection(): Promise<DatabaseConnection> {
    const connection = await super.acquireConnection()
    return {
      executeQuery: (query) => (this.#database.inTransaction || SelectQueryNode.is(query.query) ? connection.executeQuery(query) : this.#alone(connection, query)),
      streamQuery: () => { throw new Error('a row at a time is not offered: a stream that is left early would keep its snapshot') },
    }
  }

  override async beginTransaction(): Promise<void> {
    const patience = Date.now() + writePatience
    while (!this.#begun(Date.now() > patience)) await later(1 + Math.random() * 4)
  }

  override async commitTransaction(): Promise<void> {
    this.#database.exec('commit')
  }

  override async rollbackTransaction(): Promise<void> {
    // A full disk, for one, has ended the transaction already.
    if (this.#database.inTransaction) this.#database.exec('rollback')
  }

  #begun(last: boolean): boolean {
    try {
      this.#database.exec('pragma busy_timeout = 0; begin immediate')
      return true
    } catch (error) {
      if (last || !isBusy(error)) throw error
      return false
    } finally {
      this.#database.exec(`pragma busy_timeout = ${readPatience}`)
    }
  }

  async #alone<R>(connection: DatabaseConnection, query: CompiledQuery): Promise<QueryResult<R>> {
    await this.beginTransaction()
    try {
      const result = await connection.executeQuery<R>(query)
      await this.commitTransaction()
      return result
    } catch (error) {
      await this.rollbackTransaction()
      throw error
    }
  }
}

export function isBusy(error: unknown): boolean {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('SQLITE_BUSY')
}

/** Prepares each statement once; there are as many as the service has queries. */
function remembering(database: Database.Database): SqliteDatabase {
  const known = new Map<string, SqliteStatement>()
  return {
    prepare(sql) {
      const statement = known.get(sql) ?? database.prepare<[readonly unknown[]]>(sql)
      known.set(sql, statement)
      return statement
    },
    close: () => { database.close() },
  }
}
