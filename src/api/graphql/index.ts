import type { FastifyPluginAsync } from 'fastify'
import mercurius from 'mercurius'
import { depsOf } from '../caller.ts'
import { topFieldsRule } from './bounds.ts'
import { formatErrors, handleRefusal } from './faults.ts'
import type { Context } from './schema.ts'
import { buildGraphqlSchema } from './schema.ts'

/**
 * The GraphQL door at /graphql. Depth is bounded to what introspection needs; the schema has no circle,
 * and what else a query may cost is bounded by the fields at the top and the page sizes of the operations.
 */
export const graphql: FastifyPluginAsync = async (app) => {
  await app.register(mercurius, {
    schema: buildGraphqlSchema(),
    context: (request): Context => ({ deps: depsOf(request) }),
    graphiql: false,
    queryDepth: 16,
    allowBatchedQueries: false,
    validationRules: [topFieldsRule],
    errorFormatter: formatErrors,
    errorHandler: handleRefusal,
  })
  app.graphql.addHook('preParsing', async (_, source) => refuseJson(source))
}

/** A query that is no GraphQL would be taken for a parsed one, if it is JSON, and fail in the middle. */
function refuseJson(source: string): void {
  if (/^\s*(?:[\d"[-]|(?:true|false|null)\s*$|\{\s*["}])/.test(source)) throw Object.assign(new Error('"query" must be a GraphQL document.'), { statusCode: 400 })
}
