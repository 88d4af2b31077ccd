import type { FastifyPluginAsync } from 'fastify'
import { listPublications, readPublication } from '../../operations/publications.ts'
import { answer } from './answer.ts'
import { routeSchema } from './schemas.ts'

/** The codes, standards and notes that figures are taken from. */
export const publications: FastifyPluginAsync = async (app) => {
  app.get('/publications', { schema: routeSchema(listPublications, 'Publications') }, (request, reply) => answer(listPublications, request, reply))
  app.get('/publications/:publication', { schema: routeSchema(readPublication, 'Publications', { path: ['publication'] }) }, (request, reply) => answer(readPublication, request, reply))
}
