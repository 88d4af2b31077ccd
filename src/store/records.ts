import type { Amendment } from '../catalog/amendment.ts'
import type { Journal } from './journal.ts'
import type { NewEvent, Outbox } from './outbox.ts'
import type { KeptAnswers } from './kept-answers.ts'

/** A draft of an amendment: may be wrong in any way, may be changed and thrown away. Nobody is bound by it. */
export interface Draft {
  readonly id: string
  readonly jurisdiction: string
  /** The document as it was sent, parsed from JSON or YAML. */
  readonly document: unknown
  /** SHA-256 over the canonical document; a change has to name the one it changes. */
  readonly version: string
  readonly createdAt: string
  readonly changedAt: string
}

/** An amendment that was adopted through the service. Never edited, never deleted; a later one may supersede it. */
export interface AdoptedAmendment {
  /** Rises by one with each adoption; replicas catch up by it. */
  readonly sequence: number
  readonly amendment: Amendment
  readonly digest: string
  readonly adoptedAt: string
  /** The id of the token that adopted it. */
  readonly adoptedBy: string
}

/** An evaluation that was kept on request, with what is needed to reproduce it. */
export interface KeptEvaluation {
  readonly id: string
  /** The jurisdiction at which it was resolved; null for the published text alone. */
  readonly jurisdiction: string | null
  /** The project in whose record it was kept, which decides who may read it; null for whoever may read all records. */
  readonly project: string | null
  readonly evaluatedAt: string
  readonly release: string
  readonly catalogDigest: string
  /** How many adopted amendments were in the catalog: the sequence of the last one. */
  readonly sequence: number
  readonly digest: string
  readonly verdict: string
  /** The request as it was sent, with the date filled in. */
  readonly request: unknown
  /** The answer as it was given, word for word. */
  readonly answer: unknown
}

/** What a token may do. A record scope without a project covers all projects; an amend scope covers the jurisdiction and everything within it. */
export type Scope = { readonly kind: 'evaluate' } | { readonly kind: 'record'; readonly project?: string } | { readonly kind: 'amend'; readonly jurisdiction: string } | { readonly kind: 'administer' }

/** A token as it is remembered: only the hash of its secret. */
export interface Token {
  readonly id: string
  readonly secretHash: string
  readonly title: string
  readonly scopes: readonly Scope[]
  readonly createdAt: string
  readonly expiresAt: string | null
  readonly revokedAt: string | null
}

export type DraftChange = { readonly ok: true; readonly draft: Draft } | { readonly ok: false; readonly reason: 'absent' | 'stale' }
export type Adoption = { readonly ok: true; readonly adopted: AdoptedAmendment } | { readonly ok: false; readonly reason: 'exists' | 'behind' | 'stale' }

export interface Page<T> {
  readonly items: readonly T[]
  /** The key to continue after; null on the last page. */
  readonly next: string | null
}

/** What the service remembers. Events that are given along go out if, and only if, what they tell of was remembered. One interface over SQLite and PostgreSQL; both run the same contract suite. */
export interface Records extends Journal, Outbox, KeptAnswers {
  createDraft(draft: Draft): Promise<void>
  readDraft(id: string): Promise<Draft | undefined>
  listDrafts(jurisdictions: readonly string[] | null, after: string | null, first: number): Promise<Page<Draft>>
  /** Changes a draft only while it still has the version that the caller has seen. */
  changeDraft(id: string, seenVersion: string, next: Draft): Promise<DraftChange>
  deleteDraft(id: string, seenVersion: string): Promise<DraftChange>

  /**
   * Appends an adoption and removes its draft in one transaction. Refused when the amendment exists, or when somebody adopted
   * since `seenSequence`, so that nothing is adopted against a catalog that was not looked at; `stale` when the draft was changed since.
   */
  adopt(adoption: Omit<AdoptedAmendment, 'sequence'>, draft: Pick<Draft, 'id' | 'version'> | null, seenSequence: number, events?: readonly NewEvent[]): Promise<Adoption>
  /** All adoptions after a sequence, in order. */
  adoptionsAfter(sequence: number): Promise<readonly AdoptedAmendment[]>

  keepEvaluation(evaluation: KeptEvaluation, events?: readonly NewEvent[]): Promise<void>
  readEvaluation(id: string): Promise<KeptEvaluation | undefined>
  /** Kept evaluations of some jurisdictions, in the order of their ids, a page at a time. */
  listEvaluations(jurisdictions: readonly string[], after: string | null, first: number): Promise<Page<KeptEvaluation>>

  createToken(token: Token): Promise<void>
  findToken(secretHash: string): Promise<Token | undefined>
  listTokens(): Promise<readonly Token[]>
  revokeToken(id: string, revokedAt: string): Promise<boolean>

  /** Calls back soon after an adoption by this or another process. Answers how to stop listening. */
  onAdoption(listener: () => void): () => void
  /** Whether the store answers; for readiness. */
  check(): Promise<void>
  close(): Promise<void>
}
