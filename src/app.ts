import helmet from '@fastify/helmet'
import swagger from '@fastify/swagger'
import swaggerUi from '@fastify/swagger-ui'
import underPressure from '@fastify/under-pressure'
import Fastify, { type FastifyInstance, type FastifyServerOptions } from 'fastify'
import { graphql } from './api/graphql/index.ts'
import { pages } from './api/pages.ts'
import { watchMethods } from './api/rest/allowed-methods.ts'
import { handleError, notFoundHandler } from './api/rest/faults.ts'
import { health } from './api/rest/health.ts'
import { rest } from './api/rest/index.ts'
import { documentOptions } from './api/rest/openapi.ts'
import { namedSchemas } from './api/rest/schemas.ts'
import type { Dependencies } from './operations/operation.ts'

declare module 'fastify' {
  interface FastifyInstance {
    deps: Dependencies
    publicUrl: string
  }
}

export interface AppOptions {
  readonly deps: Dependencies
  readonly publicUrl: string
  readonly explorerDir?: string | undefined
  readonly logger?: FastifyServerOptions['logger']
}

const largestBody = 1_048_576

/** Builds the service. Never listens and never reads the environment. */
export async function buildApp({ deps, publicUrl, explorerDir, logger = false }: AppOptions): Promise<FastifyInstance> {
  const app = Fastify({ logger, bodyLimit: largestBody, genReqId: () => deps.newId(), forceCloseConnections: 'idle' })
  app.decorate('deps', deps).decorate('publicUrl', publicUrl)
  app.setErrorHandler(handleError)
  app.setNotFoundHandler(notFoundHandler(watchMethods(app)))
  for (const schema of namedSchemas()) app.addSchema(schema)
  await app.register(helmet, { contentSecurityPolicy: { useDefaults: true, directives: { 'upgrade-insecure-requests': null } } })
  await app.register(underPressure, { maxEventLoopDelay: 1_000, pressureHandler: () => { throw Object.assign(new Error('too busy'), { statusCode: 503 }) } })
  await app.register(swagger, documentOptions(publicUrl))
  await app.register(swaggerUi, { routePrefix: '/reference', uiConfig: { docExpansion: 'list', deepLinking: true } })
  await app.register(health)
  await app.register(rest, { prefix: '/v1' })
  await app.register(graphql)
  await app.register(pages, { explorerDir })
  return app
}
