import Fastify from 'fastify'
import { parseItem, parseList } from 'structured-headers'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { sayDeprecated } from '../../src/api/rest/links.ts'
import { defineOperation } from '../../src/operations/operation.ts'
import { page, pageOf, paging } from '../../src/operations/page.ts'
import { embedmentOrdinance, jurisdictionService, problemIn } from './jurisdiction.ts'

const { http, tokenFor, records } = await jurisdictionService()
const inspector = await tokenFor({ kind: 'record' })
const other = await tokenFor({ kind: 'record' })
const clerk = await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' }, { kind: 'administer' })
const id = (last: number) => `0199d000-0000-7000-8000-${String(last).padStart(12, '0')}`
const house = (last: number) => ({ id: id(last), title: 'Invented house', jurisdiction: 'us-xa-101', asOf: '2026-03-01' })
const read = (path: string, token = inspector) => http.get(path).set('authorization', `Bearer ${token}`)
const post = (path: string, body: object, key?: string, token = inspector) => http.post(path).set('authorization', `Bearer ${token}`).set(key === undefined ? {} : { 'idempotency-key': key }).send(body)

/** RFC 9110, section 8.8.3 and 13.1.2. */
describe('what was read before', () => {
  test.each(['/v1/rules/lintel.bearing-length', '/v1/facts?first=5'])('%s has a strong ETag, and is not sent again to whoever has it', async (path) => {
    const first = await http.get(path).expect(200).expect('cache-control', 'public, no-cache')
    const etag = first.headers['etag'] ?? ''
    expect(etag).toMatch(/^"[\w-]{43}"$/)
    for (const known of [etag, `"other", ${etag}`, `W/${etag}`, '*']) {
      const again = await http.get(path).set('if-none-match', known).expect(304).expect('etag', etag).expect('cache-control', 'public, no-cache')
      expect([again.text, again.headers['content-type'], again.headers['content-length']]).toEqual(['', undefined, undefined])
    }
    await http.get(path).set('if-none-match', '"other"').expect(200)
    await http.head(path).expect(200).expect('etag', etag)
    await http.head(path).set('if-none-match', etag).expect(304)
  })

  test('a query over GraphQL by its address has one too; one that is posted is not kept', async () => {
    const ask = () => http.get('/graphql').query({ query: '{ rule(rule: "lintel.bearing-length") { title } }' })
    const first = await ask().expect(200).expect('cache-control', 'private, no-cache').expect('vary', 'Accept, Authorization')
    await ask().set('if-none-match', first.headers['etag'] ?? '').expect(304)
    const posted = await http.post('/graphql').send({ query: '{ __typename }' }).expect(200).expect('cache-control', 'no-store')
    expect(posted.headers['etag']).toBeUndefined()
  })

  test('two things that read differently have different ETags, and a refusal has none', async () => {
    const tags = await Promise.all(['/v1/facts?first=5', '/v1/facts?first=6'].map(async (path) => (await http.get(path)).headers['etag']))
    expect(new Set(tags).size).toBe(2)
    const refusal = await http.get('/v1/rules/none').set('if-none-match', '*').expect(404).expect('cache-control', 'no-store')
    expect(refusal.headers['etag']).toBeUndefined()
  })

  test('a record is for its reader alone, and its ETag is good for a change', async () => {
    await post('/v1/projects', house(1)).expect(201)
    const path = `/v1/projects/${id(1)}`
    const { headers } = await read(path).expect(200).expect('cache-control', 'private, no-cache').expect('vary', 'Authorization')
    const etag = headers['etag'] ?? ''
    await read(path).set('if-none-match', etag).expect(304)
    const change = (seen: string) => http.put(path).set('authorization', `Bearer ${inspector}`).set('if-match', seen).send({ title: 'Renamed', jurisdiction: 'us-xa-101', asOf: '2026-03-01' })
    await change(`W/${etag}`).expect(412)
    await change(`"old", ${etag}`).expect(428)
    await change('*').expect(428)
    const changed = await change(etag).expect(200)
    expect(changed.headers['etag']).toBe((await read(path)).headers['etag'])
    await change(etag).expect(412)
    await read(path).set('if-none-match', etag).expect(200)
  })

  test('a draft reads anew when what stands in its way has changed, though its version has not', async () => {
    const made = await http.post('/v1/amendment-drafts').set('authorization', `Bearer ${clerk}`).type('application/yaml').send(embedmentOrdinance('us-xa-101', 'ord-first')).expect(201)
    const rival = await http.post('/v1/amendment-drafts').set('authorization', `Bearer ${clerk}`).type('application/yaml').send(embedmentOrdinance('us-xa-101', 'ord-rival')).expect(201)
    const [path, rivalPath] = [made, rival].map(({ body }) => `/v1/amendment-drafts/${(body as { id: string }).id}`) as [string, string]
    const before = (await read(path, clerk)).headers['etag'] ?? ''
    await http.post(`${rivalPath}/adopt`).set('authorization', `Bearer ${clerk}`).set('if-match', rival.headers['etag'] ?? '').expect(201)
    const after = await read(path, clerk).set('if-none-match', before).expect(200)
    expect((after.headers['etag'] ?? '').split(';')[0]).toBe(before.split(';')[0])
    expect(after.body).toMatchObject({ check: { adoptable: false } })
  })
})

