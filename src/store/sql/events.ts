import type { NewEvent } from '../outbox.ts'
import type { Trx } from './flavor.ts'

interface Listening {
  readonly id: string
  readonly eventTypes: readonly string[]
  readonly projects: readonly string[] | null
}

/** Puts events into the outbox, each for whoever listens for it; what nobody listens for is not kept. */
export async function putOut(trx: Trx, events: readonly NewEvent[]): Promise<void> {
  if (events.length === 0) return
  const listening = await listeners(trx)
  for (const event of events) {
    const receivers = listening.filter((one) => wants(one, event)).map(({ id }) => id)
    if (receivers.length > 0) await enqueue(trx, event, receivers)
  }
}

/** Numbers an event among those of its source and makes it due for each receiver. Events of one source wait for each other, so that their numbers have the order in which they are committed. */
export async function enqueue(trx: Trx, { id, type, source, at, text }: NewEvent, receivers: readonly string[]): Promise<void> {
  const next = trx.insertInto('eventSources').values({ source, lastSequence: 1 })
    .onConflict((conflict) => conflict.column('source').doUpdateSet((row) => ({ lastSequence: row('eventSources.lastSequence', '+', 1) })))
  const { lastSequence } = await next.returning('lastSequence').executeTakeFirstOrThrow()
  await trx.insertInto('events').values({ id, type, text: text(lastSequence), createdAt: at }).execute()
  const due = receivers.map((webhook) => ({ id: deliveryId(id, webhook), webhook, event: id, createdAt: at, state: 'due' as const, attempts: 0, nextAt: at, status: null, fault: null, deliveredAt: null }))
  await trx.insertInto('deliveries').values(due).execute()
}

/** Of an event to a webhook, the first time. */
export function deliveryId(event: string, webhook: string): string {
  return `${event}~${webhook}`
}

async function listeners(trx: Trx): Promise<readonly Listening[]> {
  const rows = await trx.selectFrom('webhooks').select(['id', 'eventTypes', 'projects']).where('disabledAt', 'is', null).orderBy('id').execute()
  return rows.map(({ id, eventTypes, projects }) => ({ id, eventTypes: JSON.parse(eventTypes) as readonly string[], projects: projects === null ? null : (JSON.parse(projects) as readonly string[]) }))
}

function wants({ eventTypes, projects }: Listening, { type, project }: NewEvent): boolean {
  return eventTypes.includes(type) && (projects === null || project === null || projects.includes(project))
}
