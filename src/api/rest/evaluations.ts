import type { FastifyPluginAsync } from 'fastify'
import { plainBytes } from '../../catalog/canonical.ts'
import { operations } from '../../operations/index.ts'
import { answer, type Content } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { evaluateOpening, keepEvaluation, readEvaluation, reproduceEvaluation } = operations

/** Evaluations of openings. One that is to be kept says so in its body. */
export const evaluations: FastifyPluginAsync = async (app) => {
  app.post<{ Body: { keep?: unknown; project?: unknown } | null }>('/evaluations', { schema: routeSchema(keepEvaluation, 'Evaluations', { body: 'input' }) }, (request, reply) =>
    answer(isPlain(request.body) ? evaluateOpening : keepEvaluation, request, reply, { content: asBytes }),
  )
  app.get('/evaluations/:evaluation', { schema: routeSchema(readEvaluation, 'Evaluations', { path: ['evaluation'] }) }, (request, reply) => answer(readEvaluation, request, reply))
  app.post('/evaluations/:evaluation/reproduce', { schema: routeSchema(reproduceEvaluation, 'Evaluations', { path: ['evaluation'] }) }, (request, reply) =>
    answer(reproduceEvaluation, request, reply, { input: request.params }),
  )
}

/** The answer is long, and most of it was written before for others. */
function asBytes(value: unknown): Content {
  const { buffer, byteOffset, byteLength } = plainBytes(value)
  return { type: 'application/json; charset=utf-8', body: Buffer.from(buffer, byteOffset, byteLength) }
}

function isPlain(body: { keep?: unknown; project?: unknown } | null): boolean {
  return body?.keep === undefined && body?.project === undefined
}