/** draft-ietf-httpapi-idempotency-key-header, sections 2.1 to 2.7. */
describe('a request with an Idempotency-Key', () => {
  test('sent again is answered byte by byte as the first time, and made once', async () => {
    const token = { title: 'form app', record: true }
    const first = await post('/v1/tokens', token, '"one"', clerk).expect(201)
    const again = await post('/v1/tokens', token, '"one"', clerk).expect(201)
    expect(again.text).toBe(first.text)
    for (const name of ['content-type', 'cache-control', 'etag']) expect(again.headers[name]).toBe(first.headers[name])
    expect((await records.listTokens()).filter(({ title }) => title === 'form app')).toHaveLength(1)
    expect((await post('/v1/tokens', token, '"two"', clerk)).text).not.toBe(first.text)
  })

  test('keeps no secret that can be read in the store', async () => {
    const first = await post('/v1/tokens', { title: 'sealed', record: true }, '"three"', clerk).expect(201)
    const secret = (first.body as { secret: string }).secret
    const kept: string[] = []
    const spied = records.keepAnswer.bind(records)
    records.keepAnswer = async (claim, sealed) => { kept.push(JSON.stringify(claim), Buffer.from(sealed, 'base64').toString('latin1')); return spied(claim, sealed) }
    const next = await post('/v1/tokens', { title: 'sealed too', record: true }, '"four"', clerk).expect(201)
    records.keepAnswer = spied
    expect(kept).toHaveLength(2)
    expect(kept.join()).not.toMatch(new RegExp(`${secret}|${(next.body as { secret: string }).secret}|four`))
  })

  test('is the caller\'s own: another caller may have the same key', async () => {
    await post('/v1/projects', house(10), '"shared"').expect(201)
    await post('/v1/projects', house(11), '"shared"', other).expect(201)
  })

  test('for another payload or another address is refused', async () => {
    await post('/v1/projects', house(12), '"used"').expect(201)
    expect(problemIn(await post('/v1/projects', house(13), '"used"').expect(422))).toMatchObject({ code: 'keyReused' })
    expect(problemIn(await post(`/v1/projects/${id(12)}/entries`, house(12), '"used"').expect(422))).toMatchObject({ code: 'keyReused' })
    await read(`/v1/projects/${id(13)}`).expect(404)
  })

  test('that is still running is told to come again', async () => {
    let go: () => void = () => undefined
    const waits = new Promise<void>((resolve) => { go = resolve })
    const create = records.createProject.bind(records)
    records.createProject = async (project) => { await waits; return create(project) }
    const first = post('/v1/projects', house(14), '"slow"').then((response) => response)
    await expect.poll(async () => (await post('/v1/projects', house(14), '"slow"')).status).toBe(409)
    const second = await post('/v1/projects', house(14), '"slow"').expect(409).expect('retry-after', '1')
    expect(problemIn(second)).toMatchObject({ code: 'stillRunning' })
    go()
    const made = await first
    records.createProject = create
    expect((await post('/v1/projects', house(14), '"slow"').expect(201)).text).toBe(made.text)
  })

  test('that was refused, or failed, frees its key', async () => {
    await post('/v1/projects', { ...house(15), jurisdiction: 'nowhere' }, '"mended"').expect(422)
    const create = records.createProject.bind(records)
    records.createProject = async () => { throw new Error('no disk') }
    await post('/v1/projects', house(15), '"mended"').expect(500)
    records.createProject = create
    await post('/v1/projects', house(15), '"mended"').expect(201)
  })

  test.each(['unquoted', '', '"', '""', '"a", "b"', ':YQ==:', '7', `"${'x'.repeat(256)}"`])('%s is no key: 400', async (key) => {
    expect(problemIn(await post('/v1/projects', house(16), key).expect(400))).toMatchObject({ code: 'malformed', detail: expect.stringContaining('quoted text') as string })
  })
})

