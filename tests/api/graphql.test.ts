import { describe, expect, test } from 'vitest'
import { problemDocument } from '../../src/api/problem-document.ts'
import { client } from './client.ts'

const { http, graphql } = await client()
const json = 'application/json; charset=utf-8'

describe('a query that cannot be answered is refused by its own text', () => {
  test.each([
    ['no name', '{', 'Syntax Error: Expected Name, found <EOF>.'],
    ['an unknown field', '{ nope }', 'Cannot query field "nope" on type "Query".'],
    ['a missing argument', '{ rule { title } }', 'argument "rule" of type "String!" is required'],
    ['an unknown value', '{ rules(part: roof) { nextCursor } }', 'Value "roof" does not exist in "Part" enum.'],
    ['nothing', '', 'Unknown query'],
    ['a circle of fragments', '{ rules { ...a } } fragment a on RulePage { items { rule } ...b } fragment b on RulePage { ...a }', 'Cannot spread fragment "a" within itself'],
  ])('%s', async (_, query, message) => {
    const response = await graphql(query).expect(400).expect('content-type', json)
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
    expect(problemDocument.parse(response.body)).toMatchObject({ code: 'malformed', detail: '"query" must be a GraphQL document.' })
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

test('a query by GET is answered, with its variables', async () => {
  const query = 'query One($rule: String!) { rule(rule: $rule) { rule } }'
  const response = await http.get('/graphql').query({ query, variables: JSON.stringify({ rule: 'lintel.bearing-length' }), operationName: 'One' }).expect(200).expect('content-type', json)
  expect(response.body).toEqual({ data: { rule: { rule: 'lintel.bearing-length' } } })
})
