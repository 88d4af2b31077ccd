import type { DeliveryState, DisabledBecause } from '../outbox.ts'

/** The tables, in the names that CamelCasePlugin gives their columns. Dates and JSON are text, so that they come back as they went in. */
export interface Schema {
  drafts: DraftRow
  adoptedAmendments: AdoptionRow
  keptEvaluations: EvaluationRow
  tokens: TokenRow
  projects: ProjectRow
  entries: EntryRow
  webhooks: WebhookRow
  eventSources: { source: string; lastSequence: number }
  events: { id: string; type: string; text: string; createdAt: string }
  deliveries: DeliveryRow
  keptAnswers: KeptAnswerRow
  appliedMigrations: { name: string; appliedAt: string }
}

export interface KeptAnswerRow {
  id: string
  fingerprint: string
  startedAt: string
  sealed: string | null
}

type InBackup<Row> = { readonly key: keyof Row & string } | { readonly leftOut: string }

/** Every table, those to which others refer first: by what a backup pages through it, or why no backup has it. */
export const tables = {
  projects: { key: 'id' },
  entries: { key: 'id' },
  drafts: { key: 'id' },
  adoptedAmendments: { key: 'sequence' },
  keptEvaluations: { key: 'id' },
  tokens: { key: 'id' },
  webhooks: { leftOut: 'their signing secrets stay with the installation whose key has sealed them' },
  eventSources: { leftOut: 'the outbox is about webhooks, which are in no backup' },
  events: { leftOut: 'the outbox is about webhooks, which are in no backup' },
  deliveries: { leftOut: 'the outbox is about webhooks, which are in no backup' },
  keptAnswers: { leftOut: 'they are good for a day, and only for who holds their keys' },
  appliedMigrations: { leftOut: 'the head of a backup names them, and restoring applies them' },
} as const satisfies { readonly [T in keyof Schema]: InBackup<Schema[T]> }

export interface ProjectRow {
  id: string
  title: string
  jurisdiction: string | null
  asOf: string
  edition: string | null
  publication: string | null
  version: string
  createdAt: string
  changedAt: string
  lastSequence: number
  lastChain: string
}

export interface EntryRow {
  id: string
  project: string
  sequence: number
  opening: string
  kind: string
  body: string
  digest: string
  judged: string | null
  chain: string
  receivedAt: string
  receivedBy: string
  posting: string
}

export interface DraftRow {
  id: string
  jurisdiction: string
  document: string
  version: string
  createdAt: string
  changedAt: string
}

export interface AdoptionRow {
  sequence: number
  amendmentId: string
  amendment: string
  digest: string
  adoptedAt: string
  adoptedBy: string
}

export interface EvaluationRow {
  id: string
  jurisdiction: string | null
  project: string | null
  evaluatedAt: string
  release: string
  catalogDigest: string
  sequence: number
  digest: string
  verdict: string
  request: string
  answer: string
}

export interface WebhookRow {
  id: string
  target: string
  description: string | null
  eventTypes: string
  projects: string | null
  secrets: string
  createdAt: string
  createdBy: string
  enabledAt: string
  disabledAt: string | null
  disabledBecause: DisabledBecause | null
  lastDeliveredAt: string | null
}

export interface DeliveryRow {
  id: string
  webhook: string
  event: string
  createdAt: string
  state: DeliveryState
  attempts: number
  nextAt: string | null
  status: number | null
  fault: string | null
  deliveredAt: string | null
}

export interface TokenRow {
  id: string
  secretHash: string
  title: string
  scopes: string
  createdAt: string
  expiresAt: string | null
  revokedAt: string | null
}
