import type { FastifyInstance } from 'fastify'
import type { OpenAPIV3_1 } from 'openapi-types'

const known = new WeakMap<FastifyInstance, Promise<OpenAPIV3_1.Document>>()

/** The OpenAPI document as the service gives it to whoever asks; each service is asked once. */
export function servedDocument(app: FastifyInstance): Promise<OpenAPIV3_1.Document> {
  const asked = known.get(app) ?? ask(app)
  known.set(app, asked)
  return asked
}

async function ask(app: FastifyInstance): Promise<OpenAPIV3_1.Document> {
  const answer = await app.inject('/reference/json')
  if (answer.statusCode !== 200) throw new Error(`/reference/json answered ${answer.statusCode}: ${answer.body.slice(0, 500)}`)
  return answer.json()
}
