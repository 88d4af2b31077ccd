import swagger from '@fastify/swagger'
import swaggerUi from '@fastify/swagger-ui'
import Fastify, { type FastifyInstance } from 'fastify'
import { nothingCompiled } from '../nothing-compiled.ts'
import { health } from './health.ts'
import { rest } from './index.ts'
import { documentOptions } from './openapi.ts'
import { namedSchemas } from './schemas.ts'

/** The REST door once more, with its OpenAPI document and the reference to read it by. It describes its routes and is never asked for them. */
export async function describedApi(publicUrl: string): Promise<FastifyInstance> {
  const app = Fastify({ schemaController: nothingCompiled })
  for (const schema of namedSchemas()) app.addSchema(schema)
  await app.register(swagger, documentOptions(publicUrl))
  await app.register(swaggerUi, {
    routePrefix: '/reference',
    uiConfig: { docExpansion: 'list', deepLinking: true },
    theme: { title: 'Wythe: API reference', css: [{ filename: 'plain.css', content: '.swagger-ui .topbar { display: none }' }] },
  })
  await app.register(health, { drain: 0 })
  await app.register(rest, { prefix: '/v1' })
  await app.ready()
  return app
}
