import { createHmac } from 'node:crypto'
import { exportJWK, exportSPKI, type JWTPayload } from 'jose'
import { afterEach, describe, expect, test } from 'vitest'
import { identityProvider } from '../../src/api/identity-provider.ts'
import { clock } from './client.ts'
import { jurisdictionService, problemIn } from './jurisdiction.ts'
import { LogLines } from './log-lines.ts'
import { audience, localProvider, signed } from './provider.ts'

/** Checked against RFC 6750 (challenges), RFC 7519 4.1 (claims), RFC 8725 3 (algorithms, types) and RFC 9068 4 (access tokens). */
const provider = await localProvider()
const { issuer } = provider
const [key, rsa] = [await provider.newKey('first'), await provider.newKey('rsa', 'RS256')]
provider.publish(key, rsa)
const log = new LogLines()
const { http, records } = await jurisdictionService({
  doorkeeping: { anonymous: 'evaluate', provider: identityProvider({ issuer, audience, cooldown: 0 }) },
  logger: { level: 'info', stream: log.stream },
})
const seconds = Date.parse(clock) / 1_000
const asks = (token: string, path = '/v1/projects') => http.get(path).set('authorization', `Bearer ${token}`)
const base64url = (value: unknown) => Buffer.from(JSON.stringify(value)).toString('base64url')
const claims = { iss: issuer, aud: audience, sub: 'user-4711', exp: seconds + 300, scope: 'wythe:record' }

afterEach(() => {
  provider.answerWith(null)
  provider.publish(key, rsa)
})

describe('a token is taken', () => {
  test.each(['RS256', 'PS256', 'ES256', 'ES384', 'EdDSA'])('signed by %s', async (alg) => {
    const pair = await provider.newKey(`by-${alg}`, alg)
    provider.publish(key, pair)
    expect((await asks(await signed(pair, issuer))).status).toBe(200)
  })

  test.each<[string, JWTPayload, { typ?: string | undefined }?]>([
    ['that names several audiences', { aud: ['https://other.example', audience] }],
    ['as long as clocks may differ after it ended', { exp: seconds - 29 }],
    ['as long as clocks may differ before it begins', { nbf: seconds + 29 }],
    ['without a type', {}, { typ: undefined }],
    ['of type JWT', {}, { typ: 'JWT' }],
  ])('%s', async (_, change, header = {}) => {
    expect((await asks(await signed(key, issuer, change, header))).status).toBe(200)
  })
})

