import { readBackup, BackupDamaged, type BackupHead, type BackupLine } from './backup-lines.ts'
import type { RowCounts } from './back-up.ts'
import { brokenLink, chainStart } from './journal.ts'
import type { RecordsPlace } from './open-records.ts'
import type { Db } from './sql/flavor.ts'
import { readEntries } from './sql/journal.ts'
import { migrate, migrationNames } from './sql/migrate.ts'
import { withDatabase, type FoundDatabase } from './sql/open-database.ts'
import { anyTable, savedTables } from './sql/saved-tables.ts'

export interface Restored {
  readonly takenAt: string
  readonly rows: RowCounts
  /** Journals whose chain does not hold, and from which entry on; they were so when they were backed up. */
  readonly broken: readonly { readonly project: string; readonly sequence: number }[]
}

/** Puts a backup into an empty store of either kind: all of it or nothing. A damaged file is refused before the store is touched. */
export async function restore(place: RecordsPlace, file: string): Promise<Restored> {
  const head = await verified(file)
  return withDatabase(place, true, async (found) => {
    await prepare(found, head)
    const rows = await found.db.transaction().execute(async (trx) => {
      await found.flavor.lockMigrations(trx)
      await refuseUnlessEmpty(trx)
      return fill(trx, file)
    })
    await migrate(found.db, found.flavor)
    return { takenAt: head.takenAt, rows, broken: await brokenJournals(found.db) }
  })
}

async function verified(file: string): Promise<BackupHead> {
  let head: BackupHead | undefined
  const known = new Set(savedTables.map(({ name }) => name))
  for await (const { line, content } of readBackup(file, (found) => { head = refuseNewer(found) })) {
    if (!known.has(content.table)) throw new BackupDamaged(line, `there is no table "${content.table}"`)
  }
  if (!head) throw new BackupDamaged(1, 'this is not a backup')
  return head
}

function refuseNewer(head: BackupHead): BackupHead {
  const unknown = head.migrations.filter((name) => !migrationNames.includes(name))
  if (unknown.length > 0) throw new Error(`The backup was made by a newer version of this service (${unknown.join(', ')}); restore it with that version`)
  return head
}

/** Gives the store the tables of the backup; it may be younger than they are only where it has none yet. */
async function prepare({ db, flavor }: FoundDatabase, { migrations }: BackupHead): Promise<void> {
  await migrate(db, flavor, migrations)
  const applied = (await db.selectFrom('appliedMigrations').select('name').execute()).map(({ name }) => name)
  const beyond = applied.filter((name) => !migrations.includes(name))
  if (beyond.length > 0) throw new Error(`a service has been started on them that is newer than the backup (${beyond.join(', ')}); restore it into a place that no service has used`)
}

async function refuseUnlessEmpty(db: Db): Promise<void> {
  const there = new Set((await db.introspection.getTables()).map(({ name }) => name.replaceAll(/_(\w)/g, (_, letter: string) => letter.toUpperCase())))
  for (const { name } of savedTables) {
    if (!there.has(name)) continue
    if (await anyTable(db).selectFrom(name).selectAll().limit(1).executeTakeFirst()) throw new Error(`they are not empty: there is something in "${name}"; a backup is restored into an empty place only`)
  }
}

/** As many rows go into one statement; databases take only so many parameters. */
const rowsAtOnce = 200

async function fill(db: Db, file: string): Promise<RowCounts> {
  const counts = new Map(savedTables.map(({ name }) => [name, 0]))
  let waiting: BackupLine[] = []
  for await (const line of readBackup(file, () => undefined)) {
    if (waiting.length === rowsAtOnce || waiting[0]?.content.table !== line.content.table) {
      await insert(db, waiting)
      waiting = []
    }
    waiting.push(line)
    counts.set(line.content.table, (counts.get(line.content.table) ?? 0) + 1)
  }
  await insert(db, waiting)
  return Object.fromEntries(counts)
}

async function insert(db: Db, lines: readonly BackupLine[]): Promise<void> {
  const [first] = lines
  if (!first) return
  try {
    await anyTable(db).insertInto(first.content.table).values(lines.map(({ content }) => content.row)).execute()
  } catch (error) {
    throw new Error(`lines ${first.line} to ${lines.at(-1)?.line ?? first.line} of the backup are refused: ${error instanceof Error ? error.message : String(error)}`, { cause: error })
  }
}

async function brokenJournals(db: Db): Promise<Restored['broken']> {
  const projects = await db.selectFrom('projects').select(['id', 'lastSequence', 'lastChain']).orderBy('id').execute()
  const broken: { project: string; sequence: number }[] = []
  for (const { id, lastSequence, lastChain } of projects) {
    const sequence = await brokenAt(db, id, { lastSequence, lastChain })
    if (sequence !== undefined) broken.push({ project: id, sequence })
  }
  return broken
}

const entriesAtOnce = 1_000

/** The first entry of a journal that is not as it was written; one after the last where its end is missing. */
async function brokenAt(db: Db, project: string, last: { readonly lastSequence: number; readonly lastChain: string }): Promise<number | undefined> {
  let [sequence, chain] = [0, chainStart]
  for (;;) {
    const entries = await readEntries(db, project, null, sequence, entriesAtOnce)
    const broken = entries.find((entry, index) => entry.sequence !== sequence + index + 1)?.sequence ?? brokenLink(entries, chain)
    if (broken !== undefined) return broken
    sequence = entries.at(-1)?.sequence ?? sequence
    chain = entries.at(-1)?.chain ?? chain
    if (entries.length < entriesAtOnce) return sequence === last.lastSequence && chain === last.lastChain ? undefined : sequence + 1
  }
}
