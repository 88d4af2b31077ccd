import { describe, expect, test } from 'vitest'
import { problemDocument } from '../../src/api/problem-document.ts'
import { parse } from 'graphql'
import { costOf } from '../../src/api/graphql/cost.ts'
import { buildGraphqlSchema } from '../../src/api/graphql/schema.ts'
import { digestOfText } from '../../src/catalog/digest.ts'
import { client } from './client.ts'
import { jurisdictionService } from './jurisdiction.ts'

const { http, graphql } = await client()
const media = 'application/graphql-response+json; charset=utf-8'

describe('a query that cannot be answered is refused by its own text', () => {
  test.each([
    ['no name', '{', 'Syntax Error: Expected Name, found <EOF>.'],
    ['an unknown field', '{ nope }', 'Cannot query field "nope" on type "Query".'],
    ['a missing argument', '{ rule { title } }', 'argument "rule" of type "String!" is required'],
    ['an unknown value', '{ rules(part: roof) { pageInfo { endCursor } } }', 'Value "roof" does not exist in "Part" enum.'],
    ['nothing', '', 'Syntax Error: Unexpected <EOF>.'],
    ['a circle of fragments', '{ rules { ...a } } fragment a on RuleConnection { pageInfo { endCursor } ...b } fragment b on RuleConnection { ...a }', 'Cannot spread fragment "a" within itself'],
  ])('%s', async (_, query, message) => {
    const response = await graphql(query).expect(400).expect('content-type', media)
    expect(response.body).not.toHaveProperty('data')
    expect((response.body as { errors: readonly { message: string }[] }).errors[0]?.message).toContain(message)
  })

  test('a change that is not known', async () => {
    const response = await graphql('mutation { evaluation { id } }')
    const { data = null, errors } = response.body as { data?: unknown; errors: readonly unknown[] }
    expect({ data, errors: errors.length }).toEqual({ data: null, errors: 1 })
  })
})

describe('a request that holds no query is refused as over REST', () => {
  test.each(['{', 'query'])('the body %s', async (body) => {
    const response = await http.post('/graphql').set('content-type', 'application/json').send(body).expect(400)
    expect(problemDocument.parse(response.body)).toMatchObject({ code: 'malformed' })
  })

  test.each(['7', '"x"', '[]', 'true', 'null ', '{}', '{ "kind": "Document", "definitions": [] }', '-1'])('a query that is JSON: %s', async (query) => {
    const response = await graphql(query).expect(400)
    expect(response.body).toEqual({ errors: [{ message: '"query" must be a GraphQL document.' }] })
  })

  test('parameters of another type, all of them told', async () => {
    const response = await http.post('/graphql').send({ query: 7, variables: [], extensions: 'x', operationName: {} }).expect(400)
    expect((response.body as { errors: readonly { message: string }[] }).errors.map(({ message }) => message)).toEqual([
      '"query" must be a text.', '"operationName" must be a text.', '"variables" must be an object.', '"extensions" must be an object.',
    ])
  })

  test('a form, which a page of another origin could send', () => http.post('/graphql').type('text/plain').send('{"query":"{ holdPoints { items { id } } }"}').expect(415))

  test.each(['[]', '[{"query":"{ holdPoints { items { id } } }"}]'])('several at once: %s', async (body) => {
    await http.post('/graphql').set('content-type', 'application/json').send(body).expect(400)
  })
})

