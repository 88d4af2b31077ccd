import type { FastifyPluginAsync } from 'fastify'
import { z } from 'zod'
import { drained } from '../drain.ts'
import { problemDocument } from '../problem-document.ts'
import { referenceTo } from './schemas.ts'

export const healthStatus = z
  .strictObject({
    status: z.enum(['live', 'ready', 'stopping']),
    release: z.string().optional().meta({ description: 'The release of the catalog that is in use, once ready.' }),
  })
  .meta({ id: 'HealthStatus' })

const answerOf = (description: string) => ({ description, content: { 'application/json': { schema: referenceTo(healthStatus) } } })

const asProblem = { 'application/problem+json': { schema: referenceTo(problemDocument) } }
const problem = (description: string) => ({ description, content: asProblem })
const refused = { '4XX': problem('The request was wrong.'), 500: problem('The store does not answer.') }

const live = { operationId: 'live', summary: 'Whether the process runs', description: 'Touches nothing. A process that does not answer should be restarted.', tags: ['Health'], security: [{}], response: { 200: answerOf('It runs.'), ...refused } }
const ready = {
  operationId: 'ready', summary: 'Whether requests can be served', description: 'A service that is not ready should be sent no requests.', tags: ['Health'], security: [{}],
  response: { 200: answerOf('They can.'), 503: { ...answerOf('The service is stopping, or too busy to say more than that.'), content: { ...answerOf('').content, ...asProblem } }, ...refused },
}

/** Liveness touches nothing and knows no pressure; readiness needs a verified catalog and a store that answers, and ends when the service begins to stop. */
export const health: FastifyPluginAsync<{ readonly drain: number }> = async (app, { drain }) => {
  let stopping = false
  app.addHook('preClose', async () => {
    stopping = true
    await drained(app.server, drain)
  })
  app.addHook('onRequest', async (_, reply) => { reply.header('cache-control', 'no-store') })
  app.get('/livez', { schema: live, config: { pressureHandler: () => undefined } }, () => ({ status: 'live' }))
  app.get('/readyz', { schema: ready }, async (_, reply) =>
    stopping ? reply.code(503).send({ status: 'stopping' }) : readiness(),
  )

  async function readiness() {
    await app.deps.records.check()
    return { status: 'ready', release: app.deps.active.state.catalog.release }
  }
}
