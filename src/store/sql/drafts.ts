import type { Draft, DraftChange, Page } from '../records.ts'
import type { Db, Flavor } from './flavor.ts'
import { pageOf } from './page.ts'
import type { DraftRow } from './schema.ts'

export async function createDraft(db: Db, draft: Draft): Promise<void> {
  await db.insertInto('drafts').values(toRow(draft)).execute()
}

export async function readDraft(db: Db, id: string): Promise<Draft | undefined> {
  const row = await db.selectFrom('drafts').selectAll().where('id', '=', id).executeTakeFirst()
  return row && toDraft(row)
}

export async function listDrafts(db: Db, { among }: Flavor, jurisdictions: readonly string[] | null, after: string | null, first: number): Promise<Page<Draft>> {
  const all = db.selectFrom('drafts').selectAll().orderBy('id').limit(first + 1)
  const some = jurisdictions ? all.where(among('jurisdiction', jurisdictions)) : all
  const rows = await (after === null ? some : some.where('id', '>', after)).execute()
  return pageOf(rows.map(toDraft), first)
}

/** Whose it is, what it says and when that was; never its id or when it was created. */
export async function changeDraft(db: Db, id: string, seenVersion: string, next: Draft): Promise<DraftChange> {
  const { jurisdiction, document, version, changedAt } = toRow(next)
  const draft = db.updateTable('drafts').set({ jurisdiction, document, version, changedAt }).where('id', '=', id)
  const row = await draft.where('version', '=', seenVersion).returningAll().executeTakeFirst()
  return row ? { ok: true, draft: toDraft(row) } : refusal(db, id)
}

export async function deleteDraft(db: Db, id: string, seenVersion: string): Promise<DraftChange> {
  const row = await db.deleteFrom('drafts').where('id', '=', id).where('version', '=', seenVersion).returningAll().executeTakeFirst()
  return row ? { ok: true, draft: toDraft(row) } : refusal(db, id)
}

async function refusal(db: Db, id: string): Promise<DraftChange> {
  return { ok: false, reason: (await readDraft(db, id)) ? 'stale' : 'absent' }
}

function toRow(draft: Draft): DraftRow {
  return { ...draft, document: JSON.stringify(draft.document) }
}

function toDraft(row: DraftRow): Draft {
  return { ...row, document: JSON.parse(row.document) as unknown }
}
