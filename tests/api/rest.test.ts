import { describe, expect, test } from 'vitest'
import type { z } from 'zod'
import { problemDocument } from '../../src/api/problem-document.ts'
import { healthStatus } from '../../src/api/rest/health.ts'
import { operations } from '../../src/operations/index.ts'
import { facts } from '../../src/opening/facts.ts'
import { cases, nameOf } from '../conformance/cases.ts'
import { overRest } from '../conformance/doors.ts'
import { client, publicUrl } from './client.ts'

const service = await client()
const { http, deps } = service
const named = cases.filter(({ catalog }) => catalog === undefined).map((one, index) => [nameOf(one, index), one] as const)
const json = 'application/json; charset=utf-8'
const problemJson = 'application/problem+json; charset=utf-8'

type Problem = z.infer<typeof problemDocument>
type Page = { readonly items: readonly Readonly<Record<string, unknown>>[]; readonly nextCursor: string | null }

describe('what is answered has the shape that is published, and nothing more', () => {
  test.each(named.filter(([, { expect }]) => typeof expect !== 'string'))('%s', async (_, { operation, input }) => {
    const response = await overRest(service, operation, input)
    expect(response.headers['content-type']).toBe(json)
    expect(operations[operation].output.parse(response.body)).toEqual(response.body)
  })

  test.each(named.filter(([, { expect }]) => typeof expect === 'string'))('%s', async (_, { operation, input }) => {
    const response = await overRest(service, operation, input)
    expect(response.headers['content-type']).toBe(problemJson)
    const problem = problemDocument.parse(response.body)
    expect(problem).toMatchObject({ type: `${publicUrl}/problems/${problem.code}`, status: response.status, instance: expect.stringMatching(/^urn:request:id-\d+$/) as string })
  })

  test.each([['/livez', { status: 'live' }], ['/readyz', { status: 'ready', release: deps.catalog.release }]])('%s', async (path, expected) => {
    const response = await http.get(path).expect(200).expect('content-type', json)
    expect(healthStatus.parse(response.body)).toEqual(expected)
  })
})

describe('what is not asked rightly is refused', () => {
  const example = { edition: 'irc-2021', opening: { opening: { kind: 'window', width: '4 ft', height: '4 ft' } } }

  test.each(['/nowhere', '/v1', '/v1/rules/lintel.bearing-length/history', '/V1/rules', '/explorer/', '/reference/static/none.js'])('nothing is at %s: 404', async (path) => {
    const problem = problemIn(await http.get(path).expect(404).expect('content-type', problemJson))
    expect(problem).toMatchObject({ code: 'notFound', errors: [{ detail: `There is nothing at ${path}.` }] })
  })

  test.each([
    ['get', '/v1/evaluations', 'POST'], ['put', '/v1/evaluations', 'POST'], ['post', '/v1/rules', 'GET, HEAD'], ['delete', '/v1/rules/lintel.bearing-length', 'GET, HEAD'],
    ['patch', '/livez', 'GET, HEAD'], ['put', '/graphql', 'GET, HEAD, POST'], ['post', '/problems/notFound', 'GET, HEAD'],
  ] as const)('%s %s: 405, which answers %s', async (method, path, allowed) => {
    const response = await http[method](path).expect(405).expect('content-type', problemJson).expect('allow', allowed)
    expect(problemIn(response)).toMatchObject({ code: 'methodNotAllowed', detail: `${path} answers ${allowed}.` })
  })

  test.each(['text/plain', 'application/xml', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x'])('a body of %s: 415', async (type) => {
    const response = await http.post('/v1/evaluations').set('content-type', type).send(JSON.stringify(example)).expect(415).expect('content-type', problemJson)
    expect(problemIn(response)).toMatchObject({ code: 'unsupportedMediaType', detail: 'Send application/json.' })
  })

  test.each(['{', '', 'opening=1', '{"opening":{},}', '{"__proto__":{"jurisdiction":"us"}}', '{"opening":{"constructor":{"prototype":{}}}}'])('a body that is not JSON: %s: 400', async (body) => {
    const response = await http.post('/v1/evaluations').set('content-type', 'application/json').send(body).expect(400).expect('content-type', problemJson)
    expect(problemIn(response)).toMatchObject({ code: 'malformed' })
  })

  test.each([['[]', ''], ['"W-101"', ''], ['7', ''], ['null', '/opening'], ['{}', '/opening']])('a body that is JSON, but no request: %s: 422', async (body, place) => {
    const response = await http.post('/v1/evaluations').set('content-type', 'application/json').send(body).expect(422)
    expect(problemIn(response).errors.map(({ pointer }) => pointer)).toContain(place)
  })

  test('a body beyond a mebibyte: 413', async () => {
    const response = await http.post('/v1/evaluations').send({ ...example, opening: { reference: 'x'.repeat(1_048_577) } }).expect(413).expect('content-type', problemJson)
    expect(problemIn(response)).toMatchObject({ code: 'tooLarge', detail: 'Send less at a time: one opening, or a part of a sheet.' })
  })

  test.each(['/v1/rules/%ZZ', '/v1/rules/%E0%A4%A', '/v1/publications/%'])('an address that cannot be decoded: %s: 400', async (path) => {
    expect(problemIn(await http.get(path).expect(400).expect('content-type', problemJson))).toMatchObject({ code: 'malformed' })
  })

  test.each([
    ['/v1/rules?jurisdicton=us', '/jurisdicton', 'Did you mean "jurisdiction"?'], ['/v1/rules/lintel.bearing-length?part=head', '/part', 'Known: '], ['/v1/rules/lintel.bearing-length?rule=weep.spacing', '/rule', 'It stands in the path.'],
    ['/v1/jurisdictions?page=2', '/page', 'Known: '], ['/v1/jurisdictions/us?first=1', '/first', 'Known: '], ['/v1/publications?firsst=1', '/firsst', 'Did you mean "first"?'],
    ['/v1/publications/irc?edition=irc-2021', '/edition', 'Known: '], ['/v1/facts?kind=length', '/kind', 'Known: '], ['/v1/hold-points?first=1', '/first', 'is not known here.'],
  ])('a query that nobody knows: %s: 422', async (path, pointer, advice) => {
    const { code, errors } = problemIn(await http.get(path).expect(422))
    expect(code).toBe('invalidInput')
    expect(errors).toMatchObject([{ code: 'unknownKey', pointer, detail: expect.stringContaining(advice) as string }])
  })

  test('a member said twice: 422', async () => {
    const { errors } = problemIn(await http.get('/v1/rules?jurisdiction=us&jurisdiction=us-xa').expect(422))
    expect(errors).toMatchObject([{ code: 'wrongType', pointer: '/jurisdiction' }])
  })

  test('an id longer than any is refused by the operation, not by the router', async () => {
    expect(problemIn(await http.get(`/v1/rules/${'x'.repeat(150)}`).expect(404))).toMatchObject({ code: 'notFound', detail: `There is no rule "${'x'.repeat(150)}".` })
    expect(problemIn(await http.get(`/v1/rules/${'x'.repeat(201)}`).expect(422))).toMatchObject({ errors: [{ code: 'outOfRange', pointer: '/rule' }] })
    expect(problemIn(await http.get(`/v1/rules/${'x'.repeat(501)}`).expect(400))).toMatchObject({ code: 'malformed' })
  })
})

