import { chainStart, type Project, type ProjectChange } from '../journal.ts'
import type { NewEvent } from '../outbox.ts'
import type { Page } from '../records.ts'
import { putOut } from './events.ts'
import type { Db, Flavor, Trx } from './flavor.ts'
import { pageOf } from './page.ts'
import type { ProjectRow } from './schema.ts'

/** False when the id is taken. */
export async function createProject(db: Db, project: Project, events: readonly NewEvent[]): Promise<boolean> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const insert = trx.insertInto('projects').values({ ...project, lastSequence: 0, lastChain: chainStart }).onConflict((conflict) => conflict.doNothing())
    const made = (await insert.returning('id').executeTakeFirst()) !== undefined
    if (made) await putOut(trx, events)
    return made
  })
}

export async function readProject(db: Db, id: string): Promise<Project | undefined> {
  const row = await db.selectFrom('projects').selectAll().where('id', '=', id).executeTakeFirst()
  return row && toProject(row)
}

export async function listProjects(db: Db, { among }: Flavor, ids: readonly string[] | null, after: string | null, first: number): Promise<Page<Project>> {
  const all = db.selectFrom('projects').selectAll().orderBy('id').limit(first + 1)
  const some = ids ? all.where(among('id', ids)) : all
  const rows = await (after === null ? some : some.where('id', '>', after)).execute()
  return pageOf(rows.map(toProject), first)
}

/** What it is called and where it stands; never its id or when it was created. */
export async function changeProject(db: Db, id: string, seenVersion: string, next: Project, events: readonly NewEvent[]): Promise<ProjectChange> {
  const row = await db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const changed = await changeIn(trx, id, seenVersion, next)
    if (changed) await putOut(trx, events)
    return changed
  })
  if (row) return { ok: true, project: toProject(row) }
  return { ok: false, reason: (await readProject(db, id)) ? 'stale' : 'absent' }
}

function changeIn(trx: Trx, id: string, seenVersion: string, { title, jurisdiction, asOf, edition, publication, version, changedAt }: Project): Promise<ProjectRow | undefined> {
  const change = trx.updateTable('projects').set({ title, jurisdiction, asOf, edition, publication, version, changedAt }).where('id', '=', id)
  return change.where('version', '=', seenVersion).returningAll().executeTakeFirst()
}

function toProject({ id, title, jurisdiction, asOf, edition, publication, version, createdAt, changedAt }: ProjectRow): Project {
  return { id, title, jurisdiction, asOf, edition, publication, version, createdAt, changedAt }
}
