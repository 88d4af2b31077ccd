import type { Scope } from '../store/records.ts'

/** Who asks: a token with its scopes, or nobody in particular. */
export interface Caller {
  /** The id of the token, or for the access token of an identity provider a digest of issuer and subject; null for a caller without one. */
  readonly token: string | null
  readonly scopes: readonly Scope[]
}

/** What may be asked without a token: to read the catalog and evaluate, or nothing. */
export type AnonymousAccess = 'evaluate' | 'none'

export function anonymousCaller(access: AnonymousAccess): Caller {
  return { token: null, scopes: access === 'evaluate' ? [{ kind: 'evaluate' }] : [] }
}
