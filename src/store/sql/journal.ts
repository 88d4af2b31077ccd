import { linkOf, type Appended, type Appending, type Entry, type NewEntry, type Received, type Seen, type EventsOf } from '../journal.ts'
import type { Page } from '../records.ts'
import { putOut } from './events.ts'
import type { Db, Flavor, Trx } from './flavor.ts'
import { pageOf } from './page.ts'
import type { EntryRow } from './schema.ts'

interface Posting {
  readonly project: string
  readonly entries: readonly NewEntry[]
  readonly received: Received
  readonly seen: Seen
  readonly eventsOf: EventsOf
}

/** Appends entries to the journal of a project. Whoever appends at the same time waits; each entry is there once, however often it is sent. */
export async function appendEntries(db: Db, { among }: Flavor, { project, entries, received, seen, eventsOf }: Posting): Promise<Appending> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const last = await takeTurn(trx, project)
    if (!last) return { ok: false, reason: 'absent' }
    if (await hasGrown(trx, project, seen)) return { ok: false, reason: 'grown' }
    const known = await trx.selectFrom('entries').selectAll().where(among('id', entries.map(({ id }) => id))).execute()
    const placed = placeAll(entries, new Map(known.map((row) => [row.id, toEntry(row)])), { project, ...received, ...last })
    const fresh = placed.flatMap((one) => (one.outcome === 'recorded' ? [one.entry] : []))
    for (const some of inParts(fresh)) await trx.insertInto('entries').values(some.map(toRow)).execute()
    const newest = fresh.at(-1)
    if (newest) await trx.updateTable('projects').set({ lastSequence: newest.sequence, lastChain: newest.chain }).where('id', '=', project).execute()
    await putOut(trx, eventsOf(placed))
    return { ok: true, appended: placed }
  })
}

export async function readEntries(db: Db, project: string, opening: string | null, afterSequence: number, first: number): Promise<readonly Entry[]> {
  const all = db.selectFrom('entries').selectAll().where('project', '=', project).where('sequence', '>', afterSequence).orderBy('sequence').limit(first)
  const rows = await (opening === null ? all : all.where('opening', '=', opening)).execute()
  return rows.map(toEntry)
}

/** The ids of openings are letters, digits and a few signs, so that no id comes before "". */
export async function listOpenings(db: Db, project: string, after: string | null, first: number): Promise<Page<string>> {
  const rows = await db.selectFrom('entries').select('opening as id').distinct().where('project', '=', project).where('opening', '>', after ?? '').orderBy('opening').limit(first + 1).execute()
  const { items, next } = pageOf(rows, first)
  return { items: items.map(({ id }) => id), next }
}

interface Last {
  readonly lastSequence: number
  readonly lastChain: string
}

/** Touching the row of the project holds back everybody else who appends to it until this transaction ends. */
async function takeTurn(trx: Trx, project: string): Promise<Last | undefined> {
  return trx.updateTable('projects').set((row) => ({ lastSequence: row.ref('lastSequence') })).where('id', '=', project).returning(['lastSequence', 'lastChain']).executeTakeFirst()
}

async function hasGrown(trx: Trx, project: string, seen: Seen): Promise<boolean> {
  for (const [opening, sequence] of seen) {
    const later = trx.selectFrom('entries').select('sequence').where('project', '=', project).where('opening', '=', opening).where('sequence', '>', sequence)
    if (await later.limit(1).executeTakeFirst()) return true
  }
  return false
}

type Place = Received & Last & { readonly project: string }

/** Gives each new entry its number and its link, in the order in which they came. */
function placeAll(entries: readonly NewEntry[], known: Map<string, Entry>, { lastSequence, lastChain, ...place }: Place): readonly Appended[] {
  let [sequence, chain] = [lastSequence, lastChain]
  return entries.map((entry): Appended => {
    const same = known.get(entry.id)
    if (same) return same.digest === entry.digest ? { outcome: 'alreadyRecorded', entry: same } : { outcome: 'idTaken' }
    sequence += 1
    chain = linkOf(chain, entry)
    const recorded: Entry = { ...entry, ...place, sequence, chain }
    known.set(entry.id, recorded)
    return { outcome: 'recorded', entry: recorded }
  })
}

/** Databases take only so many parameters in one statement. */
const rowsInPart = 500

function inParts<T>(all: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / rowsInPart) }, (_, index) => all.slice(index * rowsInPart, (index + 1) * rowsInPart))
}

function toRow(entry: Entry): EntryRow {
  return { ...entry, body: JSON.stringify(entry.body), judged: entry.judged === null ? null : JSON.stringify(entry.judged) }
}

function toEntry(row: EntryRow): Entry {
  return { ...row, body: JSON.parse(row.body) as unknown, judged: row.judged === null ? null : (JSON.parse(row.judged) as unknown) }
}

