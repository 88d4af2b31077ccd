import { z } from 'zod'
import type { Operation } from '../../operations/operation.ts'
import { problemDocument } from '../problem-document.ts'

type JsonSchema = Record<string, unknown>

/** The named schemas of the contract, as JSON Schema 2020-12, each once. */
export function namedSchemas(): readonly (JsonSchema & { $id: string })[] {
  const { schemas } = z.toJSONSchema(z.globalRegistry, { uri: (id) => `${id}#`, io: 'input', unrepresentable: 'any' })
  return Object.entries(schemas).map(([id, schema]) => ({ ...withoutDialect(schema as JsonSchema), $id: id }))
}

interface Placement {
  /** Which members of the operation's input stand in the path; the rest is the query, or the body where `body` is true. */
  readonly path?: readonly string[]
  readonly body?: boolean
  readonly example?: unknown
}

/** The documentation of a route, taken from the operation behind it. */
export function routeSchema(operation: Operation, tag: string, { path = [], body = false, example }: Placement = {}) {
  const members = Object.entries(operation.input.shape)
  const inPath = members.filter(([name]) => path.includes(name))
  const inQuery = members.filter(([name]) => !path.includes(name))
  return {
    operationId: operation.name,
    summary: operation.summary,
    description: operation.description,
    tags: [tag],
    ...(inPath.length > 0 ? { params: objectOf(inPath) } : {}),
    ...(!body && inQuery.length > 0 ? { querystring: objectOf(inQuery) } : {}),
    ...(body ? { body: { ...reference(operation.input), ...(example === undefined ? {} : { examples: [example] }) } } : {}),
    response: {
      200: { description: operation.summary, content: { 'application/json': { schema: reference(operation.output) } } },
      '4XX': { description: 'What is wrong, where, and how to mend it.', content: { 'application/problem+json': { schema: reference(problemDocument) } } },
      '5XX': { description: 'The service failed.', content: { 'application/problem+json': { schema: reference(problemDocument) } } },
    },
  }
}

function reference(schema: z.ZodType): JsonSchema {
  const id = z.globalRegistry.get(schema)?.id
  if (id === undefined) throw new Error('a schema of the contract has no id')
  return { $ref: `${id}#` }
}

function objectOf(members: readonly (readonly [string, unknown])[]): JsonSchema {
  const { properties, required } = withoutDialect(z.toJSONSchema(z.object(Object.fromEntries(members) as z.ZodRawShape), { io: 'input' }) as JsonSchema)
  return { type: 'object', properties: Object.fromEntries(Object.entries(properties as JsonSchema).map(([name, schema]) => [name, withoutNull(schema as JsonSchema)])), ...(required ? { required } : {}) }
}

/** A query has no null: a member is there or it is not. */
function withoutNull({ anyOf, $ref, ...rest }: JsonSchema & { anyOf?: JsonSchema[]; $ref?: string }): JsonSchema {
  const some = anyOf?.filter(({ type }) => type !== 'null')
  if (some?.length === 1) return { ...rest, ...withoutNull(some[0] ?? {}) }
  return { ...rest, ...($ref === undefined ? {} : { $ref: `${$ref.replace('#/$defs/', '')}#` }), ...(some ? { anyOf: some } : {}) }
}

function withoutDialect(schema: JsonSchema): JsonSchema {
  return Object.fromEntries(Object.entries(schema).filter(([key]) => key !== '$schema'))
}