describe('what one query may ask for is bounded', () => {
  const many = (count: number) => Array.from({ length: count }, (_, index) => `a${index}: holdPoints { items { id } }`).join(' ')

  test.each([
    ['side by side', (count: number) => `{ ${many(count)} }`],
    ['in a fragment', (count: number) => `{ ...all } fragment all on Query { ${many(count)} }`],
    ['in fragments of fragments', (count: number) => `{ ...on Query { ...all } } fragment all on Query { b: holdPoints { items { id } } ...more } fragment more on Query { ${many(count - 1)} }`],
  ])('fields at the top %s', async (_, query) => {
    await graphql(query(50)).expect(200)
    const response = await graphql(query(51)).expect(400)
    expect(response.body).toMatchObject({ errors: [{ message: 'The query asks for 51 fields at the top; at most 50 are answered at once.' }] })
  })

  test('the same field asked for again counts once', () => graphql(`{ ${'holdPoints { items { id } } '.repeat(60)} }`).expect(200))

  test('depth', async () => {
    const deep = `{ __schema { types { ${'fields { type { '.repeat(10)} name ${'} } '.repeat(10)} } } }`
    const response = await graphql(deep).expect(400)
    expect((response.body as { errors: readonly { message: string }[] }).errors[0]?.message).toContain('depth')
  })
})

describe('what a query costs is worked out before it is executed', () => {
  const schema = buildGraphqlSchema()
  const many = (count: number, field: string) => `{ ${Array.from({ length: count }, (_, index) => `a${index}: ${field}`).join(' ')} }`

  test.each<[string, string, number]>([
    ['one small read', '{ rule(rule: "lintel.bearing-length") { rule title } }', 1 + 1],
    ['a page by its size and its fields', '{ rules(first: 200) { edges { node { rule title statement part holdPoint } } pageInfo { hasNextPage endCursor } } }', 1 + Math.ceil((200 * (1 + 1 + 5)) / 1_000)],
    ['a page of the usual size', '{ rules { edges { node { rule } } } }', 1 + 1],
    ['computations, each by itself', many(40, 'evaluation(edition: "irc-2021", opening: { opening: { kind: window, width: "4 ft", height: "5 ft" } }) { digest }'), 40 * (5 + 1)],
    ['what stands in a fragment', '{ ...one } fragment one on Query { a: rule(rule: "x") { rule } b: rule(rule: "y") { rule } }', 2 * 2],
  ])('%s', (_, query, cost) => expect(costOf(schema, parse(query), { variables: {}, operationName: undefined })).toBe(cost))

  test('and what costs too much is refused as a whole, with its cost', async () => {
    const query = `{ ${Array.from({ length: 50 }, (_, index) => `a${index}: rules(first: 200) { edges { node { ${Array.from({ length: 60 }, (__, field) => `b${field}: title`).join(' ')} } } }`).join(' ')} }`
    const { errors, data } = (await graphql(query).expect(400)).body as { data?: unknown; errors: readonly { message: string; extensions: unknown }[] }
    expect(data).toBeUndefined()
    expect(errors).toEqual([{ message: 'The query costs 700 units; one request may cost 500. Ask for less at once: smaller pages, fewer fields at the top.', extensions: { cost: { units: 700, most: 500 } } }])
  })

  test('by the variables of each request, also when the query is known', async () => {
    const query = 'query($first: Int) { ' + Array.from({ length: 50 }, (_, index) => `a${index}: rules(first: $first) { edges { node { ${Array.from({ length: 60 }, (__, field) => `b${field}: title`).join(' ')} } } }`).join(' ') + ' }'
    await graphql(query, { first: 1 }).expect(200)
    await graphql(query, { first: 200 }).expect(400)
    await graphql(query, { first: 1 }).expect(200)
  })

  test('a posting is charged by its entries', async () => {
    const entries = Array.from({ length: 200 }, () => ({ id: '0199a000-0000-7000-8000-000000000001', opening: 'w', at: '2026-03-01T00:00:00Z', by: 'crew' }))
    const response = await graphql('mutation($entries: [EntryInput!]!) { postEntries(project: "p", entries: $entries) { results { id } } }', { entries }).expect(400)
    expect(response.body).toMatchObject({ errors: [{ extensions: { cost: { units: 601 } } }] })
  })
})

