import { buildClientSchema, getIntrospectionQuery, type IntrospectionQuery } from 'graphql'
import type { OpenAPIV3_1 } from 'openapi-types'
import type { operations } from '../../src/operations/index.ts'
import type { Client } from '../api/client.ts'
import { fullQuery } from './full-query.ts'
import { servedDocument } from '../api/served-document.ts'

type Input = Readonly<Record<string, unknown>>

/** The operations that anyone may ask, whoever else has asked before; and the field of the GraphQL schema behind which each stands. */
export const fields = {
  evaluateOpening: 'evaluation', evaluateBatch: 'batch', listRules: 'rules', readRule: 'rule', listJurisdictions: 'jurisdictions', readJurisdiction: 'jurisdiction',
  listPublications: 'publications', readPublication: 'publication', listFacts: 'facts', listHoldPoints: 'holdPoints', readForm: 'form',
  listAmendments: 'amendments', listReleases: 'releases',
  listQuantities: 'quantities', readQuantity: 'quantity', computeQuantities: 'computation',
  takeOff: 'takeOff', planCuts: 'cutList', analyzeDrivingRain: 'drivingRain',
} as const satisfies Partial<Record<keyof typeof operations, string>>

export type OperationName = keyof typeof fields
export const operationNames = Object.keys(fields) as OperationName[]

/** Asks over REST, by what the OpenAPI document says of the operation. */
export async function overRest({ app, http }: Client, operation: OperationName, input: Input) {
  const { method, path, described } = routeOf(await servedDocument(app), operation)
  if (method !== 'get') return http[method](path).send(input)
  const inPath = (described.parameters ?? []).flatMap((parameter) => ('in' in parameter && parameter.in === 'path' ? [parameter.name] : []))
  const address = inPath.reduce((filled, name) => filled.replace(`{${name}}`, encodeURIComponent(String(input[name]))), path)
  return http.get(address).query(Object.fromEntries(Object.entries(input).filter(([name]) => !inPath.includes(name))))
}

/** Asks over GraphQL, with every field that introspection tells of. */
export async function overGraphql(client: Client, operation: OperationName, input: Input) {
  return client.graphql(fullQuery(await schemaOf(client), fields[operation]), input)
}

interface Connection {
  readonly edges: readonly { readonly node: unknown }[]
  readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string | null }
}

/** What GraphQL answers as a connection, as the page that REST answers. */
export function asPage(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || !('edges' in value)) return value
  const { edges, pageInfo: { hasNextPage, endCursor } } = value as Connection
  return { items: edges.map(({ node }) => node), nextCursor: hasNextPage ? endCursor : null }
}

const schemas = new WeakMap<Client, ReturnType<typeof introspected>>()

function schemaOf(client: Client) {
  const known = schemas.get(client) ?? introspected(client)
  schemas.set(client, known)
  return known
}

async function introspected(client: Client) {
  const response = await client.graphql(getIntrospectionQuery())
  return buildClientSchema((response.body as { data: IntrospectionQuery }).data)
}

export function routeOf({ paths = {} }: OpenAPIV3_1.Document, operation: keyof typeof operations) {
  for (const [path, methods] of Object.entries(paths)) {
    for (const method of ['get', 'post', 'put'] as const) {
      const described = methods?.[method]
      if (described?.operationId === operation) return { method, path, described }
    }
  }
  throw new Error(`the document has no ${operation}`)
}
