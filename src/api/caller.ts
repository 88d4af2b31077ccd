import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { digestOfText } from '../catalog/digest.ts'
import { anonymousCaller, type AnonymousAccess, type Caller } from '../operations/caller.ts'
import type { RecordDependencies } from '../operations/operation.ts'
import { isUsable } from '../operations/usable-token.ts'
import { challenge } from './challenge.ts'
import type { IdentityProvider, Verified } from './identity-provider.ts'
import { sendProblem } from './send-problem.ts'
import { traceparentIn } from './trace.ts'

/** What the service is given once; the caller and the catalog of the moment are added for each request, and the address of the service by the application. */
export interface ServiceDependencies extends Omit<RecordDependencies, 'caller' | 'catalog' | 'publicUrl'> {
  /** For a request whose caller names no trace: 32 hexadecimal digits, not all zeros (W3C Trace Context). */
  readonly newTraceId: () => string
}

declare module 'fastify' {
  interface FastifyRequest {
    caller: Caller
  }
}

/** Who is let in: what may be asked without a token, and whose access tokens are taken beside the service's own. */
export interface Doorkeeping {
  readonly anonymous: AnonymousAccess
  readonly provider?: IdentityProvider | undefined
}

/** Finds out who asks, for every route that is added to this instance. A token that is wrong, expired or revoked is refused, and so is everyone without one where nothing may be asked without. */
export function identifyCallers(app: FastifyInstance, { anonymous, provider }: Doorkeeping): void {
  const withoutToken = anonymousCaller(anonymous)
  app.decorateRequest('caller')
  app.addHook('onRequest', async (request, reply) => {
    const secret = bearerOf(request.headers.authorization)
    if (secret === undefined) {
      if (anonymous === 'none' || request.headers.authorization !== undefined) return refuse(request, reply, {}, noToken)
      request.caller = withoutToken
      return
    }
    const verified = await (provider && looksSigned(secret) ? provider.verify(secret, request.server.deps.now()) : ownToken(secret, request.server.deps))
    if (verified.outcome === 'refused') return refuse(request, reply, { error: 'invalid_token' }, verified.detail)
    if (verified.outcome === 'unverifiable') return postpone(request, reply, verified.cause)
    request.caller = { ...verified.caller, scopes: [...verified.caller.scopes, ...withoutToken.scopes] }
  })
}

export function depsOf({ server: { deps, publicUrl }, caller, headers }: FastifyRequest): RecordDependencies {
  return { ...deps, publicUrl, caller, traceparent: traceparentIn(headers['traceparent']), catalog: deps.active.state.catalog }
}

/** RFC 6750, section 2.1. Node itself bounds the length of a header. */
function bearerOf(authorization: string | undefined): string | undefined {
  return authorization === undefined ? undefined : /^Bearer +([\w.~+/-]+=*)$/i.exec(authorization)?.[1]
}

/** A JWT has three parts with dots between; the service's own tokens have no dot. */
function looksSigned(secret: string): boolean {
  return /^[\w-]+\.[\w-]+\.[\w-]*$/.test(secret)
}

async function ownToken(secret: string, { records, now }: ServiceDependencies): Promise<Verified> {
  const token = await records.findToken(digestOfText(secret))
  if (!token || !isUsable(token, now())) return { outcome: 'refused', detail: 'The token is unknown, expired or revoked.' }
  return { outcome: 'taken', caller: { token: token.id, scopes: token.scopes } }
}

const noToken = 'This needs a token. Send it as "Authorization: Bearer …".'

function refuse(request: FastifyRequest, reply: FastifyReply, why: Parameters<typeof challenge>[0], detail: string): FastifyReply {
  return sendProblem(request, reply.headers(challenge(why)), 'unauthenticated', [{ code: 'unauthenticated', pointer: '', detail }])
}

/** Without the keys nothing is known of the token: it is neither let through nor called wrong. */
function postpone(request: FastifyRequest, reply: FastifyReply, cause: unknown): FastifyReply {
  request.log.error({ err: cause }, 'the keys of the identity provider cannot be had')
  return sendProblem(request, reply.header('retry-after', 5), 'identityProviderSilent', [])
}
