import { buildClientSchema, getIntrospectionQuery, getNamedType, isListType, isNonNullType, isObjectType, type GraphQLObjectType, type IntrospectionQuery } from 'graphql'
import { describe, expect, test } from 'vitest'
import { client } from './client.ts'
import { jurisdictionService } from './jurisdiction.ts'

/** Pages over GraphQL, by the Relay cursor connections specification: https://relay.dev/graphql/connections.htm */
interface Connection {
  readonly edges: readonly { readonly cursor: string; readonly node: { readonly rule: string } }[]
  readonly pageInfo: { readonly hasNextPage: boolean; readonly hasPreviousPage: boolean; readonly startCursor: string | null; readonly endCursor: string | null }
}

const { graphql, http } = await client()
const schema = buildClientSchema(((await graphql(getIntrospectionQuery())).body as { data: IntrospectionQuery }).data)
const lists = Object.values(schema.getQueryType()?.getFields() ?? {}).filter(({ args }) => args.some(({ name }) => name === 'after') && args.some(({ name }) => name === 'first'))
const pages = lists.filter(({ type }) => getNamedType(type).name.endsWith('Connection'))
const typesOf = (type: GraphQLObjectType) => Object.fromEntries(Object.values(type.getFields()).map((field) => [field.name, field.type.toString()]))

test('every list that is paged by cursors is a connection', () => {
  expect(pages.length).toBeGreaterThan(9)
  // The journal is read after a sequence, which whoever follows it remembers.
  expect(lists.filter((field) => !pages.includes(field)).map(({ name }) => name)).toEqual(['journal'])
  expect(Object.keys(schema.getTypeMap()).filter((name) => name.endsWith('Page'))).toEqual(['JournalPage'])
})

test.each(pages)('$name has edges of nodes and cursors, and tells where its page lies', (field) => {
  const connection = getNamedType(field.type)
  if (!isObjectType(connection)) throw new Error('no object')
  const edges = connection.getFields()['edges']?.type
  const edge = edges && getNamedType(edges)
  expect(edges && isNonNullType(edges) && isListType(edges.ofType)).toBe(true)
  if (!isObjectType(edge)) throw new Error('no edge')
  expect(edge.name).toBe(connection.name.replace(/Connection$/, 'Edge'))
  expect(typesOf(edge)).toEqual({ node: expect.stringMatching(/^\w+!$/) as string, cursor: 'String!' })
  // Section 5.1.
  expect(typesOf(connection)['pageInfo']).toBe('PageInfo!')
  expect(typesOf(schema.getType('PageInfo') as GraphQLObjectType)).toEqual({ hasNextPage: 'Boolean!', hasPreviousPage: 'Boolean!', startCursor: 'String', endCursor: 'String' })
  expect(Object.fromEntries(field.args.filter(({ name }) => ['first', 'after'].includes(name)).map(({ name, type }) => [name, type.toString()]))).toEqual({ first: 'Int', after: 'String' })
})

const ask = async (first: number, after: string | null, more = 'topic: "lintel"') => {
  const query = `query($first: Int, $after: String) { rules(first: $first, after: $after, ${more}) { edges { cursor node { rule } } pageInfo { hasNextPage hasPreviousPage startCursor endCursor } } }`
  const response = await graphql(query, { first, after })
  return response.body as { data: { rules: Connection }; errors?: readonly { extensions: unknown }[] }
}

describe('a list of rules', async () => {
  const all = (await ask(200, null)).data.rules
  const names = all.edges.map(({ node }) => node.rule)

  test('is the same by pages of two as at once, and the same over REST', async () => {
    expect(names.length).toBeGreaterThan(4)
    const walked: string[] = []
    for (let after: string | null = null; ;) {
      const { edges, pageInfo }: Connection = (await ask(2, after)).data.rules
      walked.push(...edges.map(({ node }) => node.rule))
      expect(pageInfo).toMatchObject({ startCursor: edges[0]?.cursor, endCursor: edges.at(-1)?.cursor, hasPreviousPage: after !== null })
      if (!pageInfo.hasNextPage) break
      after = pageInfo.endCursor
    }
    expect(walked).toEqual(names)
    const { items, nextCursor } = (await http.get('/v1/rules?topic=lintel&first=2')).body as { items: readonly { rule: string }[]; nextCursor: string }
    expect([items.map(({ rule }) => rule), nextCursor]).toEqual([names.slice(0, 2), (await ask(2, null)).data.rules.pageInfo.endCursor])
  })

  test('goes on after any edge', async () => {
    for (const [index, { cursor }] of all.edges.slice(0, 4).entries()) expect((await ask(1, cursor)).data.rules.edges.map(({ node }) => node.rule)).toEqual(names.slice(index + 1, index + 2))
  })

  test('takes no cursor of a list with other filters', async () => {
    expect((await ask(1, all.edges[0]?.cursor ?? '', 'topic: "weep"')).errors).toMatchObject([{ extensions: { code: 'invalidInput' } }])
  })

  test('that is empty has no cursors', async () => {
    expect((await ask(2, null, 'topic: "nothing"')).data.rules).toEqual({ edges: [], pageInfo: { hasNextPage: false, hasPreviousPage: false, startCursor: null, endCursor: null } })
  })
})

test('lists of the store go on after any edge too', async () => {
  const service = await jurisdictionService()
  const token = await service.tokenFor({ kind: 'administer' })
  const send = (path: string, body: object) => service.http.post(path).set('authorization', `Bearer ${token}`).send(body)
  const made = await send('/v1/webhooks', { target: 'http://127.0.0.1:9/a', eventTypes: ['projectCreated'] }).expect(201)
  const { webhook } = (made.body as { webhook: { webhook: string } }).webhook
  for (let times = 0; times < 4; times += 1) await send(`/v1/webhooks/${webhook}/ping`, {}).expect(202)
  const page = async (first: number, after?: string) => {
    const query = 'query($webhook: String!, $first: Int, $after: String) { webhookDeliveries(webhook: $webhook, first: $first, after: $after) { edges { cursor node { delivery } } pageInfo { hasNextPage endCursor } } }'
    const response = await send('/graphql', { query, variables: { webhook, first, after } })
    return (response.body as { data: { webhookDeliveries: { edges: readonly { cursor: string; node: { delivery: string } }[]; pageInfo: { hasNextPage: boolean; endCursor: string } } } }).data.webhookDeliveries
  }
  const { edges } = await page(10)
  expect(edges).toHaveLength(4)
  for (const [index, { cursor }] of edges.entries()) expect((await page(1, cursor)).edges).toEqual(edges.slice(index + 1, index + 2))
  expect((await page(2)).pageInfo).toEqual({ hasNextPage: true, endCursor: edges[1]?.cursor })
})
