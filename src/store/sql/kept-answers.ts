import type { Claimed, ClaimLimits, RequestClaim } from '../kept-answers.ts'
import type { Db } from './flavor.ts'

export async function claimRequest(db: Db, claim: RequestClaim, { expired, abandoned }: ClaimLimits): Promise<Claimed> {
  await db.deleteFrom('keptAnswers').where('startedAt', '<', expired).execute()
  await db.deleteFrom('keptAnswers').where('id', '=', claim.id).where('sealed', 'is', null).where('startedAt', '<', abandoned).execute()
  const insert = db.insertInto('keptAnswers').values({ ...claim, sealed: null }).onConflict((conflict) => conflict.doNothing())
  if (await insert.returning('id').executeTakeFirst()) return { state: 'claimed' }
  const row = await db.selectFrom('keptAnswers').selectAll().where('id', '=', claim.id).executeTakeFirst()
  // Given back since: whoever sends it once more will find it free.
  if (!row) return { state: 'running', fingerprint: claim.fingerprint }
  return row.sealed === null ? { state: 'running', fingerprint: row.fingerprint } : { state: 'answered', fingerprint: row.fingerprint, sealed: row.sealed }
}

export async function keepAnswer(db: Db, { id, startedAt }: RequestClaim, sealed: string): Promise<void> {
  await db.updateTable('keptAnswers').set({ sealed }).where('id', '=', id).where('startedAt', '=', startedAt).where('sealed', 'is', null).execute()
}

export async function releaseRequest(db: Db, { id, startedAt }: RequestClaim): Promise<void> {
  await db.deleteFrom('keptAnswers').where('id', '=', id).where('startedAt', '=', startedAt).where('sealed', 'is', null).execute()
}
