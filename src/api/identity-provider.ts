import { createRemoteJWKSet, jwtVerify, type JWTVerifyGetKey } from 'jose'
import { z } from 'zod'
import { digestOfText } from '../catalog/digest.ts'
import type { Caller } from '../operations/caller.ts'
import { scopesIn } from '../operations/scope-word.ts'
import { isOfToken, refusalOf } from './token-refusals.ts'

/** An OpenID provider or OAuth authorization server whose access tokens are taken. */
export interface ProviderSettings {
  /** As it stands in `iss`, letter for letter. */
  readonly issuer: string
  readonly audience: string
  /** Where its keys are; found by discovery when left out. */
  readonly jwksUri?: string | undefined
  /** For so many milliseconds after its keys were fetched, a token signed by an unknown one does not make them be fetched again. */
  readonly cooldown?: number
}

/** Who an access token speaks for, why it is refused, or that its keys cannot be had, so that nothing is known of it. */
export type Verified =
  | { readonly outcome: 'taken'; readonly caller: Caller }
  | { readonly outcome: 'refused'; readonly detail: string }
  | { readonly outcome: 'unverifiable'; readonly cause: unknown }

export interface IdentityProvider {
  readonly verify: (token: string, now: Date) => Promise<Verified>
}

/** Signatures with a pair of keys alone: none, and no secret that whoever verifies could sign with, too (RFC 8725, 3.1 and 3.2). */
const algorithms = ['RS256', 'RS384', 'RS512', 'PS256', 'PS384', 'PS512', 'ES256', 'ES384', 'ES512', 'EdDSA', 'Ed25519']

/** Clocks may differ by so many seconds. */
const clockTolerance = 30
const keysAreGoodFor = 600_000
const longestWait = 5_000

/** Verifies JWT access tokens (RFC 9068) of one provider. Its keys are fetched with the first token, and again when a token names a new one. */
export function identityProvider(settings: ProviderSettings): IdentityProvider {
  const { issuer, audience } = settings
  let found: Promise<JWTVerifyGetKey> | undefined
  const keys: JWTVerifyGetKey = async (header, token) => {
    found ??= keysOf(settings)
    const keysFound = await found.catch((error: unknown) => { found = undefined; throw error })
    return keysFound(header, token)
  }
  return {
    verify: async (token, now) => {
      try {
        const { payload, protectedHeader } = await jwtVerify(token, keys, { issuer, audience, algorithms, clockTolerance, currentDate: now, requiredClaims: ['sub', 'exp'] })
        if (!isAccessToken(protectedHeader.typ)) return { outcome: 'refused', detail: 'The token is not an access token.' }
        return { outcome: 'taken', caller: { token: subjectOf(issuer, payload.sub ?? ''), scopes: scopesIn(typeof payload['scope'] === 'string' ? payload['scope'] : '') } }
      } catch (error) {
        return isOfToken(error) ? { outcome: 'refused', detail: refusalOf(error) } : { outcome: 'unverifiable', cause: error }
      }
    },
  }
}

/** Many providers leave the type out or say JWT; a type of its own says that it is something else (RFC 8725, 3.11). */
function isAccessToken(type: string | undefined): boolean {
  return type === undefined || ['jwt', 'at+jwt', 'application/at+jwt'].includes(type.toLowerCase())
}

/** Who it is, for record and journal, without a name or an address; the same subject of another issuer is another. */
function subjectOf(issuer: string, subject: string): string {
  return `oidc:${digestOfText(JSON.stringify([issuer, subject])).replace('sha256:', '').slice(0, 32)}`
}

async function keysOf({ issuer, jwksUri, cooldown = 10_000 }: ProviderSettings): Promise<JWTVerifyGetKey> {
  const address = new URL(jwksUri ?? (await discovered(issuer)))
  return createRemoteJWKSet(address, { cooldownDuration: cooldown, cacheMaxAge: keysAreGoodFor, timeoutDuration: longestWait })
}

const metadata = z.object({ issuer: z.string(), jwks_uri: z.url({ protocol: /^https?$/ }) })

/** The address of the keys, from what the provider says of itself (OpenID Connect Discovery 1.0, 4). It may not send us elsewhere, nor from TLS to plain HTTP. */
async function discovered(issuer: string): Promise<string> {
  const response = await fetch(`${issuer.replace(/\/$/, '')}/.well-known/openid-configuration`, { redirect: 'error', signal: AbortSignal.timeout(longestWait) })
  if (response.status !== 200) throw new Error(`discovery at ${issuer} answered ${response.status}`)
  const { issuer: named, jwks_uri: keys } = metadata.parse(await response.json())
  if (named !== issuer) throw new Error(`discovery at ${issuer} speaks for ${named}`)
  if (issuer.startsWith('https:') && !keys.startsWith('https:')) throw new Error(`discovery at ${issuer} names keys without TLS`)
  return keys
}
