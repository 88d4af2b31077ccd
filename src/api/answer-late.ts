import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { late } from './late.ts'

/** Of the connection within, not of the answer. */
const notPassedOn: readonly string[] = ['connection', 'content-length', 'date', 'keep-alive', 'transfer-encoding']

/** Answers GET at these addresses by another application, which is loaded and built with the first who asks: a start need not wait for it. What it has not is not found here. */
export function answerLate(app: FastifyInstance, addresses: readonly string[], build: () => Promise<FastifyInstance>): void {
  const built = late(build)
  const handle = async (request: FastifyRequest, reply: FastifyReply) => passOn(await built(), request, reply)
  for (const address of addresses) app.get(address, { schema: { hide: true } }, handle)
}

async function passOn(other: FastifyInstance, { url, headers }: FastifyRequest, reply: FastifyReply): Promise<FastifyReply> {
  if (!isPlain(url)) throw refused(403, 'Forbidden')
  const answer = await other.inject({ method: 'GET', url, headers })
  const { statusCode, rawPayload } = answer
  if (statusCode === 404) {
    reply.callNotFound()
    return reply
  }
  if (statusCode >= 400) throw refused(statusCode, answer.json<{ message: string }>().message)
  const passed = Object.entries(answer.headers).filter(([name]) => !notPassedOn.includes(name))
  return reply.code(statusCode).headers(Object.fromEntries(passed)).send(rawPayload.length > 0 ? rawPayload : undefined)
}

/** On its way an address loses its steps upward, and with them it would reach what nobody is to ask there. */
function isPlain(url: string): boolean {
  return URL.canParse(url, 'http://here') && new URL(url, 'http://here').pathname === url.split('?')[0]
}

/** Told here as whatever else is wrong. */
function refused(statusCode: number, message: string): Error {
  return Object.assign(new Error(message), { statusCode })
}
