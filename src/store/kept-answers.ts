/** One sending of a request that its sender may send again. */
export interface RequestClaim {
  /** Names caller and key, without telling either. */
  readonly id: string
  /** What is asked for: the same key for something else is a mistake. */
  readonly fingerprint: string
  readonly startedAt: string
}

export interface ClaimLimits {
  /** Answers to requests that began before are forgotten. */
  readonly expired: string
  /** Requests that began before and have no answer died with their process. */
  readonly abandoned: string
}

export type Claimed =
  | { readonly state: 'claimed' }
  | { readonly state: 'running'; readonly fingerprint: string }
  | { readonly state: 'answered'; readonly fingerprint: string; readonly sealed: string }

/** Answers that are kept for a while, so that a request sent twice is done once, by whichever replica it comes to. */
export interface KeptAnswers {
  /** Of several at the same time one is claimed. Forgets on the way what has expired. */
  claimRequest(claim: RequestClaim, limits: ClaimLimits): Promise<Claimed>
  /** Keeps the answer of a claim that is still held. */
  keepAnswer(claim: RequestClaim, sealed: string): Promise<void>
  /** Gives a claim back when nothing was made; an answer that was kept stays. */
  releaseRequest(claim: RequestClaim): Promise<void>
}
