import { setTimeout as later } from 'node:timers/promises'
import { Webhook } from 'standardwebhooks'
import type { Entry } from '../../../src/store/journal.ts'
import type { Outbox } from '../../../src/store/outbox.ts'
import { deliverer, type Deliverer } from '../../../src/webhooks/deliverer.ts'
import { sealerBy } from '../../../src/webhooks/secret.ts'
import { sendBy } from '../../../src/webhooks/send.ts'
import type { Arrived } from '../../webhooks/receiver.ts'

const secret = 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw'

/** A deliverer of the real make, to receivers on this machine; others take over from it after half a second. */
export function delivererTo(outbox: Outbox): Deliverer {
  const fault = (detail: object, message: string): void => { process.stderr.write(`${message} ${JSON.stringify(detail)}\n`) }
  return deliverer({
    outbox, sealer: sealerBy(undefined), send: sendBy('publicAndLoopback'), now: () => new Date(), random: Math.random, log: { error: fault, warn: fault }, leaseMilliseconds: 500, attemptMilliseconds: 400,
    wait: async (milliseconds, signal) => { await later(Math.min(milliseconds, 20), undefined, { signal }).catch(() => undefined) },
  })
}

/** What is wrong with what arrived, given the events whose senders were told that they are on record, and the journal. */
export function eventLosses(said: readonly string[], arrived: readonly Arrived[], journal: readonly Entry[]): readonly string[] {
  const told = said.filter((line) => line.startsWith('told ')).map((line) => line.slice('told '.length))
  const texts = new Map<string, string>()
  const entries = new Set(journal.map(({ id }) => id))
  const wrong = arrived.flatMap(({ headers, text }) => {
    const id = String(headers['webhook-id'])
    const known = texts.get(id) ?? text
    texts.set(id, known)
    const { entry } = JSON.parse(text) as { entry: string }
    return [...(known === text ? [] : [`told in two ways: ${id}`]), ...(entries.has(entry) ? [] : [`did not happen: ${id}`]), ...(isSigned(headers as Record<string, string>, text) ? [] : [`not signed: ${id}`])]
  })
  const sequences = [...texts.values()].map((text) => (JSON.parse(text) as { sequence: number }).sequence).toSorted((a, b) => a - b)
  return [
    ...wrong,
    ...told.filter((id) => !texts.has(id)).map((id) => `lost: ${id}`),
    ...sequences.filter((sequence, index) => sequence !== index + 1).map((sequence) => `out of sequence: ${sequence}`),
    ...(texts.size === journal.length ? [] : [`${journal.length} entries, ${texts.size} events`]),
  ]
}

function isSigned(headers: Record<string, string>, text: string): boolean {
  try {
    new Webhook(secret).verify(text, headers)
    return true
  } catch {
    return false
  }
}
