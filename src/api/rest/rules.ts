import type { FastifyPluginAsync } from 'fastify'
import { listRules } from '../../operations/list-rules.ts'
import { readRule } from '../../operations/read-rule.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

/** The rules of the catalog. */
export const rules: FastifyPluginAsync = async (app) => {
  app.get('/rules', { schema: routeSchema(listRules, 'Rules') }, (request, reply) => answer(listRules, request, reply))
  app.get('/rules/:rule', { schema: routeSchema(readRule, 'Rules', { path: ['rule'] }) }, (request, reply) => answer(readRule, request, reply))
}
