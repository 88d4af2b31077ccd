import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'

/** Of the connection within, not of the answer. */
const notPassedOn: readonly string[] = ['connection', 'content-length', 'date', 'keep-alive', 'transfer-encoding']

/** Answers GET at these addresses by another application, which is loaded and built with the first who asks: a start need not wait for it. What it has not is not found here. */
export function answerLate(app: FastifyInstance, addresses: readonly string[], build: () => Promise<FastifyInstance>): void {
  let built: Promise<FastifyInstance> | undefined
  const handle = async (request: FastifyRequest, reply: FastifyReply) => passOn(await (built ??= build()), request, reply)
  for (const address of addresses) app.get(address, { schema: { hide: true } }, handle)
}

async function passOn(other: FastifyInstance, { url, headers }: FastifyRequest, reply: FastifyReply): Promise<FastifyReply> {
  const answer = await other.inject({ method: 'GET', url, headers })
  if (answer.statusCode === 404) {
    reply.callNotFound()
    return reply
  }
  const passed = Object.entries(answer.headers).filter(([name]) => !notPassedOn.includes(name))
  return reply.code(answer.statusCode).headers(Object.fromEntries(passed)).send(answer.rawPayload)
}
