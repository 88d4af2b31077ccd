import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { embedmentOrdinance, jurisdictionService } from './jurisdiction.ts'

const county = 'us-xa-101'
const city = 'us-xa-101-2400000'
const { http, tokenFor, active, records, faults } = await jurisdictionService()
const clerk = await tokenFor({ kind: 'amend', jurisdiction: county })

const sent = (method: 'post' | 'put' | 'delete' | 'get', path: string, token: string | null = clerk) => {
  const request = http[method](path)
  return token === null ? request : request.set('authorization', `Bearer ${token}`)
}
const drafted = (text: string, token: string | null = clerk) => sent('post', '/v1/amendment-drafts', token).set('content-type', 'application/yaml').send(text)

describe('drafting', () => {
  test('keeps a draft with what stands in its way, and an ETag', async () => {
    const { status, body, headers } = await drafted(embedmentOrdinance(county, 'ord-stale').replace('old: { inchPound: "1 1/2 [in_i]" }', 'old: { inchPound: "1 1/4 [in_i]" }'))
    expect(status).toBe(201)
    expect(headers['etag']).toBe(`"${body.version}"`)
    expect(body).toMatchObject({ jurisdiction: county, amendment: `${county}/ord-stale`, check: { adoptable: false, problems: [{ code: 'staleAmendment', pointer: '/modifications/0' }] } })
    expect((await sent('get', `/v1/amendment-drafts/${body.id}`)).body).toEqual(body)
  })

  test('with validateOnly tells the same and keeps nothing', async () => {
    const before = (await sent('get', '/v1/amendment-drafts')).body.items.length
    const { status, body } = await sent('post', '/v1/amendment-drafts?validateOnly=true').set('content-type', 'application/yaml').send(embedmentOrdinance(county, 'ord-dry'))
    expect(status).toBe(200)
    expect(body.check).toEqual({ adoptable: true, problems: [], affected: [], reviewNeeded: [] })
    expect((await sent('get', '/v1/amendment-drafts')).body.items).toHaveLength(before)
  })

  test('the call of the README would be adopted', async () => {
    const { status, body } = await sent('post', '/v1/amendment-drafts?validateOnly=true').set('content-type', 'application/yaml').send(readFileSync('tests/fixtures/amendments/longer-ties.yaml', 'utf8'))
    expect([status, body.check.problems, body.check.adoptable]).toEqual([200, [], true])
  })

  test('takes JSON as well as YAML, to the same version', async () => {
    const yaml = await sent('post', '/v1/amendment-drafts?validateOnly=true').set('content-type', 'application/yaml').send(embedmentOrdinance(county, 'ord-both'))
    const json = await sent('post', '/v1/amendment-drafts?validateOnly=true').set('content-type', 'application/json').send(yaml.body.document)
    expect(json.body.version).toBe(yaml.body.version)
  })

  test('refuses what cannot be read, and says where', async () => {
    const { status, body } = await drafted('amendment: [unclosed')
    expect(status).toBe(422)
    expect(body.code).toBe('invalidInput')
    expect(body.errors[0].detail).toBeTruthy()
  })

  test('a change needs the version it is based on, and loses to an earlier one', async () => {
    const draft = (await drafted(embedmentOrdinance(county, 'ord-change'))).body
    const path = `/v1/amendment-drafts/${draft.id}`
    const change = (text: string) => sent('put', path).set('content-type', 'application/yaml').send(text)
    expect((await change(embedmentOrdinance(county, 'ord-change', '3 [in_i]', '76 mm'))).body).toMatchObject({ status: 428, code: 'versionMissing' })
    const changed = await change(embedmentOrdinance(county, 'ord-change', '3 [in_i]', '76 mm')).set('if-match', `"${draft.version}"`)
    expect(changed.status).toBe(200)
    expect((await change(embedmentOrdinance(county, 'ord-change')).set('if-match', `"${draft.version}"`)).body).toMatchObject({ status: 412, code: 'versionStale' })
    expect((await sent('delete', path).set('if-match', `"${changed.body.version}"`)).status).toBe(200)
    expect((await sent('get', path)).status).toBe(404)
  })
})

