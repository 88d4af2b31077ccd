import Fastify, { type FastifyInstance, type FastifyServerOptions } from 'fastify'
import type { Metrics } from './metrics.ts'

/** The counts on a port of their own, so that whoever reaches the service does not reach them. Never listens by itself. */
export function metricsPage({ registry }: Metrics, logger: FastifyServerOptions['logger'] = false): FastifyInstance {
  const app = Fastify({ logger, forceCloseConnections: true })
  app.get('/metrics', async (_, reply) => reply.type(registry.contentType).send(await registry.metrics()))
  return app
}
