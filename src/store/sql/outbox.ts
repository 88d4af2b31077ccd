import type { Outbox } from '../outbox.ts'
import { claim, forgetDeliveries, listDeliveries, replay, sendTo, settle } from './deliveries.ts'
import type { Db, Flavor } from './flavor.ts'
import { createWebhook, deleteWebhook, enableWebhook, listWebhooks, readWebhook, rotateSecret } from './webhooks.ts'

/** The outbox over either database. */
export function sqlOutbox(db: Db, flavor: Flavor): Outbox {
  return {
    createWebhook: (webhook, most) => createWebhook(db, webhook, most),
    readWebhook: (id) => readWebhook(db, id),
    listWebhooks: (after, first) => listWebhooks(db, after, first),
    deleteWebhook: (id) => deleteWebhook(db, id),
    rotateSecret: (id, secret, now, oldUntil) => rotateSecret(db, id, secret, { now, oldUntil }),
    enableWebhook: (id, at) => enableWebhook(db, id, at),

    sendTo: (webhook, event) => sendTo(db, webhook, event),
    replay: (webhook, delivery, again) => replay(db, webhook, delivery, again),
    listDeliveries: (webhook, state, after, first) => listDeliveries(db, webhook, { state, after, first }),

    claim: (terms) => claim(db, flavor, terms),
    settle: (delivery, settlement) => settle(db, delivery, settlement),
    forgetDeliveries: (before) => forgetDeliveries(db, before),
  }
}
