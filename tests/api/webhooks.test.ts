import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { deliverer } from '../../src/webhooks/deliverer.ts'
import { publicKeyOf } from '../../src/webhooks/key-pair.ts'
import { sealerBy } from '../../src/webhooks/secret.ts'
import { sendBy } from '../../src/webhooks/send.ts'
import { startReceiver, type Receiver } from '../webhooks/receiver.ts'
import { takenIn } from '../webhooks/told.ts'
import { bodyOf, embedmentOrdinance, jurisdictionService } from './jurisdiction.ts'

const { http, tokenFor, records, active } = await jurisdictionService()
const [office, inspector, clerk] = [await tokenFor({ kind: 'administer' }), await tokenFor({ kind: 'record' }), await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' })]
/** Its clock is that of the receivers, who refuse what is old. */
const { deliverDue } = deliverer({ outbox: records, sealer: sealerBy(undefined), send: sendBy('publicAndLoopback'), now: () => new Date(), random: () => 0, wait: async () => undefined, log: { error: () => undefined, warn: () => undefined } })
let receiver: Receiver
beforeAll(async () => { receiver = await startReceiver() })
afterAll(() => receiver.close())

const id = (last: number) => `0199b000-0000-7000-8000-${String(last).padStart(12, '0')}`
const send = (path: string, body: object = {}, token = office) => http.post(path).set('authorization', `Bearer ${token}`).send(body)
const read = (path: string, token = office) => http.get(path).set('authorization', `Bearer ${token}`)
const drop = (path: string, token = office) => http.delete(path).set('authorization', `Bearer ${token}`)

/** A webhook of its own that leads to the receiver; what arrives for it is taken in by its secret or its public key. */
async function hook(change: object = {}) {
  const path = `${receiver.address}/${Math.random()}`
  const made = bodyOf(operations.createWebhook, await send('/v1/webhooks', { target: path, ...change }).expect(201).expect('cache-control', 'no-store'))
  const address = `/v1/webhooks/${made.webhook.webhook}`
  const key = keyOf(made)
  const deliveries = async () => bodyOf(operations.listDeliveries, await read(`${address}/deliveries`).expect(200)).items
  const arrivals = async () => {
    await deliverDue()
    const events = new Set((await deliveries()).map(({ event }) => event))
    return receiver.arrived.filter(({ headers, text }) => events.has(String(headers['webhook-id'])) && fits(text, headers as Record<string, string>, key)).map((one) => takenIn(one, key)).toSorted((a, b) => (a.sequence < b.sequence ? -1 : 1))
  }
  return { ...made, key, address, deliveries, arrivals }
}

/** What its receiver checks by. */
function keyOf({ secret, webhook }: { readonly secret: string | null; readonly webhook: { readonly publicKey: string | null } }): string {
  const key = secret ?? webhook.publicKey
  if (key === null) throw new Error('a webhook has neither secret nor public key')
  return key
}

function fits(text: string, headers: Record<string, string>, key: string): boolean {
  try {
    takenIn({ headers, text }, key)
    return true
  } catch (error) {
    if (error instanceof Error && error.message.includes('signature')) return false
    throw error
  }
}

const house = (last: number) => ({ id: id(last), title: '12 Quarry Walk', jurisdiction: 'us-xa-101', asOf: '2026-03-01' })
const about = (last: number, opening = 'w-1') => ({ id: id(last), opening, at: '2026-03-02T09:00:00Z', by: 'inspector' })
const bearing = (last: number, value: string) => ({ ...about(last), note: 'seen by somebody', observation: { fact: 'head.support.bearing', value, method: 'examine', holdPoint: 'lintelSet' } })
const design = (last: number) => ({ ...about(last), design: { description: { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: 6 } } } } })

