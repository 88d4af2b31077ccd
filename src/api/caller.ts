import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { digestOfText } from '../catalog/digest.ts'
import { anonymous, type Caller } from '../operations/caller.ts'
import type { RecordDependencies } from '../operations/operation.ts'
import { sendProblem } from './send-problem.ts'

/** What the service is given once; the caller and the catalog of the moment are added for each request, and the address of the service by the application. */
export type ServiceDependencies = Omit<RecordDependencies, 'caller' | 'catalog' | 'publicUrl'>

declare module 'fastify' {
  interface FastifyRequest {
    caller: Caller
  }
}

/** Finds out who asks, for every route that is added to this instance. A token that is wrong, expired or revoked is refused. */
export function identifyCallers(app: FastifyInstance): void {
  app.decorateRequest('caller')
  app.addHook('onRequest', async (request, reply) => {
    const { authorization } = request.headers
    const caller = authorization === undefined ? anonymous : await callerOf(authorization, request.server.deps)
    if (!caller) return refuse(request, reply)
    request.caller = caller
  })
}

export function depsOf({ server: { deps, publicUrl }, caller }: FastifyRequest): RecordDependencies {
  return { ...deps, publicUrl, caller, catalog: deps.active.state.catalog }
}

async function callerOf(authorization: string, { records, now }: ServiceDependencies): Promise<Caller | undefined> {
  const secret = /^Bearer ([\w.~+/-]{1,200}=*)$/i.exec(authorization)?.[1]
  const token = secret === undefined ? undefined : await records.findToken(digestOfText(secret))
  if (!token || token.revokedAt !== null || (token.expiresAt !== null && token.expiresAt <= now().toISOString())) return undefined
  return { token: token.id, scopes: token.scopes }
}

function refuse(request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const detail = 'The token is unknown, expired or revoked.'
  return sendProblem(request, reply.header('www-authenticate', 'Bearer error="invalid_token"'), 'unauthenticated', [{ code: 'unauthenticated', pointer: '', detail }])
}
