import type { Scope } from '../store/records.ts'

/** Who asks: a token with its scopes, or nobody in particular. */
export interface Caller {
  /** The id of the token; null for a caller without one. */
  readonly token: string | null
  readonly scopes: readonly Scope[]
}

/** Without a token one may read the catalog and evaluate. */
export const anonymous: Caller = { token: null, scopes: [{ kind: 'evaluate' }] }
