import { z } from 'zod'
import type { Webhook } from '../store/outbox.ts'
import { pingEvent } from './events.ts'
import { defineRecordOperation, failure, notFound, type Answer, type RecordDependencies } from './operation.ts'
import { pageOf, paging } from './page.ts'
import { deliveryOf, deliveryView, webhookId } from './webhook-view.ts'

const deliveryId = z.string().max(200).meta({ description: 'The id of the delivery.' })
const state = z.enum(['due', 'delivered', 'givenUp']).nullish().meta({ description: 'Only deliveries in this state.' })

export const listDeliveries = defineRecordOperation({
  name: 'listDeliveries',
  summary: 'List the deliveries of a webhook',
  description: 'What was sent, what the receiver answered and when it is tried again, newest first. What has ended is forgotten after 30 days.',
  input: z.strictObject({ webhook: webhookId, state, ...paging }),
  output: pageOf(deliveryView, 'DeliveryPage'),
  keyOf: ({ createdAt, delivery }) => inCursor(`${createdAt} ${delivery}`),
  answer: async (deps, { webhook, state: wanted, first, after }) => {
    const found = await managed(deps, webhook)
    if (!found.ok) return found
    const cursor = after ? Buffer.from(after, 'base64url').toString() : null
    if (cursor !== null && !/^\S+ \S+$/.test(cursor)) return failure('invalidInput', [{ code: 'notAllowed', pointer: '/after', detail: 'is not a cursor of this list. Start again without it.' }])
    const { items, next } = await deps.records.listDeliveries(webhook, wanted ?? null, cursor, first ?? 50)
    return { ok: true, value: { items: items.map(deliveryOf), nextCursor: next && inCursor(next) } }
  },
})

export const pingWebhook = defineRecordOperation({
  name: 'pingWebhook',
  summary: 'Try a webhook',
  description: 'Sends a ping on the way that every event takes. The list of deliveries tells what became of it.',
  input: z.strictObject({ webhook: webhookId }),
  output: deliveryView,
  answer: async (deps, { webhook }) => {
    const found = await activeOne(deps, webhook)
    if (!found.ok) return found
    return { ok: true, value: deliveryOf(await deps.records.sendTo(webhook, pingEvent(deps, webhook, deps.now().toISOString()))) }
  },
})

export const replayDelivery = defineRecordOperation({
  name: 'replayDelivery',
  summary: 'Send an event again',
  description: 'Sends the event of a delivery once more, word for word and under the same id, as a delivery of its own. A receiver that took it already will pass it over.',
  input: z.strictObject({ webhook: webhookId, delivery: deliveryId }),
  output: deliveryView,
  answer: async (deps, { webhook, delivery }) => {
    const found = await activeOne(deps, webhook)
    if (!found.ok) return found
    const again = await deps.records.replay(webhook, delivery, { id: deps.newId(), at: deps.now().toISOString() })
    return again ? { ok: true, value: deliveryOf(again) } : notFound('delivery', delivery)
  },
})

/** The store goes on after a moment and an id, as one text. */
function inCursor(place: string): string {
  return Buffer.from(place).toString('base64url')
}

async function managed({ records }: RecordDependencies, id: string): Promise<Answer<Webhook>> {
  const webhook = await records.readWebhook(id)
  return webhook ? { ok: true, value: webhook } : notFound('webhook', id)
}

async function activeOne(deps: RecordDependencies, id: string): Promise<Answer<Webhook>> {
  const found = await managed(deps, id)
  if (!found.ok || found.value.disabledAt === null) return found
  const why = found.value.disabledBecause === 'gone' ? 'because the receiver answered 410' : 'because it could not be reached'
  return failure('webhookDisabled', [{ code: 'webhookDisabled', pointer: '', detail: `It was disabled at ${found.value.disabledAt} ${why}.` }])
}
