import type { FastifyPluginAsync } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { evaluateOpening, keepEvaluation, readEvaluation, reproduceEvaluation } = operations

/** Evaluations of openings. One that is to be kept says so in its body. */
export const evaluations: FastifyPluginAsync = async (app) => {
  app.post<{ Body: { keep?: unknown; project?: unknown } | null }>('/evaluations', { schema: routeSchema(keepEvaluation, 'Evaluations', { body: 'input' }) }, (request, reply) =>
    answer(isPlain(request.body) ? evaluateOpening : keepEvaluation, request, reply),
  )
  app.get('/evaluations/:evaluation', { schema: routeSchema(readEvaluation, 'Evaluations', { path: ['evaluation'] }) }, (request, reply) => answer(readEvaluation, request, reply))
  app.post('/evaluations/:evaluation/reproduce', { schema: routeSchema(reproduceEvaluation, 'Evaluations', { path: ['evaluation'] }) }, (request, reply) =>
    answer(reproduceEvaluation, request, reply, { input: request.params }),
  )
}

function isPlain(body: { keep?: unknown; project?: unknown } | null): boolean {
  return body?.keep === undefined && body?.project === undefined
}
