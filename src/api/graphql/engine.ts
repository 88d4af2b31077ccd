import Fastify, { type FastifyReply } from 'fastify'
import type { ExecutionResult } from 'graphql'
import mercurius from 'mercurius'
import { charge, overQuota } from '../quota.ts'
import { topFieldsRule } from './bounds.ts'
import { costOf, mostUnits, tooCostly } from './cost.ts'
import { formatErrors, overQuotaError } from './faults.ts'
import { buildGraphqlSchema, type Context } from './schema.ts'

/** Answers a query that is asked through a request, whose reply stands in the context. */
export type Engine = (source: string, context: Context & { readonly reply: FastifyReply }, variables: Record<string, unknown>, operationName: string | undefined) => Promise<ExecutionResult>

/** As often is a query answered before it is compiled. */
const answersBeforeCompiling = 3

/**
 * What answers queries. Depth is bounded to what introspection needs and the schema has no circle; what else a query may cost
 * is worked out before it is executed. The engine is a plugin, and none is taken once an application is ready: it has one of
 * its own, which never listens.
 */
export async function graphqlEngine(): Promise<Engine> {
  const app = Fastify()
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
  await app.ready()
  return (source, context, variables, operationName) => app.graphql(source, context, variables, operationName)
}
