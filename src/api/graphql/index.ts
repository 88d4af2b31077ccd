import type { FastifyPluginAsync } from 'fastify'
import mercurius from 'mercurius'
import type { Context } from './schema.ts'
import { buildGraphqlSchema } from './schema.ts'

/** The GraphQL door at /graphql. Depth is bounded here; what a query may cost otherwise is bounded by the page sizes of the operations. */
export const graphql: FastifyPluginAsync = async (app) => {
  await app.register(mercurius, {
    schema: buildGraphqlSchema(),
    context: (request): Context => ({ deps: request.server.deps }),
    graphiql: false,
    queryDepth: 12,
    allowBatchedQueries: false,
  })
}
