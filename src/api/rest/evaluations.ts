import type { FastifyPluginAsync } from 'fastify'
import { evaluateOpening } from '../../operations/evaluate-opening.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

/** Evaluations of openings. */
export const evaluations: FastifyPluginAsync = async (app) => {
  app.post('/evaluations', { schema: routeSchema(evaluateOpening, 'Evaluations', { body: true }) }, (request, reply) => answer(evaluateOpening, request, reply))
}
