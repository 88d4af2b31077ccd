import type { FastifyReply, FastifyRequest } from 'fastify'
import type { AnyOperation } from '../../operations/operation.ts'

/** Adds to what a reply links to (RFC 8288). */
export function link(reply: FastifyReply, address: string, relation: string): void {
  const one = `<${address}>; rel="${relation}"`
  reply.header('link', reply.hasHeader('link') ? `${String(reply.getHeader('link'))}, ${one}` : one)
}

/** Links a page to the next one, under the address that callers use. */
export function linkNext({ method, url, server: { publicUrl } }: FastifyRequest, reply: FastifyReply, value: unknown): void {
  const { nextCursor } = (value ?? {}) as { readonly nextCursor?: unknown }
  if (typeof nextCursor !== 'string' || (method !== 'GET' && method !== 'HEAD')) return
  const next = new URL(url, publicUrl)
  next.searchParams.set('after', nextCursor)
  link(reply, `${publicUrl}${next.pathname}${next.search}`, 'next')
}

/** Says that an operation is to be used no more (RFC 9745), and when it may be gone (RFC 8594). */
export function sayDeprecated({ deprecated }: AnyOperation, reply: FastifyReply): void {
  if (!deprecated) return
  reply.header('deprecation', `@${Date.parse(deprecated.since) / 1_000}`)
  if (deprecated.sunset !== undefined) reply.header('sunset', new Date(deprecated.sunset).toUTCString())
  link(reply, deprecated.link, 'deprecation')
}
