import type { Claim, ClaimTerms, Delivery, DeliveryState, NewEvent, Settled, Settlement } from '../outbox.ts'
import type { Page } from '../records.ts'
import { deliveryId, enqueue } from './events.ts'
import type { Db, Flavor, Trx } from './flavor.ts'
import type { DeliveryRow } from './schema.ts'
import { secretsIn } from './webhooks.ts'

export async function sendTo(db: Db, webhook: string, event: NewEvent): Promise<Delivery> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    await enqueue(trx, event, [webhook])
    return withType(trx).where('deliveries.id', '=', deliveryId(event.id, webhook)).executeTakeFirstOrThrow()
  })
}

export async function replay(db: Db, webhook: string, delivery: string, { id, at }: { readonly id: string; readonly at: string }): Promise<Delivery | undefined> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const first = await trx.selectFrom('deliveries').select('event').where('id', '=', delivery).where('webhook', '=', webhook).executeTakeFirst()
    if (!first) return undefined
    await trx.insertInto('deliveries').values({ id, webhook, event: first.event, createdAt: at, state: 'due', attempts: 0, nextAt: at, status: null, fault: null, deliveredAt: null }).execute()
    return withType(trx).where('deliveries.id', '=', id).executeTakeFirstOrThrow()
  })
}

/** The cursor is the moment and the id of the last one shown. */
export async function listDeliveries(db: Db, webhook: string, { state, after, first }: { readonly state: DeliveryState | null; readonly after: string | null; readonly first: number }): Promise<Page<Delivery>> {
  const all = withType(db).where('deliveries.webhook', '=', webhook).orderBy('deliveries.createdAt', 'desc').orderBy('deliveries.id', 'desc').limit(first + 1)
  const some = state === null ? all : all.where('deliveries.state', '=', state)
  const [at = '', id = ''] = (after ?? '').split(' ')
  const later = after === null ? some : some.where((row) => row.or([row('deliveries.createdAt', '<', at), row.and([row('deliveries.createdAt', '=', at), row('deliveries.id', '<', id)])]))
  const rows = await later.execute()
  const items = rows.slice(0, first)
  const last = items.at(-1)
  return { items, next: last && rows.length > first ? `${last.createdAt} ${last.id}` : null }
}

export async function claim(db: Db, { among, lockFree }: Flavor, { now, leaseUntil, passOver }: ClaimTerms): Promise<Claim | undefined> {
  const due = (from: Db) => from.selectFrom('deliveries').innerJoin('webhooks', 'webhooks.id', 'deliveries.webhook').innerJoin('events', 'events.id', 'deliveries.event')
    .where('deliveries.state', '=', 'due').where('deliveries.nextAt', '<=', now).where('webhooks.disabledAt', 'is', null)
    .where((row) => row.not(among('deliveries.webhook', passOver)))
    .orderBy('deliveries.nextAt').orderBy('deliveries.id').limit(1)
  // Most looks find nothing, and a look alone writes nothing and waits for nobody.
  if (!(await due(db).select('deliveries.id').executeTakeFirst())) return undefined
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const found = await lockFree(due(trx).selectAll('deliveries').select(['events.type as eventType', 'events.text', 'webhooks.target', 'webhooks.secrets'])).executeTakeFirst()
    if (!found) return undefined
    const { text, target, secrets, ...delivery } = found
    const attempts = delivery.attempts + 1
    await trx.updateTable('deliveries').set({ attempts, nextAt: leaseUntil }).where('id', '=', delivery.id).execute()
    return { delivery: { ...delivery, attempts, nextAt: leaseUntil }, text, webhook: { id: delivery.webhook, target, secrets: secretsIn(secrets) } }
  })
}

/** By the number of the attempt one knows whether somebody else has taken over since. */
export async function settle(db: Db, { id, attempts }: Pick<Delivery, 'id' | 'attempts'>, settlement: Settlement): Promise<Settled> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const change = trx.updateTable('deliveries').set(outcomeOf(settlement, attempts)).where('id', '=', id).where('state', '=', 'due').where('attempts', '=', attempts)
    const row = await change.returningAll().executeTakeFirst()
    return row ? { counted: true, disabled: await markWebhook(trx, row, settlement) } : { counted: false, disabled: false }
  })
}

function outcomeOf(settlement: Settlement, attempts: number): Partial<DeliveryRow> {
  if (settlement.kind === 'delivered') return { state: 'delivered', nextAt: null, status: settlement.status, fault: null, deliveredAt: settlement.at }
  if (settlement.kind === 'released') return { attempts: attempts - 1, nextAt: settlement.nextAt }
  const { status, fault } = settlement
  return settlement.kind === 'again' ? { nextAt: settlement.nextAt, status, fault } : { state: 'givenUp', nextAt: null, status, fault }
}

/** True when it was disabled now. */
async function markWebhook(trx: Trx, { webhook, createdAt }: DeliveryRow, settlement: Settlement): Promise<boolean> {
  if (settlement.kind === 'delivered') await trx.updateTable('webhooks').set({ lastDeliveredAt: settlement.at }).where('id', '=', webhook).execute()
  if (settlement.kind !== 'gone' && settlement.kind !== 'givenUp') return false
  const disabledBecause = settlement.kind === 'gone' ? 'gone' : 'unreachable'
  const disable = trx.updateTable('webhooks').set({ disabledAt: settlement.at, disabledBecause }).where('id', '=', webhook).where('disabledAt', 'is', null)
  const silent = disable.where('enabledAt', '<=', createdAt).where((row) => row.or([row('lastDeliveredAt', 'is', null), row('lastDeliveredAt', '<', createdAt)]))
  return (await (settlement.kind === 'gone' ? disable : silent).returning('id').executeTakeFirst()) !== undefined
}

export async function forgetDeliveries(db: Db, before: string): Promise<number> {
  return db.transaction().setIsolationLevel('read committed').execute(async (trx) => {
    const active = trx.selectFrom('webhooks').select('id').where('disabledAt', 'is', null)
    const old = trx.deleteFrom('deliveries').where('createdAt', '<', before).where((row) => row.or([row('state', '!=', 'due'), row('webhook', 'not in', active)]))
    const { numDeletedRows } = await old.executeTakeFirst()
    await trx.deleteFrom('events').where('createdAt', '<', before).where((row) => row.not(row.exists(row.selectFrom('deliveries').select('deliveries.id').whereRef('deliveries.event', '=', 'events.id')))).execute()
    return Number(numDeletedRows)
  })
}

function withType(db: Db) {
  return db.selectFrom('deliveries').innerJoin('events', 'events.id', 'deliveries.event').selectAll('deliveries').select('events.type as eventType')
}