/** draft-ietf-httpapi-ratelimit-headers-10. */
describe('a quota', async () => {
  const limited = await jurisdictionService({ quota: { units: 20, window: 60 }, trustedProxies: ['127.0.0.1', '::1', '::ffff:127.0.0.1'] })
  const from = (address: string) => ({ get: (path: string) => limited.http.get(path).set('x-forwarded-for', address), post: (path: string, body: object) => limited.http.post(path).set('x-forwarded-for', address).send(body) })
  const opening = { opening: { kind: 'window', width: '4 ft', height: '4 ft' } }

  test('is told with every answer, in structured fields, and falls by the cost', async () => {
    const first = await from('192.0.2.1').get('/v1/rules').expect(200)
    const [[policy, limits]] = parseList(first.headers['ratelimit-policy'] ?? '') as [[unknown, Map<string, unknown>]]
    expect([policy, limits.get('q'), limits.get('w')]).toEqual(['default', 20, 60])
    const [left, state] = parseItem(first.headers['ratelimit'] ?? '') as [unknown, Map<string, unknown>]
    expect([left, state.get('r')]).toEqual(['default', 19])
    expect(state.get('t')).toBeGreaterThan(0)
    const evaluated = await from('192.0.2.1').post('/v1/evaluations', { edition: 'irc-2021', opening }).expect(200)
    expect(parseItem(evaluated.headers['ratelimit'] ?? '')[1].get('r')).toBe(14)
  })

  test('that is used up is a 429 with the policy and when to come again; others are not touched', async () => {
    await from('192.0.2.2').post('/v1/take-offs', { edition: 'irc-2021', openings: [1, 2, 3, 4].map(() => ({ opening })) }).expect(200)
    const refused = await from('192.0.2.2').get('/v1/rules').expect(429)
    await from('192.0.2.7').get('/v1/rules').expect(200)
    await from('192.0.2.7').post('/v1/driving-rain', {}).expect(429)
    await from('192.0.2.7').get('/v1/rules').expect(200)
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0)
    expect(problemIn(refused)).toMatchObject({ type: 'https://iana.org/assignments/http-problem-types#quota-exceeded', status: 429, code: 'quotaExceeded', 'violated-policies': ['default'] })
    expect(parseItem(refused.headers['ratelimit'] ?? '')[1].get('r')).toBe(0)
    await from('192.0.2.3').get('/v1/rules').expect(200)
    await limited.http.get('/livez').expect(200)
  })

  test('counts a query over GraphQL by its cost, in the same quota', async () => {
    const two = '{ a: evaluation(edition: "irc-2021", opening: { opening: { kind: window, width: "4 ft", height: "4 ft" } }) { digest } b: rules(first: 1) { edges { node { rule } } } }'
    const asked = await from('192.0.2.4').post('/graphql', { query: two }).expect(200)
    expect(parseItem(asked.headers['ratelimit'] ?? '')[1].get('r')).toBeLessThan(15)
    for (let times = 0; times < 2; times += 1) await from('192.0.2.4').post('/graphql', { query: two })
    const refused = await from('192.0.2.4').post('/graphql', { query: two }).expect(429)
    expect(refused.body).toMatchObject({ errors: [{ extensions: { code: 'quotaExceeded' } }] })
    expect(refused.headers['retry-after']).toBeDefined()
  })

  test('is the token\'s, wherever it is used from', async () => {
    const token = await limited.tokenFor({ kind: 'record' })
    const asked = (address: string) => from(address).get('/v1/projects').set('authorization', `Bearer ${token}`)
    await asked('192.0.2.5').expect(200)
    expect(parseItem((await asked('192.0.2.6')).headers['ratelimit'] ?? '')[1].get('r')).toBe(18)
  })

  test('is not told where nobody counts', async () => {
    expect((await http.get('/v1/rules')).headers['ratelimit']).toBeUndefined()
  })
})