describe('a token is refused', async () => {
  const stranger = await provider.newKey('first')
  const hidden = await provider.newKey('hidden')
  const hmacOf = (secret: string) => {
    const input = `${base64url({ alg: 'HS256', kid: 'rsa', typ: 'at+jwt' })}.${base64url(claims)}`
    return `${input}.${createHmac('sha256', secret).update(input).digest('base64url')}`
  }

  test.each<[string, () => Promise<string> | string, string]>([
    ['that has expired', () => signed(key, issuer, { exp: seconds - 31 }), 'has expired'],
    ['that is not valid yet', () => signed(key, issuer, { nbf: seconds + 31 }), 'not valid yet'],
    ['for another audience', () => signed(key, issuer, { aud: 'https://other.example' }), 'another service'],
    ['without an audience', () => signed(key, issuer, { aud: undefined }), 'lacks the claim "aud"'],
    ['of another issuer', () => signed(key, issuer, { iss: `${issuer}/` }), 'another issuer'],
    ['without an end', () => signed(key, issuer, { exp: undefined }), 'lacks the claim "exp"'],
    ['without a subject', () => signed(key, issuer, { sub: undefined }), 'lacks the claim "sub"'],
    ['that is for something else', () => signed(key, issuer, {}, { typ: 'logout+jwt' }), 'not an access token'],
    ['of a forger who uses the name of a key', () => signed(stranger, issuer), 'signature of the access token is wrong'],
    ['by a key that nobody knows', () => signed(hidden, issuer), 'key that the identity provider does not have'],
    ['without a signature', () => `${base64url({ alg: 'none', typ: 'at+jwt' })}.${base64url(claims)}.`, 'not taken here'],
    ['with the public key as a shared secret, as PEM', async () => hmacOf(await exportSPKI(rsa.publicKey)), 'not taken here'],
    ['with the public key as a shared secret, as JWK', async () => hmacOf(JSON.stringify(await exportJWK(rsa.publicKey))), 'not taken here'],
    ['whose claims were changed', async () => (await signed(key, issuer)).replace(/\.[^.]+\./, `.${base64url({ ...claims, scope: 'wythe:administer' })}.`), 'signature of the access token is wrong'],
    ['whose head is no JSON', () => `abc.${base64url(claims)}.abc`, 'cannot be read'],
  ])('%s', async (_, make, why) => {
    const token = await make()
    const refused = await asks(token)
    expect(problemIn(refused)).toMatchObject({ status: 401, code: 'unauthenticated', detail: expect.stringContaining(why) as string })
    expect(refused.headers['www-authenticate']).toBe('Bearer realm="wythe", error="invalid_token"')
    expect((await asks(token, '/v1/facts')).status, 'where nobody needs one').toBe(401)
    expect((await http.post('/graphql').set('authorization', `Bearer ${token}`).send({ query: '{ __typename }' })).status).toBe(401)
  })

  test('that lacks the scope, with the scope that would do', async () => {
    const refused = await asks(await signed(key, issuer, { scope: 'openid wythe:evaluate' }))
    expect(problemIn(refused)).toMatchObject({ status: 403, code: 'forbidden' })
    expect(refused.headers['www-authenticate']).toBe('Bearer realm="wythe", error="insufficient_scope", scope="wythe:record"')
  })

  test.each([
    undefined, '', 'record', 'wythe:records', 'WYTHE:record', 'wythe:record:', 'wythe:record:*', 'xwythe:record', 'wythe:record\twythe:record', 'wythe:amend', 'wythe:amend:', ['wythe:record'], { 'wythe:record': true }, true,
  ])('whose scope is %j', async (scope) => {
    expect((await asks(await signed(key, issuer, { scope }))).status).toBe(403)
  })
})

test('asking without a token is told which kind is needed, and of no error', async () => {
  const refused = await http.get('/v1/projects').expect(401)
  expect(refused.headers['www-authenticate']).toBe('Bearer realm="wythe"')
})

describe('keys', () => {
  test('that are new are fetched when a token names one, and those that went are no longer taken', async () => {
    const next = await provider.newKey('second')
    provider.publish(next)
    expect((await asks(await signed(next, issuer))).status).toBe(200)
    expect((await asks(await signed(key, issuer))).status).toBe(401)
  })

  test('are not fetched anew for every token that names an unknown one', async () => {
    const patient = identityProvider({ issuer, audience })
    const unknown = await signed(await provider.newKey('unknown'), issuer)
    expect((await patient.verify(await signed(key, issuer), new Date(clock))).outcome).toBe('taken')
    provider.asked.length = 0
    for (let time = 0; time < 20; time += 1) expect((await patient.verify(unknown, new Date(clock))).outcome).toBe('refused')
    expect(provider.asked).toEqual([])
  })

  test('are not asked for by a token that could not be taken anyhow', async () => {
    const fresh = identityProvider({ issuer, audience })
    provider.asked.length = 0
    expect((await fresh.verify(`${base64url({ alg: 'none' })}.${base64url(claims)}.`, new Date(clock))).outcome).toBe('refused')
    expect(provider.asked).toEqual([])
  })

  test('stand where the settings say, without discovery', async () => {
    const named = identityProvider({ issuer, audience, jwksUri: `${issuer}/keys` })
    provider.asked.length = 0
    expect((await named.verify(await signed(key, issuer), new Date(clock))).outcome).toBe('taken')
    expect(provider.asked).toEqual(['/realm/keys'])
  })
})

