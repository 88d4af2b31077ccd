import type { ServerResponse } from 'node:http'
import type { FastifyReply, FastifyRequest } from 'fastify'
import { afterEach } from 'vitest'
import type { Watcher } from '../../src/app.ts'
import { contractViolations } from './contract-document.ts'

/** Holds every answer that a test gets to the contract, and every request that was taken; the test in which something is not as described fails. To be called while the file is collected. */
export function keepContract(): Watcher {
  const violations: string[] = []
  afterEach(() => {
    const found = violations.splice(0)
    if (found.length > 0) throw new Error(`not as openapi/openapi.json says:\n${found.join('\n')}`)
  })
  return watchContract(violations)
}

/** Adds to a list what is not as described, before the caller has the answer. */
export function watchContract(violations: string[]): Watcher {
  return (app) => {
    app.addHook('onRequest', async (request, reply) => { whenSent(reply.raw, (body) => violations.push(...violationsIn(request, reply, body))) })
  }
}

function violationsIn({ method, url, is404, routeOptions, headers, body: sent, query }: FastifyRequest, reply: FastifyReply, body: string): readonly string[] {
  const found = contractViolations({
    method,
    route: is404 ? null : (routeOptions.url ?? null),
    asked: { type: headers['content-type'], body: sent, query: query as Readonly<Record<string, unknown>> },
    answered: { status: reply.raw.statusCode, type: reply.getHeader('content-type')?.toString(), body },
  })
  return found.map((what) => `${method} ${url.slice(0, 200)}: ${what}`)
}

/** Looks at what goes out in the end, whatever hooks and handlers have made of it. */
function whenSent(raw: ServerResponse, look: (body: string) => void): void {
  const chunks: Buffer[] = []
  const take = (chunk: unknown): void => { if (typeof chunk === 'string' || chunk instanceof Uint8Array) chunks.push(Buffer.from(chunk)) }
  const [write, end] = [raw.write.bind(raw), raw.end.bind(raw)] as const
  raw.write = ((...given: Parameters<typeof write>) => { take(given[0]); return write(...given) }) as typeof raw.write
  raw.end = ((...given: Parameters<typeof end>) => {
    take(given[0])
    look(Buffer.concat(chunks).toString())
    return end(...given)
  }) as typeof raw.end
}
