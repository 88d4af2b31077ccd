import type { FastifyPluginAsync } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { listReleases } = operations

/** The releases of the catalog that were cut. */
export const releases: FastifyPluginAsync = async (app) => {
  app.get('/releases', { schema: routeSchema(listReleases, 'Releases') }, (request, reply) => answer(listReleases, request, reply))
}
