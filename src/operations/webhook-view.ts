import { z } from 'zod'
import type { Delivery, Webhook } from '../store/outbox.ts'
import { eventNames, type EventName } from '../webhooks/event.ts'
import { isEncrypted, signatureKinds } from '../webhooks/secret.ts'

const text = z.string()

export const webhookId = text.max(100).meta({ description: 'The id of the webhook.' })
export const eventType = z.enum(eventNames).meta({ id: 'EventType', description: 'What one can listen for. As a CloudEvent its type begins with "wythe.".' })

export const signatureKind = z.enum(signatureKinds).meta({ id: 'WebhookSignature', description: 'How deliveries are signed: by HMAC-SHA256 with a secret that the receiver knows too (`v1` of Standard Webhooks), or by Ed25519 with a key that only the service has (`v1a`); anybody can check that with the public key, and nobody else can sign.' })

export const webhookView = z
  .strictObject({
    webhook: text, target: text, description: text.nullable(), eventTypes: z.array(eventType), projects: z.array(text).nullable(),
    state: z.enum(['active', 'disabled']).meta({ id: 'WebhookState' }),
    disabledAt: text.nullable(),
    disabledBecause: z.enum(['gone', 'unreachable']).meta({ id: 'DisabledBecause', description: 'The receiver answered 410; or an event was given up and nothing has reached the receiver since it happened.' }).nullable(),
    lastDeliveredAt: text.nullable(),
    signature: signatureKind,
    publicKey: text.nullable().meta({ description: 'What signatures by Ed25519 are checked by: "whpk_" and the Base64 of 32 bytes. Null for HMAC.' }),
    secretKept: z.enum(['encrypted', 'inTheClear']).meta({ id: 'SecretKept', description: 'How the newest signing secret or private key lies in the store. Encrypted needs WEBHOOK_KEY in the configuration.' }),
    oldSecretSignsUntil: text.nullable().meta({ description: 'After a change of the secret or key.' }),
    createdAt: text,
  })
  .meta({ id: 'Webhook' })

export const createdWebhook = z
  .strictObject({ webhook: webhookView, secret: text.nullable().meta({ description: 'The signing secret, "whsec_" and Base64. Shown this once. Null for Ed25519, whose private key is never shown.' }) })
  .meta({ id: 'WebhookWithSecret' })

export const deliveryView = z
  .strictObject({
    delivery: text, event: text.meta({ description: 'The id of the event; the receiver saw it as `webhook-id`.' }),
    eventType: z.enum([...eventNames, 'ping']).meta({ id: 'DeliveredType' }),
    state: z.enum(['due', 'delivered', 'givenUp']).meta({ id: 'DeliveryState', description: 'Tried until it is taken, at once and up to nine times more; or given up.' }),
    attempts: z.int(), nextAt: text.nullable().meta({ description: 'When it is tried next; while it is being tried, when others may take it over.' }),
    status: z.int().nullable().meta({ description: 'What the receiver answered last; null when there was no answer.' }), fault: text.nullable(),
    createdAt: text, deliveredAt: text.nullable(),
  })
  .meta({ id: 'Delivery' })

export function viewOf(webhook: Webhook, at: string): z.infer<typeof webhookView> {
  const { id, target, description, eventTypes, projects, secrets, createdAt, disabledAt, disabledBecause, lastDeliveredAt } = webhook
  const [newest, old] = secrets
  return {
    webhook: id, target, description, eventTypes: eventTypes as (typeof eventNames)[number][], projects: projects && [...projects],
    state: disabledAt === null ? 'active' : 'disabled', disabledAt, disabledBecause, lastDeliveredAt, createdAt,
    signature: newest?.publicKey === undefined ? 'hmac' : 'ed25519', publicKey: newest?.publicKey ?? null,
    secretKept: newest && isEncrypted(newest.sealed) ? 'encrypted' : 'inTheClear',
    oldSecretSignsUntil: old?.until && old.until > at ? old.until : null,
  }
}

export function deliveryOf({ id, event, eventType: type, state, attempts, nextAt, status, fault, createdAt, deliveredAt }: Delivery): z.infer<typeof deliveryView> {
  return { delivery: id, event, eventType: type as EventName, state, attempts, nextAt, status, fault, createdAt, deliveredAt }
}
