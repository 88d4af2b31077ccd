/** Something that happened, before it has its number among the events of its source. */
export interface NewEvent {
  /** The same however often it is delivered. */
  readonly id: string
  readonly type: string
  readonly project: string | null
  /** The address of what it happened to; events are numbered for each source, beginning with 1. */
  readonly source: string
  readonly at: string
  /** What is sent, word for word the same each time, given its number. */
  readonly text: (sequence: number) => string
}

/** A signing secret as the sealer left it. */
export interface NewSecret {
  readonly sealed: string
  /** Of a pair of keys, what receivers check by; absent where they share the secret. */
  readonly publicKey?: string
}

export interface SealedSecret extends NewSecret {
  /** When it stops signing; null for the newest. */
  readonly until: string | null
}

export type DisabledBecause = 'gone' | 'unreachable'

/** Where events are sent, and which. */
export interface Webhook {
  readonly id: string
  readonly target: string
  readonly description: string | null
  readonly eventTypes: readonly string[]
  /** Of these projects only; null for all. What belongs to no project is not narrowed by it. */
  readonly projects: readonly string[] | null
  /** Newest first. */
  readonly secrets: readonly SealedSecret[]
  readonly createdAt: string
  /** The id of the token that made it. */
  readonly createdBy: string
  readonly enabledAt: string
  readonly disabledAt: string | null
  readonly disabledBecause: DisabledBecause | null
  readonly lastDeliveredAt: string | null
}

export type DeliveryState = 'due' | 'delivered' | 'givenUp'

/** One event on its way to one webhook. */
export interface Delivery {
  readonly id: string
  readonly webhook: string
  readonly event: string
  readonly eventType: string
  readonly createdAt: string
  readonly state: DeliveryState
  readonly attempts: number
  /** When it is tried next; null once it has ended. */
  readonly nextAt: string | null
  /** What the receiver answered last. */
  readonly status: number | null
  readonly fault: string | null
  readonly deliveredAt: string | null
}

/** A delivery that one deliverer holds until its lease ends. */
export interface Claim {
  readonly delivery: Delivery
  readonly text: string
  readonly webhook: Pick<Webhook, 'id' | 'target' | 'secrets'>
}

export interface ClaimTerms {
  readonly now: string
  /** When others may claim it, if this deliverer is not heard of again. */
  readonly leaseUntil: string
  /** Webhooks that have enough under way. */
  readonly passOver: readonly string[]
}

/** How an attempt ended. */
export type Settlement =
  | { readonly kind: 'delivered'; readonly at: string; readonly status: number }
  | { readonly kind: 'again'; readonly nextAt: string; readonly status: number | null; readonly fault: string }
  /** After the last attempt; the webhook is disabled when nothing has reached it since the delivery was made. */
  | { readonly kind: 'givenUp'; readonly at: string; readonly status: number | null; readonly fault: string }
  /** The receiver said that it is gone for good: the webhook is disabled. */
  | { readonly kind: 'gone'; readonly at: string; readonly status: number; readonly fault: string }
  /** Broken off by the deliverer itself, so that it does not count. */
  | { readonly kind: 'released'; readonly nextAt: string }

/** Whether settling counted: not when the lease had ended and another deliverer holds it; and whether the webhook was disabled by it. */
export interface Settled {
  readonly counted: boolean
  readonly disabled: boolean
}

/** Webhooks, and what is on its way to them. Events are put in by the same transaction as what they tell of. */
export interface Outbox {
  /** False when there are as many as there may be. */
  createWebhook(webhook: Webhook, most: number): Promise<boolean>
  readWebhook(id: string): Promise<Webhook | undefined>
  listWebhooks(after: string | null, first: number): Promise<{ readonly items: readonly Webhook[]; readonly next: string | null }>
  /** Takes its deliveries away too. */
  deleteWebhook(id: string): Promise<boolean>
  /** Puts a new secret first; those before go on signing until the given time. */
  rotateSecret(id: string, secret: NewSecret, now: string, oldUntil: string): Promise<Webhook | undefined>
  /** What was held back while it was disabled goes out from now on. */
  enableWebhook(id: string, at: string): Promise<Webhook | undefined>

  /** Sends an event to one webhook, whatever it listens for. */
  sendTo(webhook: string, event: NewEvent): Promise<Delivery>
  /** Sends the event of a delivery once more, as a delivery of its own. */
  replay(webhook: string, delivery: string, again: { readonly id: string; readonly at: string }): Promise<Delivery | undefined>
  /** Newest first. */
  listDeliveries(webhook: string, state: DeliveryState | null, after: string | null, first: number): Promise<{ readonly items: readonly Delivery[]; readonly next: string | null }>

  /** Takes the delivery that has been due longest; no other deliverer gets it before the lease ends. */
  claim(terms: ClaimTerms): Promise<Claim | undefined>
  settle(delivery: Pick<Delivery, 'id' | 'attempts'>, settlement: Settlement): Promise<Settled>
  /** Forgets deliveries that were made before a time and have ended, or are held for a webhook that is disabled or gone; and events nobody waits for. */
  forgetDeliveries(before: string): Promise<number>
}
