import { open, rm, type FileHandle } from 'node:fs/promises'
import { linkLines, type BackupHead } from './backup-lines.ts'
import type { RecordsPlace } from './open-records.ts'
import type { Db } from './sql/flavor.ts'
import { migrationNames } from './sql/migrate.ts'
import { withDatabase } from './sql/open-database.ts'
import { anyTable, savedTables, type Row, type SavedTable } from './sql/saved-tables.ts'

/** How many rows were written, by table. */
export type RowCounts = Readonly<Record<string, number>>

const rowsAtOnce = 500

/** Writes all that is remembered, as it is at one moment, into a new file that only its owner can read. Services may go on writing meanwhile. */
export async function backUp(place: RecordsPlace, file: string, takenAt: string): Promise<RowCounts> {
  return withDatabase(place, false, async ({ db: found, atOneMoment }) => {
    await refuseUnlessCurrent(found)
    const handle = await open(file, 'wx', 0o600)
    try {
      const counts = await atOneMoment((db) => writeAll(db, handle, { backup: 'wythe', format: 1, takenAt, migrations: [...migrationNames] }))
      await handle.sync()
      return counts
    } catch (error) {
      await rm(file, { force: true })
      throw error
    } finally {
      await handle.close()
    }
  })
}

/** Which tables there are is known for one version only. */
async function refuseUnlessCurrent(db: Db): Promise<void> {
  const there = await db.introspection.getTables()
  if (!there.some(({ name }) => name === 'applied_migrations')) throw new Error('there is nothing of this service')
  const applied = (await db.selectFrom('appliedMigrations').select('name').orderBy('name').execute()).map(({ name }) => name)
  if (applied.join() !== migrationNames.join()) throw new Error(`they are those of another version (their last migration is ${applied.at(-1) ?? 'none'}, here it is ${migrationNames.at(-1) ?? 'none'}); back up with the version that serves them`)
}

async function writeAll(db: Db, handle: FileHandle, head: BackupHead): Promise<RowCounts> {
  const link = linkLines()
  const counts = new Map<string, number>()
  await handle.write(link(head))
  for (const table of savedTables) {
    counts.set(table.name, 0)
    for await (const rows of pagesOf(db, table)) {
      await handle.write(rows.map((row) => link({ table: table.name, row })).join(''))
      counts.set(table.name, (counts.get(table.name) ?? 0) + rows.length)
    }
  }
  await handle.write(link({ rows: [...counts.values()].reduce((sum, count) => sum + count, 0) }))
  return Object.fromEntries(counts)
}

async function* pagesOf(db: Db, { name, key }: SavedTable): AsyncGenerator<readonly Row[]> {
  const all = anyTable(db).selectFrom(name).selectAll().orderBy(key).limit(rowsAtOnce)
  let last: Row[string] | undefined
  for (;;) {
    const rows = await (last === undefined ? all : all.where(key, '>', last)).execute()
    if (rows.length > 0) yield rows
    if (rows.length < rowsAtOnce) return
    last = rows.at(-1)?.[key]
  }
}