describe('a provider that cannot be asked', async () => {
  let inUse = identityProvider({ issuer, audience })
  const service = await jurisdictionService({ doorkeeping: { anonymous: 'evaluate', provider: { verify: (token, now) => inUse.verify(token, now) } } })
  const ask = async () => service.http.get('/v1/projects').set('authorization', `Bearer ${await signed(key, issuer)}`)
  const moved = { location: `${issuer}/elsewhere` }
  const unreachable = { status: 503, code: 'identityProviderSilent' }

  test.each<[string, Parameters<typeof provider.answerWith>[0]]>([
    ['fails', (_, response) => { response.writeHead(500).end() }],
    ['hangs up', (_, response) => { response.destroy() }],
    ['answers no JSON', (_, response) => { response.writeHead(200).end('<html>') }],
    ['answers something else', (_, response) => { response.writeHead(200).end('{}') }],
    ['sends elsewhere', (_, response) => { response.writeHead(302, moved).end() }],
    ['speaks for another issuer', (_, response) => { response.writeHead(200).end(JSON.stringify({ issuer: 'https://other.example', jwks_uri: `${issuer}/keys` })) }],
  ])('%s: neither taken nor called wrong, and asked again with the next token', async (_, answer) => {
    inUse = identityProvider({ issuer, audience })
    provider.answerWith(answer)
    const postponed = await ask()
    expect(problemIn(postponed)).toMatchObject(unreachable)
    expect(postponed.headers).toMatchObject({ 'retry-after': '5' })
    expect(postponed.headers).not.toHaveProperty('www-authenticate')
    expect((await service.http.get('/v1/facts')).status).toBe(200)
    provider.answerWith(null)
    expect((await ask()).status).toBe(200)
  })

  test('is not asked about tokens of the service itself', async () => {
    inUse = identityProvider({ issuer, audience })
    provider.answerWith((_, response) => { response.destroy() })
    const own = await service.tokenFor({ kind: 'record' })
    expect((await service.http.get('/v1/projects').set('authorization', `Bearer ${own}`)).status).toBe(200)
  })
})

describe('who it is', () => {
  const project = { id: '0199b000-0000-7000-8000-000000000001', title: 'House', jurisdiction: 'us-xa-101', asOf: '2026-03-01' }
  const post = (token: string, id: string) => http.post(`/v1/projects/${project.id}/entries`).set('authorization', `Bearer ${token}`).send({
    entries: [{ id, opening: 'w-1', at: '2026-03-01T08:00:00Z', by: 'crew', observation: { fact: 'head.support.bearing', member: 'left', value: '6 in', method: 'examine', holdPoint: 'lintelSet' } }],
  })

  test('stands in the journal as a digest bound to the issuer, and in no log', async () => {
    const subject = 'kim.mason@people.example'
    const token = await signed(key, issuer, { sub: subject })
    log.clear()
    await http.post('/v1/projects').set('authorization', `Bearer ${token}`).send(project).expect(201)
    expect((await post(token, '0199b000-0000-7000-8000-0000000000a1')).body).toMatchObject({ results: [{ outcome: 'recorded' }] })
    const [entry] = await records.readEntries(project.id, null, 0, 10)
    expect(entry?.receivedBy).toMatch(/^oidc:[0-9a-f]{32}$/)
    await asks(await signed(key, issuer, { sub: subject, exp: 1 })).expect(401)
    expect(log.lines.length).toBeGreaterThan(3)
    for (const secret of ['people.example', token, token.split('.')[1] ?? token]) expect(log.text).not.toContain(secret)
  })

  test('is the same for each token of a subject, and another for another subject or issuer', async () => {
    const idOf = async (at: string, sub: string) => {
      const verified = await identityProvider({ issuer: at, audience, jwksUri: `${issuer}/keys` }).verify(await signed(key, at, { sub }), new Date(clock))
      return verified.outcome === 'taken' ? verified.caller.token : verified.outcome
    }
    const ids = [await idOf(issuer, 'a'), await idOf(issuer, 'a'), await idOf(issuer, 'b'), await idOf('https://other.example', 'a')]
    expect(ids[0]).toBe(ids[1])
    expect(new Set(ids).size).toBe(3)
  })
})