describe('adopting', () => {
  test('puts an amendment in force on its dates, and what is adopted is never changed', async () => {
    const asked = (asOf: string) => http.get(`/v1/rules/tie.embedment?jurisdiction=${city}&asOf=${asOf}`)
    expect((await asked('2026-03-01')).body.resolved.required).toBe('at least 1 1/2 in (38 mm)')
    const draft = (await drafted(embedmentOrdinance(county))).body
    const adopted = await sent('post', `/v1/amendment-drafts/${draft.id}/adopt`).set('if-match', `"${draft.version}"`)
    expect(adopted.status).toBe(201)
    expect(adopted.body).toMatchObject({ amendment: `${county}/ord-2026-01`, jurisdiction: county, effectiveFrom: '2026-03-01' })
    expect((await asked('2026-02-28')).body.resolved.required).toBe('at least 1 1/2 in (38 mm)')
    const after = (await asked('2026-03-01')).body.resolved
    expect(after.required).toBe('at least 2 in (51 mm)')
    expect(after.chain.at(-1)).toMatchObject({ layer: county, action: 'substitution', document: `${county}/ord-2026-01`, old: 'at least 1 1/2 in (38 mm)', new: 'at least 2 in (51 mm)' })
    expect((await sent('get', `/v1/amendment-drafts/${draft.id}`)).status).toBe(404)
    expect((await http.get(`/v1/amendments/${county}/ord-2026-01`)).body.amendment).toBe(`${county}/ord-2026-01`)
    const again = (await drafted(embedmentOrdinance(county))).body
    expect(again.check.problems).toMatchObject([{ code: 'duplicate', pointer: '/amendment' }])
  })

  test('refuses a draft with problems, and what is in force stays as it was', async () => {
    const before = active.state.catalog.digest
    const draft = (await drafted(embedmentOrdinance(county, 'ord-loose', '1 [in_i]', '25 mm').replace('supersedes: []', `supersedes: [${county}/ord-2026-01]`))).body
    const refused = await sent('post', `/v1/amendment-drafts/${draft.id}/adopt`).set('if-match', `"${draft.version}"`)
    expect(refused.status).toBe(422)
    expect(refused.body.code).toBe('amendmentRefused')
    expect(refused.body.errors.map(({ code }: { code: string }) => code)).toContain('lessStringent')
    expect(active.state.catalog.digest).toBe(before)
    expect(faults).toEqual([])
  })

  test('of two adoptions at once that rule each other out, one is in force and the other is told why it is not', async () => {
    const superseding = (number: string) => embedmentOrdinance(county, number, '2 1/4 [in_i]', '57 mm').replace('supersedes: []', `supersedes: [${county}/ord-2026-01]`)
    const drafts = await Promise.all(['ord-a', 'ord-b'].map(async (number) => (await drafted(superseding(number))).body))
    expect(drafts.map(({ check }) => check.adoptable)).toEqual([true, true])
    const answers = await Promise.all(drafts.map(({ id, version }) => sent('post', `/v1/amendment-drafts/${id}/adopt`).set('if-match', `"${version}"`)))
    expect(answers.map(({ status }) => status).toSorted()).toEqual([201, 422])
    expect(answers.find(({ status }) => status === 422)?.body.errors[0].code).toBe('competingModifications')
    expect((await records.adoptionsAfter(0)).map(({ sequence }) => sequence)).toEqual([1, 2])
    expect(active.state.sequence).toBe(2)
    expect((await http.get(`/v1/rules/tie.embedment?jurisdiction=${county}&asOf=2026-03-01`)).body.resolved.required).toBe('at least 2 1/4 in (57 mm)')
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
    const draft = await drafted(disguised, cityClerk)
    expect(draft.body.check.adoptable).toBe(false)
    const adopted = await sent('post', `/v1/amendment-drafts/${draft.body.id}/adopt`, cityClerk).set('if-match', `"${draft.body.version}"`)
    expect(adopted.status).toBe(422)
    const similar = await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-10' })
    expect((await drafted(embedmentOrdinance(county, 'ord-similar'), similar)).status).toBe(403)
  })

  test('a draft of another jurisdiction is as good as none', async () => {
    const draft = (await drafted(embedmentOrdinance(county, 'ord-hidden'))).body
    const stranger = await tokenFor({ kind: 'amend', jurisdiction: 'us-xb' })
    for (const [method, path] of [['get', ''], ['delete', ''], ['post', '/adopt'], ['post', '/preview']] as const) {
      expect((await sent(method, `/v1/amendment-drafts/${draft.id}${path}`, stranger).set('if-match', `"${draft.version}"`)).status).toBe(404)
      expect((await sent(method, `/v1/amendment-drafts/${draft.id}${path}`, null)).status).toBe(401)
    }
    expect((await sent('get', '/v1/amendment-drafts', stranger)).body.items).toEqual([])
    expect((await sent('get', `/v1/amendment-drafts?jurisdiction=${county}`, stranger)).status).toBe(403)
  })

  test('a wrong, revoked or expired token is refused everywhere, with the scheme to use', async () => {
    const administrator = await tokenFor({ kind: 'administer' })
    const made = await sent('post', '/v1/tokens', administrator).send({ title: 'clerk', amend: [county] })
    expect(made.status).toBe(201)
    expect((await drafted(embedmentOrdinance(county, 'ord-made'), made.body.secret)).status).toBe(201)
    expect((await sent('delete', `/v1/tokens/${made.body.token.id}`, administrator)).status).toBe(200)
    expect((await drafted(embedmentOrdinance(county, 'ord-made'), made.body.secret)).status).toBe(401)
    const expired = await sent('post', '/v1/tokens', administrator).send({ title: 'late', record: true, expiresAt: '2026-01-01T00:00:00Z' })
    for (const wrong of ['nonsense', expired.body.secret]) {
      const refused = await http.get('/v1/rules').set('authorization', `Bearer ${wrong}`)
      expect(refused.status).toBe(401)
      expect(refused.headers['www-authenticate']).toContain('Bearer')
    }
    expect((await http.get('/v1/rules').set('authorization', 'Basic YTpi')).status).toBe(401)
    expect((await sent('get', '/v1/tokens', administrator)).body.items.every((token: object) => !('secretHash' in token))).toBe(true)
    expect((await sent('get', '/v1/tokens', clerk)).status).toBe(403)
  })
})
