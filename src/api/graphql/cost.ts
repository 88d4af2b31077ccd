import { GraphQLError, type DocumentNode, type GraphQLSchema } from 'graphql'
import { fieldExtensionsEstimator, getComplexity, simpleEstimator, type ComplexityEstimatorArgs } from 'graphql-query-complexity'
import { unitsOf, type AnyOperation } from '../../operations/operation.ts'

/** The most units that one request may cost. */
export const mostUnits = 500

/** As many members does a page have when nothing is said. */
const usualPage = 50

/** Members answered for one unit. */
const membersPerUnit = 1_000

/** What a field at the top costs: its operation, and all that is asked of every entry of its page. Nothing below it asks for more. */
export function costOfField(operation: AnyOperation) {
  return ({ args, childComplexity }: Pick<ComplexityEstimatorArgs, 'args' | 'childComplexity'>): number => {
    const first: unknown = args['first']
    const entries = Object.hasOwn(operation.input.shape, 'first') ? (typeof first === 'number' ? Math.max(1, first) : usualPage) : 1
    return unitsOf(operation, args) + Math.ceil((entries * childComplexity) / membersPerUnit)
  }
}

/** The units of a valid query with its variables. */
export function costOf(schema: GraphQLSchema, query: DocumentNode, { variables, operationName }: { readonly variables: Record<string, unknown>; readonly operationName: string | undefined }): number {
  return getComplexity({ schema, query, variables, ...(operationName === undefined ? {} : { operationName }), estimators: [fieldExtensionsEstimator(), simpleEstimator({ defaultComplexity: 1 })] })
}

export function tooCostly(cost: number): GraphQLError {
  return new GraphQLError(`The query costs ${cost} units; one request may cost ${mostUnits}. Ask for less at once: smaller pages, fewer fields at the top.`, { extensions: { cost: { units: cost, most: mostUnits } } })
}
