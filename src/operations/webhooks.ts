import { z } from 'zod'
import type { NewSecret, Webhook } from '../store/outbox.ts'
import { eventNames } from '../webhooks/event.ts'
import { publicKeyOf } from '../webhooks/key-pair.ts'
import { newSigningSecret, type Sealer, type SignatureKind } from '../webhooks/secret.ts'
import { targetFault } from '../webhooks/target.ts'
import type { Problem } from '../opening/problem.ts'
import { defineRecordOperation, failure, notFound, type RecordDependencies } from './operation.ts'
import { pageOf, paging } from './page.ts'
import { createdWebhook, eventType, signatureKind, webhookId, webhookView, viewOf } from './webhook-view.ts'

const text = z.string()

/** Every one of them is looked at whenever something happens. */
const mostWebhooks = 100

export const createWebhook = defineRecordOperation({
  name: 'createWebhook',
  makes: true,
  summary: 'Make a webhook',
  description: 'Sends events to an address from now on: CloudEvents in JSON, signed as Standard Webhooks says, by a secret that is shown once or by a key of which only the public half is shown. Each event is delivered at least once and may overtake another; what is not taken is tried again for about three days.',
  input: z
    .strictObject({
      target: text.max(2_000).meta({ description: 'An https address on the public network that answers 2xx within 15 seconds. Redirections are not followed.' }),
      eventTypes: z.array(eventType).min(1).max(eventNames.length).nullish().meta({ description: 'All when left out.' }),
      projects: z.array(text.min(1).max(100)).min(1).max(50).nullish().meta({ description: 'Events of these projects only. Adopted amendments and kept evaluations belong to no project and are not narrowed by it.' }),
      description: text.min(1).max(200).nullish(),
      signature: signatureKind.nullish().meta({ description: 'hmac when left out. It stays as long as the webhook.' }),
    })
    .meta({ id: 'WebhookRequest' }),
  output: createdWebhook,
  answer: async (deps, { target, eventTypes, projects, description, signature }) => {
    const problems = [...targetProblems(deps, target), ...(await projectProblems(deps, projects ?? []))]
    if (problems.length > 0) return failure('invalidInput', problems)
    const [id, at] = [deps.newId(), deps.now().toISOString()]
    const { kept, shown } = secretFor(deps.webhooks.sealer, id, signature ?? 'hmac')
    const webhook: Webhook = {
      id, target, description: description ?? null, eventTypes: [...new Set(eventTypes ?? eventNames)], projects: projects ? [...new Set(projects)] : null,
      secrets: [{ ...kept, until: null }], createdAt: at, createdBy: deps.caller.token ?? '',
      enabledAt: at, disabledAt: null, disabledBecause: null, lastDeliveredAt: null,
    }
    if (await deps.records.createWebhook(webhook, mostWebhooks)) return { ok: true, value: { webhook: viewOf(webhook, at), secret: shown } }
    return failure('invalidInput', [{ code: 'notAllowed', pointer: '', detail: `There are ${mostWebhooks} webhooks, as many as there may be. Delete one that is not used.` }])
  },
})

export const listWebhooks = defineRecordOperation({
  name: 'listWebhooks',
  summary: 'List webhooks',
  description: 'Where events are sent, and which; without the secrets.',
  input: z.strictObject(paging),
  output: pageOf(webhookView, 'WebhookPage'),
  keyOf: ({ webhook }) => webhook,
  answer: async ({ records, now }, { first, after }) => {
    const { items, next } = await records.listWebhooks(after ?? null, first ?? 50)
    const at = now().toISOString()
    return { ok: true, value: { items: items.map((webhook) => viewOf(webhook, at)), nextCursor: next } }
  },
})

export const readWebhook = defineRecordOperation({
  name: 'readWebhook',
  summary: 'Read a webhook',
  description: 'Where it leads, what it listens for, and whether it is reached.',
  input: z.strictObject({ webhook: webhookId }),
  output: webhookView,
  answer: async ({ records, now }, { webhook: id }) => {
    const webhook = await records.readWebhook(id)
    return webhook ? { ok: true, value: viewOf(webhook, now().toISOString()) } : notFound('webhook', id)
  },
})

export const deleteWebhook = defineRecordOperation({
  name: 'deleteWebhook',
  summary: 'Delete a webhook',
  description: 'Ends it at once. What was still on its way to it is dropped; an attempt that is under way may still arrive.',
  input: z.strictObject({ webhook: webhookId }),
  output: z.strictObject({ webhook: text, deletedAt: text }).meta({ id: 'DeletedWebhook' }),
  answer: async ({ records, now }, { webhook }) => {
    return (await records.deleteWebhook(webhook)) ? { ok: true, value: { webhook, deletedAt: now().toISOString() } } : notFound('webhook', webhook)
  },
})

export const enableWebhook = defineRecordOperation({
  name: 'enableWebhook',
  summary: 'Enable a webhook again',
  description: 'Sends events again, first what was held back. What happened while it was disabled was not kept for it: read the journal or the lists.',
  input: z.strictObject({ webhook: webhookId }),
  output: webhookView,
  answer: async ({ records, now }, { webhook: id }) => {
    const at = now().toISOString()
    const webhook = await records.enableWebhook(id, at)
    return webhook ? { ok: true, value: viewOf(webhook, at) } : notFound('webhook', id)
  },
})

/** For so long the secret before goes on signing beside the new one. */
const overlap = 24 * 3_600_000

export const rotateWebhookSecret = defineRecordOperation({
  name: 'rotateWebhookSecret',
  summary: 'Change the signing secret',
  description: 'Makes a new signing secret, shown once, or a new pair of keys, whose public key is in the webhook. For 24 hours deliveries carry a signature by each, so that the receiver can change over without losing one.',
  input: z.strictObject({ webhook: webhookId }),
  output: createdWebhook,
  answer: async ({ records, now, webhooks: { sealer } }, { webhook: id }) => {
    const [before, at] = [await records.readWebhook(id), now()]
    if (!before) return notFound('webhook', id)
    const { kept, shown } = secretFor(sealer, id, viewOf(before, at.toISOString()).signature)
    const webhook = await records.rotateSecret(id, kept, at.toISOString(), new Date(at.getTime() + overlap).toISOString())
    return webhook ? { ok: true, value: { webhook: viewOf(webhook, at.toISOString()), secret: shown } } : notFound('webhook', id)
  },
})

/** A new secret as it is kept, and what its receiver is shown of it: a private key is nobody's but ours. */
function secretFor(sealer: Sealer, webhook: string, kind: SignatureKind): { readonly kept: NewSecret; readonly shown: string | null } {
  const secret = newSigningSecret(kind)
  const sealed = sealer.seal(secret, webhook)
  return kind === 'ed25519' ? { kept: { sealed, publicKey: publicKeyOf(secret) }, shown: null } : { kept: { sealed }, shown: secret }
}

function targetProblems({ webhooks: { targets } }: RecordDependencies, target: string): readonly Problem[] {
  const fault = targetFault(target, targets)
  return fault === undefined ? [] : [{ code: 'notAllowed', pointer: '/target', detail: fault }]
}

async function projectProblems({ records }: RecordDependencies, projects: readonly string[]): Promise<readonly Problem[]> {
  const found = await Promise.all(projects.map((id) => records.readProject(id)))
  return projects.flatMap((id, index) => (found[index] ? [] : [{ code: 'notFound', pointer: `/projects/${index}`, detail: `There is no project "${id}".` }]))
}
