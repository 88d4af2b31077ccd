import { access, mkdir } from 'node:fs/promises'
import type { RecordsPlace } from '../open-records.ts'
import type { Db, Flavor, Trx } from './flavor.ts'
import { connectPostgres, postgres, reasonOf, withoutSecrets } from './open-postgres.ts'
import { fileIn, openFile, overFile, sqlite } from './open-sqlite.ts'

/** A database as it is found: nothing is brought up to date. */
export interface FoundDatabase {
  readonly db: Db
  readonly flavor: Flavor
  /** Its file or address, without the password. */
  readonly place: string
  /** Reads from one moment, while others go on writing. */
  readonly atOneMoment: <T>(read: (db: Db) => Promise<T>) => Promise<T>
}

/** Opens a database, works with it and closes it. An error names the place. */
export async function withDatabase<T>(place: RecordsPlace, mayCreate: boolean, work: (found: FoundDatabase) => Promise<T>): Promise<T> {
  const found = place.databaseUrl === undefined ? await inFolder(place.dataDir, mayCreate) : atAddress(place.databaseUrl)
  try {
    return await work(found)
  } catch (error) {
    throw new Error(`The records at ${found.place}: ${reasonOf(error)}`, { cause: error })
  } finally {
    await found.db.destroy()
  }
}

function atAddress(databaseUrl: string): FoundDatabase {
  const place = withoutSecrets(databaseUrl)
  const db = connectPostgres(databaseUrl)
  return { db, flavor: postgres, place, atOneMoment: (read) => db.transaction().setIsolationLevel('repeatable read').setAccessMode('read only').execute((trx: Trx) => read(trx)) }
}

async function inFolder(dataDir: string, mayCreate: boolean): Promise<FoundDatabase> {
  const place = fileIn(dataDir)
  if (place === ':memory:') throw new Error('Records that are only in memory can be neither backed up nor restored: set DATA_DIR or DATABASE_URL')
  if (mayCreate) await mkdir(dataDir, { recursive: true })
  else await access(place).catch(() => { throw new Error(`There are no records at ${place}`) })
  const database = await openFile(place)
  const db = overFile(database)
  return {
    db, flavor: sqlite, place,
    // A transaction of the dialect would hold everybody else's writes back.
    atOneMoment: async (read) => {
      database.exec('begin')
      try {
        return await read(db)
      } finally {
        database.exec('commit')
      }
    },
  }
}
