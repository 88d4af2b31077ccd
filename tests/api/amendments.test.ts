import { readFileSync } from 'node:fs'
import type { OpenAPIV3_1 } from 'openapi-types'
import { describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { bodyOf, embedmentOrdinance, jurisdictionService, problemIn } from './jurisdiction.ts'
import { servedDocument } from './served-document.ts'

const county = 'us-xa-101'
const city = 'us-xa-101-2400000'
const { app, http, tokenFor, active, records, faults } = await jurisdictionService()
const clerk = await tokenFor({ kind: 'amend', jurisdiction: county })

const sent = (method: 'post' | 'put' | 'delete' | 'get', path: string, token: string | null = clerk) => {
  const request = http[method](path)
  return token === null ? request : request.set('authorization', `Bearer ${token}`)
}
const drafted = (text: string, token: string | null = clerk) => sent('post', '/v1/amendment-drafts', token).set('content-type', 'application/yaml').send(text)
const draftIn = (response: { body: unknown }) => bodyOf(operations.createDraft, response)
const draftsSeen = async (token = clerk) => bodyOf(operations.listDrafts, await sent('get', '/v1/amendment-drafts', token)).items

describe('drafting', () => {
  test('keeps a draft with what stands in its way, and an ETag', async () => {
    const response = await drafted(embedmentOrdinance(county, 'ord-stale').replace('old: { inchPound: "1 1/2 [in_i]" }', 'old: { inchPound: "1 1/4 [in_i]" }'))
    const body = draftIn(response)
    expect(response.status).toBe(201)
    expect(response.headers['etag']).toMatch(new RegExp(`^"${body.version};[\\w-]{43}"$`))
    expect(body).toMatchObject({ jurisdiction: county, amendment: `${county}/ord-stale`, check: { adoptable: false, problems: [{ code: 'staleAmendment', pointer: '/modifications/0' }] } })
    expect((await sent('get', `/v1/amendment-drafts/${body.id}`)).body).toEqual(body)
  })

  test('with validateOnly tells the same and keeps nothing', async () => {
    const before = (await draftsSeen()).length
    const response = await sent('post', '/v1/amendment-drafts?validateOnly=true').set('content-type', 'application/yaml').send(embedmentOrdinance(county, 'ord-dry'))
    expect(response.status).toBe(200)
    expect(draftIn(response).check).toEqual({ adoptable: true, problems: [], affected: [], reviewNeeded: [] })
    expect(await draftsSeen()).toHaveLength(before)
  })

  test('the call of the README would be adopted', async () => {
    const response = await sent('post', '/v1/amendment-drafts?validateOnly=true').set('content-type', 'application/yaml').send(readFileSync('tests/fixtures/amendments/longer-ties.yaml', 'utf8'))
    expect([response.status, draftIn(response).check.problems]).toEqual([200, []])
    expect(draftIn(response).check.adoptable).toBe(true)
  })

  test('takes JSON as well as YAML, to the same version, under every media type that is described and no other', async () => {
    const { paths } = await servedDocument(app)
    const described = (['/v1/amendment-drafts', '/v1/amendment-drafts/{draft}'] as const).map((path) => Object.keys(((paths?.[path]?.post ?? paths?.[path]?.put)?.requestBody as OpenAPIV3_1.RequestBodyObject).content))
    expect(described).toEqual([0, 1].map(() => ['application/json', 'application/yaml', 'text/yaml']))
    const text = embedmentOrdinance(county, 'ord-both')
    const post = (type: string, body: string) => sent('post', '/v1/amendment-drafts?validateOnly=true').set('content-type', type).send(body)
    const { version, document } = draftIn(await post('application/yaml', text))
    const answers = await Promise.all((described[0] ?? []).map((type) => post(type, type.endsWith('json') ? document : text)))
    expect(answers.map((answer) => [answer.status, draftIn(answer).version])).toEqual(answers.map(() => [200, version]))
    for (const type of ['text/x-yaml', 'text/plain']) expect((await post(type, text)).body).toMatchObject({ status: 415, code: 'unsupportedMediaType' })
  })

  test.each([['false', 'ties.embedment'], ['"three"', 'ties.embedment'], ['2', 'ties.embedment']])('tells of an example whose fact is %s', async (value, place) => {
    const response = await sent('post', '/v1/amendment-drafts?validateOnly=true').set('content-type', 'application/yaml').send(embedmentOrdinance(county, 'ord-example').replace('ties.embedment: "1 3/4 in" }, outcome: fail', `ties.embedment: ${value} }, outcome: fail`))
    expect(draftIn(response).check).toMatchObject({ adoptable: false, problems: [{ pointer: expect.stringMatching(/^\/examples\/1/) as string, detail: expect.stringContaining(place) as string }] })
  })

  test('refuses what cannot be read, and says where', async () => {
    const problem = problemIn(await drafted('amendment: [unclosed'))
    expect(problem).toMatchObject({ status: 422, code: 'invalidInput' })
    expect(problem.errors[0]?.detail).toBeTruthy()
  })

  test('a change needs the version it is based on, and loses to an earlier one', async () => {
    const draft = draftIn(await drafted(embedmentOrdinance(county, 'ord-change')))
    const path = `/v1/amendment-drafts/${draft.id}`
    const change = (text: string) => sent('put', path).set('content-type', 'application/yaml').send(text)
    expect((await change(embedmentOrdinance(county, 'ord-change', '3 [in_i]', '76 mm'))).body).toMatchObject({ status: 428, code: 'versionMissing' })
    const changed = draftIn(await change(embedmentOrdinance(county, 'ord-change', '3 [in_i]', '76 mm')).set('if-match', `"${draft.version}"`))
    expect(changed.version).not.toBe(draft.version)
    expect((await change(embedmentOrdinance(county, 'ord-change')).set('if-match', `"${draft.version}"`)).body).toMatchObject({ status: 412, code: 'versionStale' })
    expect((await sent('delete', path).set('if-match', `"${changed.version}"`)).status).toBe(200)
    expect((await sent('get', path)).status).toBe(404)
  })
})

describe('adopting', () => {
  test('puts an amendment in force on its dates, and what is adopted is never changed', async () => {
    const asked = async (asOf: string) => bodyOf(operations.readRule, await http.get(`/v1/rules/tie.embedment?jurisdiction=${city}&asOf=${asOf}`)).resolved
    expect((await asked('2026-03-01'))?.required).toBe('at least 1 1/2 in (38 mm)')
    const draft = draftIn(await drafted(embedmentOrdinance(county)))
    const adopted = await sent('post', `/v1/amendment-drafts/${draft.id}/adopt`).set('if-match', `"${draft.version}"`)
    expect(adopted.status).toBe(201)
    expect(adopted.body).toMatchObject({ amendment: `${county}/ord-2026-01`, jurisdiction: county, effectiveFrom: '2026-03-01' })
    expect((await asked('2026-02-28'))?.required).toBe('at least 1 1/2 in (38 mm)')
    const after = await asked('2026-03-01')
    expect(after?.required).toBe('at least 2 in (51 mm)')
    expect(after?.chain.at(-1)).toMatchObject({ layer: county, action: 'substitution', document: `${county}/ord-2026-01`, old: 'at least 1 1/2 in (38 mm)', new: 'at least 2 in (51 mm)' })
    expect((await sent('get', `/v1/amendment-drafts/${draft.id}`)).status).toBe(404)
    expect(bodyOf(operations.readAmendment, await http.get(`/v1/amendments/${county}/ord-2026-01`)).amendment).toBe(`${county}/ord-2026-01`)
    const again = draftIn(await drafted(embedmentOrdinance(county)))
    expect(again.check.problems).toMatchObject([{ code: 'duplicate', pointer: '/amendment' }])
  })

  test('refuses a draft with problems, and what is in force stays as it was', async () => {
    const before = active.state.catalog.digest
    const draft = draftIn(await drafted(embedmentOrdinance(county, 'ord-loose', '1 [in_i]', '25 mm').replace('supersedes: []', `supersedes: [${county}/ord-2026-01]`)))
    const refused = await sent('post', `/v1/amendment-drafts/${draft.id}/adopt`).set('if-match', `"${draft.version}"`)
    expect(problemIn(refused)).toMatchObject({ status: 422, code: 'amendmentRefused' })
    expect(problemIn(refused).errors.map(({ code }) => code)).toContain('lessStringent')
    expect(active.state.catalog.digest).toBe(before)
    expect(faults).toEqual([])
  })

  test('of two adoptions at once that rule each other out, one is in force and the other is told why it is not', async () => {
    const superseding = (number: string) => embedmentOrdinance(county, number, '2 1/4 [in_i]', '57 mm').replace('supersedes: []', `supersedes: [${county}/ord-2026-01]`)
    const drafts = await Promise.all(['ord-a', 'ord-b'].map(async (number) => draftIn(await drafted(superseding(number)))))
    expect(drafts.map(({ check }) => check.adoptable)).toEqual([true, true])
    const answers = await Promise.all(drafts.map(({ id, version }) => sent('post', `/v1/amendment-drafts/${id}/adopt`).set('if-match', `"${version}"`)))
    expect(answers.map(({ status }) => status).toSorted()).toEqual([201, 422])
    const loser = answers.find(({ status }) => status === 422)
    expect(loser && problemIn(loser).errors[0]?.code).toBe('competingModifications')
    expect((await records.adoptionsAfter(0)).map(({ sequence }) => sequence)).toEqual([1, 2])
    expect(active.state.sequence).toBe(2)
    expect(bodyOf(operations.readRule, await http.get(`/v1/rules/tie.embedment?jurisdiction=${county}&asOf=2026-03-01`)).resolved?.required).toBe('at least 2 1/4 in (57 mm)')
  })
})

describe('who may', () => {
  test.each([
    ['no token', null, 401],
    ['a token that may record', { kind: 'record' } as const, 403],
    ['the city below', { kind: 'amend', jurisdiction: city } as const, 403],
    ['another state', { kind: 'amend', jurisdiction: 'us-xb' } as const, 403],
    ['the state above', { kind: 'amend', jurisdiction: 'us-xa' } as const, 201],
    ['the country', { kind: 'amend', jurisdiction: 'us' } as const, 201],
    ['an administrator without the scope', { kind: 'administer' } as const, 403],
  ])('%s drafts for the county', async (_, scope, status) => {
    const token = scope === null ? null : await tokenFor(scope)
    expect((await drafted(embedmentOrdinance(county, 'ord-scope'), token)).status).toBe(status)
  })

  test('no token can write outside its subtree, whatever the document says it is', async () => {
    const cityClerk = await tokenFor({ kind: 'amend', jurisdiction: city })
    const disguised = embedmentOrdinance(county, 'ord-disguise').replace(`jurisdiction: ${county}\n`, `jurisdiction: ${city}\n`)
    const draft = draftIn(await drafted(disguised, cityClerk))
    expect(draft.check.adoptable).toBe(false)
    const adopted = await sent('post', `/v1/amendment-drafts/${draft.id}/adopt`, cityClerk).set('if-match', `"${draft.version}"`)
    expect(adopted.status).toBe(422)
    const similar = await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-10' })
    expect((await drafted(embedmentOrdinance(county, 'ord-similar'), similar)).status).toBe(403)
  })

  test('a draft of another jurisdiction is as good as none', async () => {
    const draft = draftIn(await drafted(embedmentOrdinance(county, 'ord-hidden')))
    const stranger = await tokenFor({ kind: 'amend', jurisdiction: 'us-xb' })
    for (const [method, path] of [['get', ''], ['delete', ''], ['post', '/adopt'], ['post', '/preview']] as const) {
      expect((await sent(method, `/v1/amendment-drafts/${draft.id}${path}`, stranger).set('if-match', `"${draft.version}"`)).status).toBe(404)
      expect((await sent(method, `/v1/amendment-drafts/${draft.id}${path}`, null)).status).toBe(401)
    }
    expect((await sent('get', '/v1/amendment-drafts', null)).status).toBe(401)
    expect(await draftsSeen(stranger)).toEqual([])
    expect((await sent('get', `/v1/amendment-drafts?jurisdiction=${county}`, stranger)).status).toBe(403)
  })

  test('a wrong, revoked or expired token is refused everywhere, with the scheme to use', async () => {
    const administrator = await tokenFor({ kind: 'administer' })
    const made = bodyOf(operations.createToken, await sent('post', '/v1/tokens', administrator).send({ title: 'clerk', amend: [county] }))
    expect((await drafted(embedmentOrdinance(county, 'ord-made'), made.secret)).status).toBe(201)
    expect((await sent('delete', `/v1/tokens/${made.token.id}`, administrator)).status).toBe(200)
    expect((await drafted(embedmentOrdinance(county, 'ord-made'), made.secret)).status).toBe(401)
    const expired = bodyOf(operations.createToken, await sent('post', '/v1/tokens', administrator).send({ title: 'late', record: true, expiresAt: '2026-01-01T00:00:00Z' }))
    for (const wrong of ['nonsense', expired.secret]) {
      const refused = await http.get('/v1/rules').set('authorization', `Bearer ${wrong}`)
      expect(refused.status).toBe(401)
      expect(refused.headers['www-authenticate']).toBe('Bearer realm="wythe", error="invalid_token"')
    }
    expect((await http.get('/v1/rules').set('authorization', 'Basic YTpi')).status).toBe(401)
    expect(bodyOf(operations.listTokens, await sent('get', '/v1/tokens', administrator)).items.map(({ title }) => title)).toContain('clerk')
    expect((await sent('get', '/v1/tokens', administrator)).text).not.toMatch(/secret|hash/i)
    expect((await sent('get', '/v1/tokens', clerk)).status).toBe(403)
  })
})

describe('preview', async () => {
  const fresh = await jurisdictionService()
  const [stranger, amends, keeps] = [await fresh.tokenFor({ kind: 'amend', jurisdiction: county }), await fresh.tokenFor({ kind: 'amend', jurisdiction: county }, { kind: 'record' }), await fresh.tokenFor({ kind: 'record' })]
  const window = (reference: string, embedment: string) => ({ reference, lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, ties: { kind: 'wire', embedment } })
  const keep = (jurisdiction: string, opening: object) => fresh.http.post('/v1/evaluations').set('authorization', `Bearer ${keeps}`).send({ jurisdiction, asOf: '2026-03-15', keep: true, opening })
  const previewOf = async (text: string, query = '', token = amends) => {
    const draft = draftIn(await fresh.http.post('/v1/amendment-drafts').set('authorization', `Bearer ${token}`).set('content-type', 'application/yaml').send(text))
    return fresh.http.post(`/v1/amendment-drafts/${draft.id}/preview${query}`).set('authorization', `Bearer ${token}`)
  }

  test('tells which rules change on which dates, and which openings come out otherwise', async () => {
    expect((await keep(city, window('kept short', '1 3/4'))).status).toBe(200)
    expect((await keep(county, window('kept long', '2 1/2'))).status).toBe(200)
    expect((await keep('us-xa', window('outside', '1 3/4'))).status).toBe(200)
    const body = bodyOf(operations.previewDraft, await previewOf(embedmentOrdinance(county)))
    expect(body.rules).toMatchObject([{ rule: 'tie.embedment', change: 'changed', requirementChanged: true, before: { required: 'at least 1 1/2 in (38 mm)' }, after: { required: 'at least 2 in (51 mm)' } }])
    expect(body.dates).toContain('2026-03-01')
    expect(body).toMatchObject({ keptOpenings: 2, moreKept: false, reviewNeeded: [] })
    expect(body.outcomes).toContainEqual({ from: 'pass', to: 'fail', count: expect.any(Number) as number })
    expect(body.examples.map(({ reference }) => reference)).toContain('kept short')
    expect(body.examples.map(({ reference }) => reference)).not.toContain('kept long')
    expect(JSON.stringify(body)).not.toContain('outside')
    expect(fresh.active.state.sequence).toBe(0)
  })

  test('counts what others kept, and shows it without their marks to whoever may not read it', async () => {
    const body = bodyOf(operations.previewDraft, await previewOf(embedmentOrdinance(county, 'ord-others'), '?examples=200', stranger))
    expect(body.keptOpenings).toBe(2)
    expect(body.examples.map(({ reference }) => reference)).toContain('a kept opening')
    expect(JSON.stringify(body)).not.toContain('kept short')
  })

  test('tries no more than it is asked to, and says so', async () => {
    expect(bodyOf(operations.previewDraft, await previewOf(embedmentOrdinance(county, 'ord-few'), '?kept=1&examples=0'))).toMatchObject({ keptOpenings: 1, moreKept: true, examples: [] })
  })

  test('of a draft with problems tells the problems', async () => {
    expect(problemIn(await previewOf(embedmentOrdinance(county, 'ord-bad').replace('1 1/2 [in_i]" }', '9 [in_i]" }')))).toMatchObject({ status: 422, code: 'amendmentRefused', errors: [{ code: 'staleAmendment', pointer: '/modifications/0' }] })
  })
})
