import type { FastifyPluginAsync } from 'fastify'
import { listJurisdictions, readJurisdiction } from '../../operations/jurisdictions.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

/** Who has adopted and amended what. */
export const jurisdictions: FastifyPluginAsync = async (app) => {
  app.get('/jurisdictions', { schema: routeSchema(listJurisdictions, 'Jurisdictions') }, (request, reply) => answer(listJurisdictions, request, reply))
  app.get('/jurisdictions/:jurisdiction', { schema: routeSchema(readJurisdiction, 'Jurisdictions', { path: ['jurisdiction'] }) }, (request, reply) => answer(readJurisdiction, request, reply))
}