describe('a page', () => {
  test('links to the next (RFC 8288), which is where its cursor leads; the last links nowhere', async () => {
    const first = await http.get('/v1/rules?part=head&first=3').expect(200)
    const [, address = ''] = /^<https:\/\/wythe\.example([^>]+)>; rel="next"$/.exec(first.headers['link'] ?? '') ?? []
    const next = await http.get(address).expect(200)
    expect(next.body).toEqual((await http.get('/v1/rules').query({ part: 'head', first: 3, after: (first.body as { nextCursor: string }).nextCursor })).body)
    expect((await http.get('/v1/jurisdictions?first=200')).headers['link']).toBeUndefined()
  })

  test.each([['/v1/rules?part=head', '/v1/rules?part=sill'], ['/v1/rules?part=head', '/v1/rules'], ['/v1/facts', '/v1/rules']])('a cursor of %s is refused at %s', async (one, elsewhere) => {
    const { nextCursor } = (await http.get(one).query({ first: 1 }).expect(200)).body as { nextCursor: string }
    await http.get(one).query({ first: 2, after: nextCursor }).expect(200)
    const { errors } = problemIn(await http.get(elsewhere).query({ after: nextCursor }).expect(422))
    expect(errors).toMatchObject([{ code: 'notAllowed', pointer: '/after', detail: expect.stringContaining('not a cursor of this list with these filters') as string }])
  })

  test('a cursor of another release is refused', () => {
    const list = defineOperation({ name: 'madeUp', summary: '', description: '', input: z.strictObject(paging), output: pageOf(z.string(), 'MadeUpPage'), keyOf: (one) => one, answer: (_, asked) => page(['a', 'b', 'c'], (one) => one, asked) })
    const under = (release: string, after?: string) => list.run({ catalog: { release } as never, now: () => new Date(0), newId: () => '' }, { first: 1, after })
    const first = under('2026.1.0')
    const cursor = first.ok ? (first.value.nextCursor ?? '') : ''
    expect(under('2026.1.0', cursor)).toMatchObject({ ok: true, value: { items: ['b'] } })
    expect(under('2026.2.0', cursor)).toMatchObject({ ok: false, code: 'invalidInput' })
  })
})

