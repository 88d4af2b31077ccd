import { getNamedType, getNullableType, isEnumType, isInputObjectType, isLeafType, isListType, isNonNullType, type GraphQLField, type GraphQLInputType } from 'graphql'
import type { FastifyInstance } from 'fastify'
import type { OpenAPIV3_1 } from 'openapi-types'
import { buildGraphqlSchema } from '../../../src/api/graphql/schema.ts'
import { servedDocument } from '../served-document.ts'

export type Input = Readonly<Record<string, unknown>>

export interface Route {
  readonly operation: string
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE'
  readonly path: string
  readonly described: OpenAPIV3_1.OperationObject
}

/** Every route behind a caller, as the OpenAPI document tells of it. */
export async function routesOf(app: FastifyInstance): Promise<readonly Route[]> {
  const { paths = {} } = await servedDocument(app)
  return Object.entries(paths).filter(([path]) => path.startsWith('/v1')).flatMap(([path, methods]) =>
    (['get', 'post', 'put', 'patch', 'delete'] as const).flatMap((method) => {
      const described = methods?.[method]
      return described ? [{ operation: described.operationId ?? '', method: method.toUpperCase() as Route['method'], path, described }] : []
    }),
  )
}

/** Asks a route with an input: each member goes to its place in the path, the query, the If-Match header or the body. */
export async function overRest(app: FastifyInstance, { method, path, described }: Route, input: Input, token: string | null) {
  const parameters = (described.parameters ?? []) as OpenAPIV3_1.ParameterObject[]
  const { text, version, ...rest } = input
  const media = text === undefined ? 'application/json' : 'application/yaml'
  const members: Input = Object.fromEntries(Object.entries(rest).filter(([name]) => text === undefined || name !== 'format'))
  const inQuery = Object.fromEntries(parameters.filter((one) => one.in === 'query' && Object.hasOwn(members, one.name)).map(({ name }) => [name, String(members[name])]))
  const inPath = parameters.filter((one) => one.in === 'path').map(({ name }) => name)
  const body = Object.fromEntries(Object.entries(members).filter(([name]) => !inPath.includes(name) && !Object.hasOwn(inQuery, name)))
  const response = await app.inject({
    method,
    url: inPath.reduce((address, name) => address.replace(`{${name}}`, encodeURIComponent(wordIn(members, name))), path),
    query: inQuery,
    headers: { ...(token === null ? {} : { authorization: `Bearer ${token}` }), ...(version === undefined ? {} : { 'if-match': `"${wordIn(input, 'version')}"` }), ...(method === 'GET' ? {} : { 'content-type': media }) },
    ...(method === 'GET' ? {} : { payload: typeof text === 'string' ? text : JSON.stringify(body) }),
  })
  const code: unknown = response.statusCode < 400 ? 'answered' : response.json<{ code: string }>().code
  return { status: response.statusCode, headers: response.headers, body: response.body, code: String(code) }
}

function wordIn(members: Input, name: string): string {
  const value = members[name]
  return typeof value === 'string' ? value : 'none'
}

export interface Field {
  readonly name: string
  readonly root: 'query' | 'mutation'
  readonly described: GraphQLField<unknown, unknown>
}

export function fieldsOf(): readonly Field[] {
  const schema = buildGraphqlSchema()
  const under = (root: Field['root'], type: ReturnType<typeof schema.getQueryType>) => Object.values(type?.getFields() ?? {}).map((described) => ({ name: described.name, root, described }))
  return [...under('query', schema.getQueryType()), ...under('mutation', schema.getMutationType())]
}

/** Asks one field, with an input of which it takes what it knows; what else it requires is filled in with anything that fits. */
export async function overGraphql(app: FastifyInstance, { name, root, described }: Field, input: Input, token: string | null) {
  const taken = described.args.filter((one) => Object.hasOwn(input, one.name) || isNonNullType(one.type))
  const query = `${root}${brackets(taken.map((one) => `$${one.name}: ${one.type.toString()}`))} { ${name}${brackets(taken.map((one) => `${one.name}: $${one.name}`))} ${isLeafType(getNamedType(described.type)) ? '' : '{ __typename }'} }`
  const variables = Object.fromEntries(taken.map((one) => [one.name, Object.hasOwn(input, one.name) ? input[one.name] : anything(one.type)]))
  const response = await app.inject({ method: 'POST', url: '/graphql', headers: token === null ? {} : { authorization: `Bearer ${token}` }, payload: { query, variables } })
  const answered = response.json<{ code?: string; errors?: readonly { message: string; extensions?: { code?: string; errors?: unknown } }[] }>()
  if (answered.code !== undefined) return { status: response.statusCode, code: answered.code, body: '' }
  const [error] = answered.errors ?? []
  if (error && error.extensions?.code === undefined) throw new Error(`${name}: ${error.message}`)
  return { status: response.statusCode, code: error?.extensions?.code ?? 'answered', body: JSON.stringify(error?.extensions?.errors ?? null) }
}

/** A value that the type lets through, whatever the operation will say of it. */
function anything(type: GraphQLInputType): unknown {
  const plain = getNullableType(type)
  if (isListType(plain)) return [anything(plain.ofType)]
  if (isEnumType(plain)) return plain.getValues()[0]?.name
  if (!isInputObjectType(plain)) return { Int: 1, Float: 1, Boolean: false }[plain.name] ?? 'none'
  return Object.fromEntries(Object.values(plain.getFields()).filter((field) => isNonNullType(field.type)).map((field) => [field.name, anything(field.type)]))
}

function brackets(parts: readonly string[]): string {
  return parts.length === 0 ? '' : `(${parts.join(', ')})`
}
