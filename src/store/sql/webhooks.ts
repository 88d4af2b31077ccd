import type { NewSecret, SealedSecret, Webhook } from '../outbox.ts'
import type { Page } from '../records.ts'
import type { Db, Trx } from './flavor.ts'
import { pageOf } from './page.ts'
import type { WebhookRow } from './schema.ts'

export async function createWebhook(db: Db, webhook: Webhook, most: number): Promise<boolean> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const { count } = await trx.selectFrom('webhooks').select((row) => row.fn.countAll().as('count')).executeTakeFirstOrThrow()
    if (Number(count) >= most) return false
    await trx.insertInto('webhooks').values(toRow(webhook)).execute()
    return true
  })
}

export async function readWebhook(db: Db, id: string): Promise<Webhook | undefined> {
  const row = await db.selectFrom('webhooks').selectAll().where('id', '=', id).executeTakeFirst()
  return row && toWebhook(row)
}

export async function listWebhooks(db: Db, after: string | null, first: number): Promise<Page<Webhook>> {
  const all = db.selectFrom('webhooks').selectAll().orderBy('id').limit(first + 1)
  const rows = await (after === null ? all : all.where('id', '>', after)).execute()
  return pageOf(rows.map(toWebhook), first)
}

export async function deleteWebhook(db: Db, id: string): Promise<boolean> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    // What is put out for it at this very moment stays behind, is claimed by nobody and forgotten in time.
    await trx.deleteFrom('deliveries').where('webhook', '=', id).execute()
    const { numDeletedRows } = await trx.deleteFrom('webhooks').where('id', '=', id).executeTakeFirst()
    return numDeletedRows > 0n
  })
}

/** As many secrets sign at once, at most. */
const mostSecrets = 3

export async function rotateSecret(db: Db, id: string, secret: NewSecret, times: { readonly now: string; readonly oldUntil: string }): Promise<Webhook | undefined> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const row = await touched(trx, id)
    if (!row) return undefined
    const before = toWebhook(row).secrets.filter(({ until }) => until === null || until > times.now)
    const old = before.map((one) => ({ ...one, until: one.until ?? times.oldUntil }))
    const secrets: readonly SealedSecret[] = [{ ...secret, until: null }, ...old].slice(0, mostSecrets)
    const changed = await trx.updateTable('webhooks').set({ secrets: JSON.stringify(secrets) }).where('id', '=', id).returningAll().executeTakeFirstOrThrow()
    return toWebhook(changed)
  })
}

export async function enableWebhook(db: Db, id: string, at: string): Promise<Webhook | undefined> {
  const enable = db.updateTable('webhooks').set({ disabledAt: null, disabledBecause: null, enabledAt: at }).where('id', '=', id).where('disabledAt', 'is not', null)
  const row = await enable.returningAll().executeTakeFirst()
  return row ? toWebhook(row) : readWebhook(db, id)
}

/** Its row, locked until the transaction ends. */
function touched(trx: Trx, id: string): Promise<WebhookRow | undefined> {
  return trx.updateTable('webhooks').set((row) => ({ id: row.ref('id') })).where('id', '=', id).returningAll().executeTakeFirst()
}

function toRow(webhook: Webhook): WebhookRow {
  return { ...webhook, eventTypes: JSON.stringify(webhook.eventTypes), projects: webhook.projects && JSON.stringify(webhook.projects), secrets: JSON.stringify(webhook.secrets) }
}

function toWebhook(row: WebhookRow): Webhook {
  const projects = row.projects === null ? null : (JSON.parse(row.projects) as readonly string[])
  return { ...row, eventTypes: JSON.parse(row.eventTypes) as readonly string[], projects, secrets: secretsIn(row.secrets) }
}

export function secretsIn(text: string): readonly SealedSecret[] {
  return JSON.parse(text) as readonly SealedSecret[]
}
