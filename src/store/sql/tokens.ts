import type { Scope, Token } from '../records.ts'
import type { Db } from './flavor.ts'
import type { TokenRow } from './schema.ts'

export async function createToken(db: Db, token: Token): Promise<void> {
  await db.insertInto('tokens').values({ ...token, scopes: JSON.stringify(token.scopes) }).execute()
}

export async function findToken(db: Db, secretHash: string): Promise<Token | undefined> {
  const row = await db.selectFrom('tokens').selectAll().where('secretHash', '=', secretHash).executeTakeFirst()
  return row && toToken(row)
}

export async function listTokens(db: Db): Promise<readonly Token[]> {
  return (await db.selectFrom('tokens').selectAll().orderBy('id').execute()).map(toToken)
}

/** False when there is no such token. A token stays revoked since the first time. */
export async function revokeToken(db: Db, id: string, revokedAt: string): Promise<boolean> {
  const token = db.updateTable('tokens').set((set) => ({ revokedAt: set.fn.coalesce('revokedAt', set.val(revokedAt)) })).where('id', '=', id)
  return (await token.returning('id').executeTakeFirst()) !== undefined
}

function toToken(row: TokenRow): Token {
  return { ...row, scopes: JSON.parse(row.scopes) as readonly Scope[] }
}
