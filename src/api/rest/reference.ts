import type { FastifyPluginAsync } from 'fastify'
import { answerLate } from '../answer-late.ts'

const addresses = ['/reference', '/reference/', '/reference/json', '/reference/yaml', '/reference/static/*']

/** The reference of the API and its OpenAPI document. */
export const reference: FastifyPluginAsync = async (app) => {
  answerLate(app, addresses, async () => (await import('./described.ts')).describedApi(app.publicUrl))
}
