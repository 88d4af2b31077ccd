import { setMaxListeners } from 'node:events'
import type { Claim, Outbox, SealedSecret, Settlement } from '../store/outbox.ts'
import { nextAttempt } from './schedule.ts'
import { signatures, type Sealer } from './secret.ts'
import type { Post, Reply } from './send.ts'

export interface DelivererLog {
  readonly error: (detail: object, message: string) => void
  readonly warn: (detail: object, message: string) => void
}

/** What a deliverer works with. Clock, chance and waiting come from outside. */
export interface DelivererMeans {
  readonly outbox: Outbox
  readonly sealer: Sealer
  readonly send: (post: Post) => Promise<Reply>
  readonly now: () => Date
  readonly random: () => number
  /** Waits for so many milliseconds, or until it is broken off. */
  readonly wait: (milliseconds: number, signal: AbortSignal) => Promise<void>
  readonly log: DelivererLog
  /** For how long a claim holds; longer than an attempt takes. */
  readonly leaseMilliseconds?: number
  readonly attemptMilliseconds?: number
}

export interface Deliverer {
  /** Delivers all that is due now, and answers when that is done. */
  readonly deliverDue: () => Promise<void>
  /** Goes on delivering until it is stopped. */
  readonly start: () => void
  /** Begins nothing more, waits a little for what is under way, and hands the rest back. */
  readonly stop: (patienceMilliseconds?: number) => Promise<void>
}

const mostUnderWay = 16
const mostForOne = 4
const lookEvery = 1_000
const day = 86_400_000
const keptFor = 30 * day

export function deliverer(means: DelivererMeans): Deliverer {
  const { outbox, now, log, leaseMilliseconds = 60_000 } = means
  const underWay = new Map<Promise<void>, string>()
  const breakingOff = new AbortController()
  setMaxListeners(mostUnderWay * 2, breakingOff.signal)
  const state = { stopping: false, look: new AbortController() }
  let running: Promise<void> = Promise.resolve()
  let tidiedAt = 0

  const begin = (claim: Claim): void => {
    const work = deliver(means, claim, breakingOff.signal)
      .catch((error: unknown) => log.error({ err: error, delivery: claim.delivery.id }, 'a delivery was not settled; it is tried again when its lease ends'))
      .finally(() => underWay.delete(work))
    underWay.set(work, claim.webhook.id)
  }
  /** Begins what is due, as much as there is room for. */
  const fill = async (): Promise<void> => {
    while (underWay.size < mostUnderWay && !state.stopping) {
      const leaseUntil = new Date(now().getTime() + leaseMilliseconds).toISOString()
      const claim = await outbox.claim({ now: now().toISOString(), leaseUntil, passOver: full([...underWay.values()]) })
      if (!claim) return
      begin(claim)
    }
  }
  const tidy = async (): Promise<void> => {
    if (now().getTime() - tidiedAt < day) return
    tidiedAt = now().getTime()
    await outbox.forgetDeliveries(new Date(tidiedAt - keptFor).toISOString())
  }
  const run = async (): Promise<void> => {
    while (!state.stopping) {
      const look = new AbortController()
      state.look = look
      await tidy().then(fill).catch((error: unknown) => log.error({ err: error }, 'the outbox cannot be read; another look follows'))
      await Promise.race([means.wait(lookEvery, look.signal), ...underWay.keys()])
      look.abort()
    }
  }
  return {
    async deliverDue() {
      for (;;) {
        await fill()
        if (underWay.size === 0) return
        await Promise.race(underWay.keys())
      }
    },
    start() { running = run() },
    async stop(patienceMilliseconds = 5_000) {
      state.stopping = true
      state.look.abort()
      await running
      const enough = new AbortController()
      await Promise.race([Promise.all(underWay.keys()), means.wait(patienceMilliseconds, enough.signal)])
      enough.abort()
      breakingOff.abort()
      await Promise.all(underWay.keys())
    },
  }
}

/** Webhooks with as much under way as one may have, so that a slow receiver does not hold up the others. */
function full(webhooks: readonly string[]): readonly string[] {
  return [...new Set(webhooks)].filter((id) => webhooks.filter((one) => one === id).length >= mostForOne)
}

async function deliver(means: DelivererMeans, claim: Claim, breakOff: AbortSignal): Promise<void> {
  const { outbox, log } = means
  const reply = await attempt(means, claim, breakOff)
  const settlement = breakOff.aborted && 'fault' in reply ? { kind: 'released' as const, nextAt: means.now().toISOString() } : settlementOf(means, claim, reply)
  const { disabled } = await outbox.settle(claim.delivery, settlement)
  const of = { webhook: claim.webhook.id, delivery: claim.delivery.id, attempts: claim.delivery.attempts }
  if (settlement.kind === 'givenUp' || settlement.kind === 'gone') log.warn({ ...of, fault: settlement.fault }, disabled ? 'a delivery was given up and its webhook disabled' : 'a delivery was given up')
}

async function attempt({ sealer, send, now, log, attemptMilliseconds = 15_000 }: DelivererMeans, { delivery, text, webhook }: Claim, breakOff: AbortSignal): Promise<Reply> {
  const timestamp = Math.floor(now().getTime() / 1_000)
  let secrets: readonly string[]
  try {
    secrets = inUse(webhook.secrets, now()).map(({ sealed }) => sealer.open(sealed, webhook.id))
  } catch (error) {
    log.error({ err: error, webhook: webhook.id }, 'the signing secret cannot be read')
    return { fault: error instanceof Error ? error.message : String(error) }
  }
  const { traceparent } = JSON.parse(text) as { readonly traceparent?: string }
  const headers = {
    'content-type': 'application/cloudevents+json; charset=utf-8', 'user-agent': 'Wythe',
    'webhook-id': delivery.event, 'webhook-timestamp': String(timestamp), 'webhook-signature': signatures({ id: delivery.event, timestamp, text }, secrets),
    ...(traceparent === undefined ? {} : { traceparent }),
  }
  return withinTime(attemptMilliseconds, breakOff, (signal) => send({ target: webhook.target, headers, text, signal }))
}

async function withinTime<T>(milliseconds: number, breakOff: AbortSignal, work: (signal: AbortSignal) => Promise<T>): Promise<T> {
  const end = new AbortController()
  const abort = (): void => end.abort()
  const timer = setTimeout(abort, milliseconds)
  breakOff.addEventListener('abort', abort)
  try {
    return await work(end.signal)
  } finally {
    clearTimeout(timer)
    breakOff.removeEventListener('abort', abort)
  }
}

function inUse(secrets: readonly SealedSecret[], now: Date): readonly SealedSecret[] {
  return secrets.filter(({ until }) => until === null || until > now.toISOString())
}

/** Every status but 2xx is a failure, a redirection too: whoever moves says so by a new target. */
function settlementOf({ now, random }: DelivererMeans, { delivery }: Claim, reply: Reply): Settlement {
  const at = now()
  if ('status' in reply && reply.status >= 200 && reply.status < 300) return { kind: 'delivered', at: at.toISOString(), status: reply.status }
  const status = 'status' in reply ? reply.status : null
  const fault = 'fault' in reply ? reply.fault : `The receiver answered ${reply.status}.`
  if (status === 410) return { kind: 'gone', at: at.toISOString(), status, fault }
  const next = nextAttempt({ attempts: delivery.attempts, retryAfter: 'status' in reply ? reply.retryAfter : null, now: at, random: random() })
  return next ? { kind: 'again', nextAt: next.toISOString(), status, fault } : { kind: 'givenUp', at: at.toISOString(), status, fault }
}