describe('what happened is told', () => {
  test('of a project: that it was made, and changed', async () => {
    const { arrivals, webhook } = await hook({ eventTypes: ['projectCreated', 'projectChanged'] })
    expect(webhook).toMatchObject({ state: 'active', secretKept: 'inTheClear', eventTypes: ['projectCreated', 'projectChanged'], projects: null })
    const made = await send('/v1/projects', house(1), inspector).expect(201)
    await send('/v1/projects', house(1), inspector).expect(201)
    const { version } = made.body as { version: string }
    const { title, jurisdiction, asOf } = house(1)
    const rest = { title, jurisdiction, asOf }
    const change = (seen: string, body: object) => http.put(`/v1/projects/${id(1)}`).set('authorization', `Bearer ${inspector}`).set('if-match', `"${seen}"`).send(body)
    await change(version, rest).expect(200)
    await change(version, { ...rest, title: 'Renamed' }).expect(200)
    await change(version, { ...rest, title: 'Too late' }).expect(412)
    const told = await arrivals()
    expect(told.map(({ type, sequence, source }) => [type, sequence, source])).toEqual([
      ['wythe.projectCreated', '0000000001', `https://wythe.example/v1/projects/${id(1)}`], ['wythe.projectChanged', '0000000002', `https://wythe.example/v1/projects/${id(1)}`],
    ])
    expect(told[0]?.data).toMatchObject({ project: id(1), jurisdiction: 'us-xa-101', asOf: '2026-03-01', version })
    expect(JSON.stringify(told)).not.toContain('Quarry')
  })

  test('of an opening: what was recorded, what comes out otherwise, and a sign-off', async () => {
    await send('/v1/projects', house(2), inspector)
    const { arrivals } = await hook({ eventTypes: ['openingRecorded', 'holdPointSignedOff'], projects: [id(2)] })
    const post = async (...entries: object[]) => bodyOf(operations.postEntries, await send(`/v1/projects/${id(2)}/entries`, { entries }, inspector).expect(200))
    const answers = [await post(design(20)), await post(bearing(21, '3 in')), await post(bearing(21, '3 in')), await post(bearing(21, '4 in'))]
    answers.push(await post({ ...about(22), signOff: { holdPoint: 'lintelSet', reason: 'the mason comes back' } }))
    const told = await arrivals()
    expect(told.map(({ type }) => type)).toEqual(['wythe.openingRecorded', 'wythe.openingRecorded', 'wythe.openingRecorded', 'wythe.holdPointSignedOff'])
    // Somebody listened for the project itself
    expect(told.map(({ sequence }) => Number(sequence))).toEqual([2, 3, 4, 5])
    expect(told.slice(0, 2).map(({ data }) => [data['verdict'], data['entries'], data['changed']])).toEqual([0, 1].map((index) => {
      const { openings, results } = answers[index] ?? { openings: [], results: [] }
      return [openings[0]?.standing.verdict, [{ id: id(20 + index), kind: ['design', 'observation'][index], sequence: results[0]?.sequence }], openings[0]?.changed.map(({ rule, member, before, after }) => ({ rule, member, before, after }))]
    }))
    expect(told[1]?.data['changed']).toEqual(expect.arrayContaining([{ rule: 'lintel.bearing-length', member: 'left', before: 'pass', after: 'fail' }]))
    expect(told[3]).toMatchObject({ subject: 'openings/w-1', data: { holdPoint: 'lintelSet', entry: id(22), ready: false, withReason: true, href: `https://wythe.example/v1/projects/${id(2)}/openings/w-1` } })
    expect(JSON.stringify(told)).not.toMatch(/inspector|somebody|mason/)
    expect((await read(new URL(String(told[3]?.data['href'])).pathname, inspector)).status).toBe(200)
  })

  test('of an opening that others record at the same time: the last event has the verdict that stands', async () => {
    await send('/v1/projects', house(3), inspector)
    await send(`/v1/projects/${id(3)}/entries`, { entries: [design(30)] }, inspector)
    const { arrivals } = await hook({ eventTypes: ['openingRecorded'], projects: [id(3)] })
    const sides = ['left', 'right'].map((member, index) => ({ ...about(31 + index), observation: { fact: 'head.support.bearing', member, value: '3 in', method: 'examine', holdPoint: 'lintelSet' } }))
    await Promise.all(sides.map((entry) => send(`/v1/projects/${id(3)}/entries`, { entries: [entry] }, inspector).expect(200)))
    const told = await arrivals()
    const changed = told.map(({ data }) => (data['changed'] as { rule: string; member: string | null }[]).filter(({ rule }) => rule === 'lintel.bearing-length').map(({ member }) => member))
    expect(changed.map((members) => members.length)).toEqual([1, 1])
    expect(changed.flat().toSorted()).toEqual(['left', 'right'])
  })

  test('of an amendment and of a kept evaluation, which belong to no project', async () => {
    const { arrivals } = await hook({ eventTypes: ['amendmentAdopted', 'evaluationKept'], projects: [id(2)] })
    const opening = { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 } }
    await send('/v1/evaluations', { jurisdiction: 'us-xa-101', asOf: '2026-03-01', opening }).expect(200)
    const kept = bodyOf(operations.keepEvaluation, await send('/v1/evaluations', { jurisdiction: 'us-xa-101', asOf: '2026-03-01', keep: true, opening }, inspector).expect(200))
    const drafted = await http.post('/v1/amendment-drafts').set('authorization', `Bearer ${clerk}`).set('content-type', 'application/yaml').send(embedmentOrdinance('us-xa-101')).expect(201)
    await http.post(`/v1/amendment-drafts/${(drafted.body as { id: string }).id}/adopt`).set('authorization', `Bearer ${clerk}`).set('if-match', String(drafted.headers['etag'])).expect(201)
    const told = await arrivals()
    expect(told.map(({ type, subject }) => [type, subject]).toSorted()).toEqual([['wythe.amendmentAdopted', 'us-xa-101/ord-2026-01'], ['wythe.evaluationKept', kept.id]])
    expect(told.find(({ type }) => type === 'wythe.evaluationKept')?.data).toMatchObject({ verdict: kept.summary.verdict, digest: kept.digest })
    const adopted = told.find(({ type }) => type === 'wythe.amendmentAdopted')?.data
    expect(adopted).toMatchObject({ sequence: active.state.sequence, effectiveFrom: '2026-03-01', effectiveUntil: null })
    expect((await read(new URL(String(adopted?.['href'])).pathname)).status).toBe(200)
  })
})

