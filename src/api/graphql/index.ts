import type { FastifyPluginAsync } from 'fastify'
import mercurius from 'mercurius'
import { charge, overQuota } from '../quota.ts'
import { topFieldsRule } from './bounds.ts'
import { costOf, mostUnits, tooCostly } from './cost.ts'
import type { Documents } from './documents.ts'
import { formatErrors, overQuotaError } from './faults.ts'
import { graphqlRoute } from './route.ts'
import { buildGraphqlSchema, type Context } from './schema.ts'

/** As often is a query answered before it is compiled. */
const answersBeforeCompiling = 3

/**
 * The GraphQL door at /graphql. Depth is bounded to what introspection needs and the schema has no circle; what else a query
 * may cost is worked out before it is executed.
 */
export const graphql: FastifyPluginAsync<{ readonly documents: Documents }> = async (app, { documents }) => {
  await app.register(mercurius, {
    schema: buildGraphqlSchema(),
    routes: false,
    graphiql: false,
    queryDepth: 16,
    jit: answersBeforeCompiling,
    validationRules: [topFieldsRule],
    errorFormatter: formatErrors,
  })
  app.graphql.addHook('preExecution', async (schema, document, context, variables) => {
    const { operationName } = context as unknown as Context
    const cost = costOf(schema, document, { variables: variables as Record<string, unknown>, operationName })
    if (cost > mostUnits) throw tooCostly(cost)
    const { request } = context.reply
    if (!(await charge(request, context.reply, cost))) throw overQuotaError(overQuota(request, cost))
  })
  await app.register(graphqlRoute, { documents })
}
