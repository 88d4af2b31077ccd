import type { FastifyPluginAsync } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { listQuantities, readQuantity, computeQuantities, takeOff, planCuts, analyzeDrivingRain } = operations

/** Thirty years of hours. */
const largestWeatherFile = 33_554_432

const tag = 'Quantities'

/** The quantities, and each of them computed by itself. */
export const quantities: FastifyPluginAsync = async (app) => {
  app.get('/quantities', { schema: routeSchema(listQuantities, tag) }, (request, reply) => answer(listQuantities, request, reply))
  app.get('/quantities/:quantity', { schema: routeSchema(readQuantity, tag, { path: ['quantity'] }) }, (request, reply) => answer(readQuantity, request, reply))
  app.post('/computations', { schema: routeSchema(computeQuantities, tag, { body: 'input' }) }, (request, reply) => answer(computeQuantities, request, reply))
  app.post('/take-offs', { schema: routeSchema(takeOff, tag, { body: 'input' }) }, (request, reply) => answer(takeOff, request, reply))
  app.post('/cut-lists', { schema: routeSchema(planCuts, tag, { body: 'input' }) }, (request, reply) => answer(planCuts, request, reply))
  app.post('/driving-rain', { schema: routeSchema(analyzeDrivingRain, tag, { body: 'input' }), bodyLimit: largestWeatherFile }, (request, reply) => answer(analyzeDrivingRain, request, reply))
}
