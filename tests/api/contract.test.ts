import supertest from 'supertest'
import { afterAll, describe, expect, test } from 'vitest'
import { buildApp, type Watcher } from '../../src/app.ts'
import { contractViolations } from './contract-document.ts'
import { watchContract } from './contract.ts'
import { dependencies, publicUrl } from './client.ts'
import { serviceOf } from './service.ts'

const violations: string[] = []
/** What is made of an answer on its way out, for a moment. */
let damage: (body: string) => string = (body) => body
let asType: string | undefined
const damaging: Watcher = (app) => {
  app.addHook('onSend', async (_, reply, payload) => {
    if (asType !== undefined) reply.type(asType)
    return typeof payload === 'string' ? damage(payload) : payload
  })
}
const deps = await serviceOf(await dependencies())
const app = await buildApp({ deps, publicUrl, mostLag: 0, watchers: [damaging, watchContract(violations)] })
await app.ready()
afterAll(async () => {
  await app.close()
  await deps.records.close()
})
const http = supertest(app.server)

async function found(ask: () => PromiseLike<unknown>, { body = (text: string) => text, type }: { readonly body?: typeof damage; readonly type?: string } = {}): Promise<readonly string[]> {
  damage = body
  asType = type
  await ask()
  damage = (text) => text
  asType = undefined
  return violations.splice(0)
}

const ready = () => http.get('/readyz')

describe('the check of answers', () => {
  test('lets stand what is as described: an answer, a refusal, an address that is not there, one for the headers alone', async () => {
    expect(await found(ready)).toEqual([])
    expect(await found(() => http.get('/v1/rules?first=2'))).toEqual([])
    expect(await found(() => http.get('/v1/rules?first=0'))).toEqual([])
    expect(await found(() => http.get('/v1/nothing'))).toEqual([])
    expect(await found(() => http.head('/v1/rules?first=2'))).toEqual([])
  })

  test.each([
    ['a member that is missing', (text: string) => text.replace('"status"', '"state"'), "GET /readyz: 200 answer / must have required property 'status' {\"missingProperty\":\"status\"}"],
    ['a member that is not described', (text: string) => text.replace('{', '{"more":1,'), 'GET /readyz: 200 answer / must NOT have additional properties {"additionalProperty":"more"}'],
    ['a value of another type', (text: string) => text.replace('"ready"', '7'), 'GET /readyz: 200 answer /status/ must be equal to one of the allowed values {"allowedValues":["live","ready","stopping"]}'],
  ])('finds %s', async (_, body, told) => expect(await found(ready, { body })).toContain(told))

  test('finds it in a refusal, and in one for what is nowhere', async () => {
    const body = (text: string) => text.replace('"instance"', '"instant"')
    expect((await found(() => http.get('/v1/rules/none'), { body })).join()).toContain('GET /v1/rules/none: 404 answer')
    expect((await found(() => http.get('/v1/nothing'), { body })).join()).toContain('GET /v1/nothing: 404 answer')
  })

  test('finds another media type', async () => {
    expect(await found(ready, { type: 'text/html' })).toEqual(['GET /readyz: 200 is text/html, described as application/json'])
  })

  test('finds a status that is not described', () => {
    const answered = { status: 204, type: undefined, body: '' }
    expect(contractViolations({ method: 'GET', route: '/v1/rules', asked: { type: undefined, body: undefined, query: {} }, answered })).toEqual(['204 is not described'])
  })
})

describe('the check of requests that were taken', () => {
  const taken = (body: unknown, query = {}, type = 'application/json') => contractViolations({ method: 'POST', route: '/v1/cut-lists', asked: { type, body, query }, answered: { status: 200, type: 'text/html', body: '' } }).slice(1)

  test('finds a body that is not described', () => expect(taken({ pieces: 'many', stockLengths: ['10 ft'] }).join()).toContain('request body /pieces'))

  test('finds a media type and a query that are not described', () => {
    expect(taken('a', {}, 'text/plain')).toEqual(['a body of text/plain was taken and is not described'])
    expect(taken(undefined, { fast: 'yes' })).toEqual(['query "fast" was taken and is not described'])
  })

  test('lets an entry be wrong that was refused, and no other', () => {
    const entries = [{ id: 'no id' }, { id: 'no id' }]
    const body = JSON.stringify({ results: [{ outcome: 'refused' }, { outcome: 'recorded' }], openings: [] })
    const wrong = contractViolations({ method: 'POST', route: '/v1/projects/:project/entries', asked: { type: 'application/json', body: { entries }, query: {} }, answered: { status: 200, type: 'application/json', body } })
    expect(wrong.filter((what) => what.startsWith('request body /entries/0'))).toEqual([])
    expect(wrong.filter((what) => what.startsWith('request body /entries/1'))).not.toEqual([])
  })
})