test('an operation that is to be used no more says so (RFC 9745, RFC 8594)', async () => {
  const old = defineOperation({
    name: 'madeUpOld', summary: 'Made up', description: 'Made up.', input: z.strictObject({}), output: z.strictObject({ said: z.string() }).meta({ id: 'MadeUpOld' }),
    deprecated: { since: '2026-01-15', sunset: '2027-01-15', link: 'https://wythe.example/changes#made-up' }, answer: () => ({ ok: true, value: { said: 'yes' } }),
  })
  const small = Fastify()
  small.get('/old', async (_, reply) => { sayDeprecated(old, reply); return 'yes' })
  const { headers } = await small.inject('/old')
  expect(headers).toMatchObject({ deprecation: '@1768435200', sunset: 'Fri, 15 Jan 2027 00:00:00 GMT', link: '<https://wythe.example/changes#made-up>; rel="deprecation"' })
  await small.close()
  expect((await http.get('/v1/rules')).headers['deprecation']).toBeUndefined()
})

describe('OPTIONS', () => {
  test.each([['/v1/rules', 'GET, HEAD, OPTIONS'], ['/v1/evaluations', 'POST, OPTIONS'], ['/graphql', 'GET, HEAD, POST, OPTIONS']])('%s answers %s', async (path, allow) => {
    await http.options(path).expect(204).expect('allow', allow)
  })

  test('of nothing is a 404', async () => {
    await http.options('/v1/nothing').expect(404)
  })
})

/** RFC 8259, section 8.2, leaves to each receiver what to do with them; RFC 7493, section 2.1, forbids them. */
describe('half of a surrogate pair', () => {
  const raw = (path: string, body: string, token = inspector) => http.post(path).set('authorization', `Bearer ${token}`).type('application/json').send(body)

  test.each([
    ['/v1/projects', JSON.stringify(house(30)).replace('Invented house', String.raw`Half \ud800 house`), '/title'],
    [`/v1/projects/${id(1)}/entries`, String.raw`{"entries":[{"a\/b":["\uDFFF"]}]}`, '/entries/0/a~1b/0'],
    ['/v1/evaluations', String.raw`{"opening":{"\ud83d":1}}`, '/opening/\ufffd'],
    ['/graphql', String.raw`{"query":"query($o: OpeningInput!) { evaluation(opening: $o) { digest } }","variables":{"o":{"reference":"\udc00x"}}}`, '/variables/o/reference'],
  ])('in what is posted to %s is a 400 that names its place', async (path, body, pointer) => {
    expect(problemIn(await raw(path, body).expect(400))).toMatchObject({ code: 'malformed', errors: [{ code: 'notText', pointer }] })
  })

  test('in variables in an address is refused the same', async () => {
    const problem = problemIn(await http.get('/graphql').query({ query: '{ __typename }', variables: String.raw`{"a":"\ud800"}` }).expect(400))
    expect(problem.errors).toMatchObject([{ code: 'notText', pointer: '/variables/a' }])
  })

  test.each([['application/json', JSON.stringify({ jurisdiction: 'us-xa-101' }).replace('101', String.raw`101","title":"\ud800`)], ['application/yaml', String.raw`{ jurisdiction: us-xa-101, title: "\ud800" }`]])('in a draft in %s is refused', async (type, text) => {
    const response = await http.post('/v1/amendment-drafts').set('authorization', `Bearer ${clerk}`).type(type).send(text)
    expect([response.status, (response.body as { code?: string }).code]).toEqual([422, 'invalidInput'])
  })

  test('with its other half is a character', async () => {
    await raw('/v1/projects', JSON.stringify(house(31)).replace('Invented house', String.raw`Whole \ud83e\uddf1 house`)).expect(201)
    expect((await read(`/v1/projects/${id(31)}`)).body).toMatchObject({ title: 'Whole 🧱 house' })
  })

  test('nesting without an end is refused before anything walks it', async () => {
    const deep = `{"opening":${'{"a":'.repeat(50_000)}1${'}'.repeat(50_000)}}`
    expect(problemIn(await raw('/v1/evaluations', deep).expect(400))).toMatchObject({ code: 'malformed', errors: [{ code: 'tooDeep' }] })
  })
})
