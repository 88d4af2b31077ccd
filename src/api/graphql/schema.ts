import { getNullableType, GraphQLError, GraphQLObjectType, GraphQLSchema, type GraphQLFieldConfig } from 'graphql'
import { operations } from '../../operations/index.ts'
import type { Dependencies, Operation } from '../../operations/operation.ts'
import { codeOfFailure, problemTypes } from '../problems.ts'
import { asSent } from './as-sent.ts'
import { TypesFromSchemas } from './types.ts'

/** What a resolver is given beside its arguments. */
export interface Context {
  readonly deps: Dependencies
}

/** The field under which each operation stands. */
const queries = {
  evaluation: operations.evaluateOpening,
  rules: operations.listRules,
  rule: operations.readRule,
  jurisdictions: operations.listJurisdictions,
  jurisdiction: operations.readJurisdiction,
  publications: operations.listPublications,
  publication: operations.readPublication,
  facts: operations.listFacts,
  holdPoints: operations.listHoldPoints,
} as const

/** The GraphQL door, built from the same operations as the REST one. Evaluating keeps nothing, so it is a query. */
export function buildGraphqlSchema(): GraphQLSchema {
  const types = new TypesFromSchemas()
  const fields = Object.entries<Operation>(queries).map(([name, operation]) => [name, fieldOf(operation, name, types)] as const)
  return new GraphQLSchema({ query: new GraphQLObjectType<unknown, Context>({ name: 'Query', fields: Object.fromEntries(fields) }) })
}

/** A field may be null, so that one refusal leaves the other fields of a query standing. */
function fieldOf(operation: Operation, name: string, types: TypesFromSchemas): GraphQLFieldConfig<unknown, Context> {
  const members = Object.entries(operation.input.shape)
  return {
    type: getNullableType(types.output(operation.output, name)),
    description: operation.description,
    args: Object.fromEntries(members.map(([key, schema]) => [key, types.inputField(schema as never, name.charAt(0).toUpperCase() + name.slice(1), key)])),
    resolve: (_, args, { deps }) => {
      const answered = operation.run(deps, asSent(operation.input, args))
      if (answered.ok) return answered.value
      const code = codeOfFailure[answered.code]
      throw new GraphQLError(problemTypes[code].title, { extensions: { code, errors: answered.problems } })
    },
  }
}