describe('a webhook', () => {
  test('is tried with a ping, and told what became of it', async () => {
    const { address, arrivals, deliveries, webhook } = await hook({ eventTypes: ['evaluationKept'] })
    const ping = bodyOf(operations.pingWebhook, await send(`${address}/ping`).expect(202))
    expect(ping).toMatchObject({ eventType: 'ping', state: 'due', attempts: 0 })
    expect(await arrivals()).toMatchObject([{ type: 'wythe.ping', data: { webhook: webhook.webhook } }])
    expect(await deliveries()).toMatchObject([{ delivery: ping.delivery, state: 'delivered', status: 204, attempts: 1 }])
    expect(bodyOf(operations.replayDelivery, await send(`${address}/deliveries/${ping.delivery}/replay`).expect(202))).toMatchObject({ event: ping.event, state: 'due' })
    const [first, second] = await arrivals()
    expect(second).toEqual(first)
    expect((await read(`${address}/deliveries?state=delivered&first=1`)).body).toMatchObject({ items: [{ state: 'delivered' }], nextCursor: expect.any(String) as string })
    expect((await read(`${address}/deliveries?after=nonsense`)).body).toMatchObject({ code: 'invalidInput', errors: [{ pointer: '/after' }] })
    expect((await send(`${address}/deliveries/none/replay`)).status).toBe(404)
  })

  test('may change its secret, and both sign for a day', async () => {
    const { address, secret, arrivals } = await hook({ eventTypes: ['evaluationKept'] })
    const renewed = bodyOf(operations.rotateWebhookSecret, await send(`${address}/secret`).expect(201))
    expect(renewed.secret).not.toBe(secret)
    expect(renewed.webhook.oldSecretSignsUntil).toBe('2026-03-02T12:00:00.000Z')
    // The service of this test lives in March 2026 and the receiver in its own time, in which the old secret is past
    await send(`${address}/ping`)
    await deliverDue()
    const last = receiver.arrived.at(-1) ?? { headers: {}, text: '' }
    expect(takenIn(last, keyOf(renewed)).type).toBe('wythe.ping')
    expect(await arrivals()).toEqual([])
  })

  test('may be signed by a key that only the service has: the public one is shown, now and later, the private one never', async () => {
    const { address, secret, webhook, arrivals } = await hook({ eventTypes: ['evaluationKept'], signature: 'ed25519' })
    expect(secret).toBeNull()
    expect(webhook).toMatchObject({ signature: 'ed25519', publicKey: expect.stringMatching(/^whpk_[\w+/]{43}=$/) as string })
    expect(bodyOf(operations.readWebhook, await read(address))).toEqual(webhook)
    // What the sealer of this test left, which has no key
    const { sealed = '' } = (await records.readWebhook(webhook.webhook))?.secrets[0] ?? {}
    expect(publicKeyOf(sealed.replace('clear:', ''))).toBe(webhook.publicKey)
    await send(`${address}/ping`).expect(202)
    expect((await arrivals()).map(({ type }) => type)).toEqual(['wythe.ping'])
    const renewed = bodyOf(operations.rotateWebhookSecret, await send(`${address}/secret`).expect(201))
    expect(renewed).toMatchObject({ secret: null, webhook: { signature: 'ed25519', oldSecretSignsUntil: '2026-03-02T12:00:00.000Z' } })
    expect(renewed.webhook.publicKey).not.toBe(webhook.publicKey)
    await send(`${address}/ping`)
    await deliverDue()
    expect(takenIn(receiver.arrived.at(-1) ?? { headers: {}, text: '' }, keyOf(renewed)).type).toBe('wythe.ping')
  })

  test('is signed by a shared secret where nothing else is asked for, and by nothing that is unknown', async () => {
    const { webhook, secret } = await hook({ signature: null })
    expect([webhook.signature, webhook.publicKey, secret?.startsWith('whsec_')]).toEqual(['hmac', null, true])
    expect((await send('/v1/webhooks', { target: receiver.address, signature: 'rsa' })).body).toMatchObject({ code: 'invalidInput', errors: [{ pointer: '/signature' }] })
  })

  test('that is gone is disabled, refuses pings, and is enabled again', async () => {
    const { address, webhook } = await hook({ eventTypes: ['evaluationKept'] })
    receiver.answer = (_, response) => { response.writeHead(410).end() }
    await send(`${address}/ping`)
    await deliverDue()
    receiver.answer = (_, response) => { response.writeHead(204).end() }
    expect((await read(address)).body).toMatchObject({ state: 'disabled', disabledBecause: 'gone' })
    expect((await send(`${address}/ping`)).body).toMatchObject({ status: 409, code: 'webhookDisabled', detail: expect.stringContaining('because the receiver answered 410') as string })
    expect((await send(`${address}/enable`).expect(200)).body).toMatchObject({ webhook: webhook.webhook, state: 'active', disabledAt: null })
    expect((await send(`${address}/ping`)).status).toBe(202)
  })

  test('never shows its secret again, and is deleted', async () => {
    const { address, key, webhook } = await hook()
    const listed = await read('/v1/webhooks?first=200')
    expect(bodyOf(operations.listWebhooks, listed).items).toContainEqual(webhook)
    expect(listed.text).not.toContain(key.replace('whsec_', ''))
    expect((await drop(address)).body).toMatchObject({ webhook: webhook.webhook })
    for (const again of [read(address), drop(address), send(`${address}/ping`), send(`${address}/enable`), send(`${address}/secret`), read(`${address}/deliveries`)]) expect((await again).status).toBe(404)
  })

  test('needs the scope to administer', async () => {
    const { address } = await hook()
    const calls = (token: string) => [read('/v1/webhooks', token), send('/v1/webhooks', { target: 'https://receiver.example.com/' }, token), read(address, token), drop(address, token), send(`${address}/ping`, {}, token), send(`${address}/enable`, {}, token), send(`${address}/secret`, {}, token), read(`${address}/deliveries`, token), send(`${address}/deliveries/x/replay`, {}, token)]
    for (const token of [inspector, clerk]) for (const call of calls(token)) expect((await call).status).toBe(403)
    expect((await http.get('/v1/webhooks')).status).toBe(401)
  })

  test('with several faults is told all of them', async () => {
    const refused = await send('/v1/webhooks', { target: 'https://169.254.169.254/', projects: ['none', id(2), 'neither'] })
    expect(refused.body).toMatchObject({ status: 422, code: 'invalidInput', errors: [
      { pointer: '/target', detail: 'leads to 169.254.169.254, which is not a public address.' }, { code: 'notFound', pointer: '/projects/0' }, { code: 'notFound', pointer: '/projects/2' },
    ] })
    expect((await send('/v1/webhooks', { target: 'https://receiver.example.com/', eventTypes: ['everything'] })).body).toMatchObject({ code: 'invalidInput', errors: [{ pointer: '/eventTypes/0' }] })
  })

  test('is the same over GraphQL', async () => {
    const graphql = async (query: string, variables: object = {}) => (await http.post('/graphql').set('authorization', `Bearer ${office}`).send({ query, variables })).body as { data: Record<string, unknown> }
    const { data } = await graphql('mutation($target: String!) { createWebhook(target: $target, eventTypes: [evaluationKept]) { secret webhook { webhook state eventTypes } } }', { target: receiver.address })
    const made = data['createWebhook'] as { secret: string; webhook: { webhook: string } }
    expect(made).toMatchObject({ secret: expect.stringMatching(/^whsec_/) as string, webhook: { state: 'active', eventTypes: ['evaluationKept'] } })
    const of = { webhook: made.webhook.webhook }
    expect((await graphql('mutation($webhook: String!) { pingWebhook(webhook: $webhook) { state eventType } }', of)).data).toEqual({ pingWebhook: { state: 'due', eventType: 'ping' } })
    expect((await graphql('query($webhook: String!) { webhook(webhook: $webhook) { target } webhookDeliveries(webhook: $webhook) { edges { node { eventType } } } }', of)).data).toEqual({ webhook: { target: receiver.address }, webhookDeliveries: { edges: [{ node: { eventType: 'ping' } }] } })
    expect((await graphql('mutation($webhook: String!) { deleteWebhook(webhook: $webhook) { webhook } }', of)).data).toEqual({ deleteWebhook: of })
  })
})
