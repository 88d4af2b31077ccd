import type { FastifyInstance, FastifyPluginAsync, FastifyReply, FastifyRequest } from 'fastify'

/** Where the reference answers. */
const addresses = ['/reference', '/reference/', '/reference/json', '/reference/yaml', '/reference/static/*']

/** Of the connection within, not of the answer. */
const notPassedOn: readonly string[] = ['connection', 'content-length', 'date', 'keep-alive', 'transfer-encoding']

/** The reference of the API and its OpenAPI document. What describes every route is loaded and built with the first who asks for it. */
export const reference: FastifyPluginAsync = async (app) => {
  let described: Promise<FastifyInstance> | undefined
  const handle = async (request: FastifyRequest, reply: FastifyReply) => {
    described ??= import('./described.ts').then(({ describedApi }) => describedApi(app.publicUrl))
    return passOn(await described, request, reply)
  }
  for (const address of addresses) app.get(address, { schema: { hide: true } }, handle)
}

async function passOn(described: FastifyInstance, { url, headers }: FastifyRequest, reply: FastifyReply): Promise<FastifyReply> {
  const answer = await described.inject({ method: 'GET', url, headers })
  if (answer.statusCode === 404) {
    reply.callNotFound()
    return reply
  }
  const passed = Object.entries(answer.headers).filter(([name]) => !notPassedOn.includes(name))
  return reply.code(answer.statusCode).headers(Object.fromEntries(passed)).send(answer.rawPayload)
}