describe('documents that are known to the service', async () => {
  const text = 'query One($rule: String!) { rule(rule: $rule) { rule } }'
  const documentId = digestOfText(text)
  const byId = new Map([[documentId, text]])
  const knowing = await client({ documents: { byId, only: false } })
  const knowingOnly = await client({ documents: { byId, only: true } })
  const answer = { data: { rule: { rule: 'lintel.bearing-length' } } }
  const variables = { rule: 'lintel.bearing-length' }

  test('may be named instead of sent, by POST and by GET', async () => {
    expect((await knowing.http.post('/graphql').send({ documentId, variables }).expect(200)).body).toEqual(answer)
    expect((await knowing.http.get('/graphql').query({ documentId, variables: JSON.stringify(variables) }).expect(200)).body).toEqual(answer)
  })

  test('are the only ones where that is demanded', async () => {
    await knowingOnly.http.post('/graphql').send({ documentId, variables }).expect(200)
    expect((await knowingOnly.http.post('/graphql').send({ query: text, variables }).expect(400)).body).toMatchObject({ errors: [{ message: expect.stringContaining('Only documents that are known') as string }] })
  })

  test('one that is not known is refused', async () => {
    const response = await knowing.http.post('/graphql').send({ documentId: `sha256:${'0'.repeat(64)}` }).expect(400)
    expect((response.body as { errors: readonly { message: string }[] }).errors[0]?.message).toContain('There is no document')
  })
})

test('a query answers the same before and after it is compiled', async () => {
  const query = '{ rule(rule: "lintel.bearing-length") { rule title disagreements { source } } none: rule(rule: "no.such-rule") { title } }'
  const answers: unknown[] = []
  for (let time = 0; time < 6; time += 1) answers.push((await graphql(query).expect(200)).body)
  for (const one of answers) expect(one).toEqual(answers[0])
  expect(answers[0]).toMatchObject({ data: { rule: { rule: 'lintel.bearing-length' }, none: null }, errors: [{ path: ['none'], extensions: { code: 'notFound' } }] })
})

test('a page takes as many reads for many members as for one', async () => {
  const { http: guarded, records, tokenFor } = await jurisdictionService()
  const token = await tokenFor({ kind: 'record' })
  const reads: string[] = []
  const [listProjects, readProject] = [records.listProjects.bind(records), records.readProject.bind(records)]
  records.listProjects = (...given) => { reads.push('listProjects'); return listProjects(...given) }
  records.readProject = (...given) => { reads.push('readProject'); return readProject(...given) }
  const readsFor = async (members: number): Promise<readonly string[]> => {
    for (let number = 0; number < members; number += 1) {
      await guarded.post('/v1/projects').set('authorization', `Bearer ${token}`).send({ id: crypto.randomUUID(), title: 'House', asOf: '2026-03-01', edition: 'irc-2021' }).expect(201)
    }
    reads.length = 0
    await guarded.post('/graphql').set('authorization', `Bearer ${token}`).send({ query: '{ projects(first: 50) { edges { cursor node { project title version } } pageInfo { endCursor } } }' }).expect(200)
    return [...reads]
  }
  expect(await readsFor(1)).toEqual(['listProjects'])
  expect(await readsFor(20)).toEqual(['listProjects'])
})

test('a mutation by GET is refused, with the method that is meant', async () => {
  const response = await http.get('/graphql').query({ query: 'mutation { revokeToken(token: "t") { token } }' }).expect(405).expect('allow', 'POST')
  expect(response.body).not.toHaveProperty('data')
})

test('a query by GET is answered, with its variables', async () => {
  const query = 'query One($rule: String!) { rule(rule: $rule) { rule } }'
  const response = await http.get('/graphql').query({ query, variables: JSON.stringify({ rule: 'lintel.bearing-length' }), operationName: 'One' }).expect(200).expect('content-type', 'application/json; charset=utf-8')
  expect(response.body).toEqual({ data: { rule: { rule: 'lintel.bearing-length' } } })
})
