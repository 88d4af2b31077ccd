import type { Amendment } from '../../catalog/amendment.ts'
import type { NewEvent } from '../outbox.ts'
import type { AdoptedAmendment, Adoption, Draft } from '../records.ts'
import { putOut } from './events.ts'
import type { Db, Flavor, Trx } from './flavor.ts'
import type { AdoptionRow } from './schema.ts'

/** Adoptions queue up for the next sequence: of two that have seen the same one, the second finds it taken. */
export async function adopt(db: Db, flavor: Flavor, adoption: Omit<AdoptedAmendment, 'sequence'>, { draft, seenSequence, events }: AdoptionTerms): Promise<Adoption> {
  try {
    // Each statement has to see what was committed while it waited, whatever the database has for a default.
    return await db.transaction().setIsolationLevel('read committed').execute((trx) => adoptIn(trx, flavor, { ...adoption, sequence: seenSequence + 1 }, { draft, events }))
  } catch (error) {
    if (error instanceof DraftChanged) return { ok: false, reason: 'stale' }
    throw error
  }
}

export interface AdoptionTerms {
  readonly draft: DraftSeen | null
  readonly seenSequence: number
  readonly events: readonly NewEvent[]
}

type DraftSeen = Pick<Draft, 'id' | 'version'>

/** Takes the adoption back with the rest of its transaction. */
class DraftChanged extends Error {}

async function adoptIn(trx: Trx, { tell }: Flavor, adopted: AdoptedAmendment, { draft, events }: Omit<AdoptionTerms, 'seenSequence'>): Promise<Adoption> {
  const refusal = (await refusalOf(trx, adopted)) ?? ((await append(trx, adopted)) ? undefined : await refusalOf(trx, adopted))
  if (refusal) return { ok: false, reason: refusal }
  if (draft !== null && !(await takeAway(trx, draft))) throw new DraftChanged()
  await putOut(trx, events)
  await tell(trx, adopted.sequence)
  return { ok: true, adopted }
}

async function takeAway(trx: Trx, { id, version }: DraftSeen): Promise<boolean> {
  const { numDeletedRows } = await trx.deleteFrom('drafts').where('id', '=', id).where('version', '=', version).executeTakeFirst()
  return numDeletedRows > 0n
}

export async function adoptionsAfter(db: Db, sequence: number): Promise<readonly AdoptedAmendment[]> {
  const rows = await db.selectFrom('adoptedAmendments').selectAll().where('sequence', '>', sequence).orderBy('sequence').execute()
  return rows.map(toAdopted)
}

/** The sequence of the last adoption; 0 before the first. */
export async function lastSequence(db: Db): Promise<number> {
  const row = await db.selectFrom('adoptedAmendments').select('sequence').orderBy('sequence', 'desc').limit(1).executeTakeFirst()
  return row?.sequence ?? 0
}

/** Looks for the amendment last, so that one that was adopted meanwhile is not taken for somebody else's. */
async function refusalOf(trx: Trx, { amendment, sequence }: AdoptedAmendment): Promise<'exists' | 'behind' | undefined> {
  const inTurn = (await lastSequence(trx)) === sequence - 1
  const same = await trx.selectFrom('adoptedAmendments').select('sequence').where('amendmentId', '=', amendment.amendment).executeTakeFirst()
  if (same) return 'exists'
  return inTurn ? undefined : 'behind'
}

/** Waits for whoever is adopting at the same time; false when they took the sequence or adopted this amendment. */
async function append(trx: Trx, adopted: AdoptedAmendment): Promise<boolean> {
  const insert = trx.insertInto('adoptedAmendments').values(toRow(adopted)).onConflict((conflict) => conflict.doNothing())
  return (await insert.returning('sequence').executeTakeFirst()) !== undefined
}

function toRow(adopted: AdoptedAmendment): AdoptionRow {
  return { ...adopted, amendmentId: adopted.amendment.amendment, amendment: JSON.stringify(adopted.amendment) }
}

function toAdopted({ sequence, amendment, digest, adoptedAt, adoptedBy }: AdoptionRow): AdoptedAmendment {
  return { sequence, amendment: JSON.parse(amendment) as Amendment, digest, adoptedAt, adoptedBy }
}
