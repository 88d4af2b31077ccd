import type { FastifyPluginAsync } from 'fastify'

const answerOf = (description: string) => ({ description, content: { 'application/json': { schema: { type: 'object', properties: { status: { type: 'string' }, release: { type: 'string' } }, required: ['status'] } } } })

/** Liveness touches nothing; readiness needs a verified catalog, and ends when the service begins to stop. */
export const health: FastifyPluginAsync = async (app) => {
  let stopping = false
  app.addHook('preClose', async () => { stopping = true })
  app.setSerializerCompiler(() => (data) => JSON.stringify(data))
  app.get('/livez', { schema: { operationId: 'live', summary: 'Whether the process runs', tags: ['Health'], response: { 200: answerOf('It runs.') } } }, () => ({ status: 'live' }))
  app.get('/readyz', { schema: { operationId: 'ready', summary: 'Whether requests can be served', tags: ['Health'], response: { 200: answerOf('They can.'), 503: answerOf('The service is stopping.') } } }, (_, reply) =>
    stopping ? reply.code(503).send({ status: 'stopping' }) : { status: 'ready', release: app.deps.catalog.release },
  )
}
