import { createHash } from 'node:crypto'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import fresh from 'fresh'

/** Gives every answer that can be read again a strong ETag, answers 304 to whoever has it, and says who may keep it. */
export function answerConditionally(app: FastifyInstance): void {
  app.addHook('onSend', async (request, reply, payload) => {
    const readable = request.method === 'GET' || request.method === 'HEAD'
    if (reply.statusCode >= 300 || !isText(payload)) return payload
    sayWhoMayKeep(request, reply, readable)
    if (readable || reply.hasHeader('etag')) reply.header('etag', etagFor(reply, payload))
    if (!readable || !fresh(request.headers, { etag: reply.getHeader('etag') })) return payload
    reply.code(304).removeHeader('content-type').removeHeader('content-disposition').removeHeader('content-length')
    return request.method === 'HEAD' ? payload : null
  })
}

/** The version that a change has to name, if the route told one, and the digest of what is sent: a draft is checked by what is in force, so that equal versions may read differently. */
function etagFor(reply: FastifyReply, payload: string | Buffer): string {
  const version = /^"([^;]+)"$/.exec(String(reply.getHeader('etag') ?? ''))?.[1]
  const told = reply.getHeader('etag')
  if (told !== undefined && version === undefined) return String(told)
  const digest = createHash('sha256').update(payload).digest('base64url')
  return version === undefined ? `"${digest}"` : `"${version};${digest}"`
}

/** The catalog is the same for everybody, and an adoption may change it at any moment; records are the caller's. */
function sayWhoMayKeep(request: FastifyRequest, reply: FastifyReply, readable: boolean): void {
  const open = isOpen(request)
  if (!open) reply.header('vary', 'Authorization')
  if (!reply.hasHeader('cache-control')) reply.header('cache-control', !readable ? 'no-store' : open ? 'public, no-cache' : 'private, no-cache')
}

function isOpen({ routeOptions: { schema } }: FastifyRequest): boolean {
  const { security } = (schema ?? {}) as { security?: readonly object[] }
  return security === undefined || security.some((scheme) => Object.keys(scheme).length === 0)
}

function isText(payload: unknown): payload is string | Buffer {
  return typeof payload === 'string' || Buffer.isBuffer(payload)
}

/** The version that a change is based on: the ETag up to the digest. What is no single strong tag names no version, except a weak one, which never matches. */
export function versionSeen({ headers }: Pick<FastifyRequest, 'headers'>): { readonly version?: string } {
  const tag = headers['if-match']
  if (tag?.startsWith('W/')) return { version: tag.slice(0, 100) }
  const version = /^"([^";]+)(?:;[\w-]*)?"$/.exec(tag ?? '')?.[1]
  return version === undefined ? {} : { version }
}
