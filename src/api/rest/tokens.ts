import type { FastifyPluginAsync } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { createToken, listTokens, revokeToken } = operations

/** Who may do what. */
export const tokens: FastifyPluginAsync = async (app) => {
  app.get('/tokens', { schema: routeSchema(listTokens, 'Tokens') }, (request, reply) => answer(listTokens, request, reply))
  app.post('/tokens', { schema: routeSchema(createToken, 'Tokens', { body: 'input', status: 201 }) }, (request, reply) => answer(createToken, request, reply, { status: 201, headers: () => ({ 'cache-control': 'no-store' }) }))
  app.delete('/tokens/:token', { schema: routeSchema(revokeToken, 'Tokens', { path: ['token'] }) }, (request, reply) => answer(revokeToken, request, reply, { input: request.params }))
}
