import type { FastifyPluginAsync } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { listQuantities, readQuantity, computeQuantities } = operations

/** The quantities, and each of them computed by itself. */
export const quantities: FastifyPluginAsync = async (app) => {
  app.get('/quantities', { schema: routeSchema(listQuantities, 'Quantities') }, (request, reply) => answer(listQuantities, request, reply))
  app.get('/quantities/:quantity', { schema: routeSchema(readQuantity, 'Quantities', { path: ['quantity'] }) }, (request, reply) => answer(readQuantity, request, reply))
  app.post('/computations', { schema: routeSchema(computeQuantities, 'Quantities', { body: 'input' }) }, (request, reply) => answer(computeQuantities, request, reply))
}
