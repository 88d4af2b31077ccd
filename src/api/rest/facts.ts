import type { FastifyPluginAsync } from 'fastify'
import { listFacts, listHoldPoints } from '../../operations/facts.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

/** The words in which an opening is described, and the order of the work. */
export const facts: FastifyPluginAsync = async (app) => {
  app.get('/facts', { schema: routeSchema(listFacts, 'Facts') }, (request, reply) => answer(listFacts, request, reply))
  app.get('/hold-points', { schema: routeSchema(listHoldPoints, 'Facts') }, (request, reply) => answer(listHoldPoints, request, reply))
}
