import type { FastifyPluginAsync, FastifyRequest } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { readForm, readOpeningForm, postFormAnswers } = operations
const tag = 'Forms'
const opening = '/projects/:project/openings/:opening'
const path = ['project', 'opening']

/** Forms for an inspector: read as JSON Schema, and posted filled. */
export const forms: FastifyPluginAsync = async (app) => {
  app.get('/forms', { schema: routeSchema(readForm, tag) }, (request, reply) => answer(readForm, request, reply))
  app.get(`${opening}/form`, { schema: routeSchema(readOpeningForm, tag, { path }) }, (request, reply) => answer(readOpeningForm, request, reply))
  app.post(`${opening}/form-answers`, { schema: routeSchema(postFormAnswers, tag, { path, body: 'input' }) }, (request, reply) =>
    answer(postFormAnswers, request, reply, { input: { ...bodyOf(request), ...(request.params as object) } }),
  )
}

/** What is no object goes on as it is, for the operation to refuse in its own words. */
function bodyOf({ body }: FastifyRequest): object {
  return typeof body === 'object' && body !== null && !Array.isArray(body) ? body : { answers: body }
}