describe('a list is handed out page by page', () => {
  const all: Readonly<Record<string, { readonly id: string; readonly known: readonly string[] }>> = {
    '/v1/rules': { id: 'rule', known: [...deps.catalog.rules.keys()] },
    '/v1/jurisdictions': { id: 'jurisdiction', known: [...deps.catalog.jurisdictions.keys()] },
    '/v1/publications': { id: 'publication', known: [...deps.catalog.publications.keys()] },
    '/v1/facts': { id: 'fact', known: [...facts.keys()] },
  }
  const walks = Object.entries(all).flatMap(([path, { id, known }]) => [1, 7, 200].map((size) => ({ path, size, id, known })))

  test.each(walks.filter(({ size, known }) => size > 1 || known.length < 50))('$path by $size: every item once', async ({ path, size, id, known }) => {
    const pages = await walk(path, { first: size })
    expect(pages.flatMap(({ items }) => items.map((item) => item[id])).toSorted()).toEqual(known.toSorted())
    expect(pages).toHaveLength(Math.ceil(known.length / size))
    expect(pages.slice(0, -1).every(({ items }) => items.length === size)).toBe(true)
  })

  test('with filters every page keeps to them', async () => {
    const filter = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01', part: 'head' }
    const items = (await walk('/v1/rules', { ...filter, first: 5 })).flatMap((page) => page.items)
    expect(items.map(({ part }) => part)).toEqual(items.map(() => 'head'))
    expect(items).toEqual((await walk('/v1/rules', { ...filter, first: 200 })).flatMap((page) => page.items))
    expect(items.length).toBeGreaterThan(5)
  })

  test('left out, the size is 50', async () => {
    const { items, nextCursor } = (await http.get('/v1/rules').expect(200)).body as Page
    expect(items).toHaveLength(50)
    expect(nextCursor).not.toBeNull()
  })

  test.each(Object.keys(all))('%s refuses the cursor of another list', async (path) => {
    const other = path === '/v1/facts' ? '/v1/rules' : '/v1/facts'
    const { nextCursor } = (await http.get(other).query({ first: 1 }).expect(200)).body as Page
    const { code, errors } = problemIn(await http.get(path).query({ after: nextCursor }).expect(422))
    expect(code).toBe('invalidInput')
    expect(errors).toMatchObject([{ code: 'notAllowed', pointer: '/after' }])
  })
})

describe('HEAD', () => {
  test('answers as GET, without a body', async () => {
    const get = await http.get('/v1/rules/lintel.bearing-length').expect(200)
    const head = await http.head('/v1/rules/lintel.bearing-length').expect(200)
    expect(head.text).toBeUndefined()
    expect(head.headers['content-length']).toBe(get.headers['content-length'])
    expect(head.headers['content-type']).toBe(json)
  })

  test('of what is not there is a 404', () => http.head('/v1/rules/no.such-rule').expect(404).expect('content-type', problemJson))
})

async function walk(path: string, query: object): Promise<readonly Page[]> {
  const pages: Page[] = []
  let after: string | null | undefined
  do {
    const page = (await http.get(path).query({ ...query, ...(after === undefined ? {} : { after }) }).expect(200)).body as Page
    pages.push(page)
    after = page.nextCursor
  } while (after !== null)
  return pages
}

function problemIn({ body }: { readonly body: unknown }): Problem {
  return problemDocument.parse(body)
}
