import { afterEach, describe, expect, test } from 'vitest'
import { openRecords } from '../../src/store/open-records.ts'
import type { Records } from '../../src/store/records.ts'
import { deliverer, type DelivererMeans } from '../../src/webhooks/deliverer.ts'
import { delays } from '../../src/webhooks/schedule.ts'
import { publicKeyOf } from '../../src/webhooks/key-pair.ts'
import { newSigningSecret, sealerBy } from '../../src/webhooks/secret.ts'
import type { Post, Reply } from '../../src/webhooks/send.ts'
import { later, until } from '../store/contract.ts'
import { project } from '../store/samples.ts'
import { at, happening, webhook } from './outbox-clock.ts'
import { isSignedBy } from './public-key.ts'

const opened: Records[] = []
afterEach(async () => { await Promise.all(opened.splice(0).map((records) => records.close())) })

/** A store with webhooks and a deliverer over it, with a clock that is set by hand and an answer for each post. */
async function set(webhooks: readonly string[], answer: (post: Post) => Promise<Reply> | Reply, change: Partial<DelivererMeans> = {}) {
  const records = await openRecords({ dataDir: ':memory:' })
  opened.push(records)
  for (const id of webhooks) await records.createWebhook(webhook(id, { target: `https://${id}.example.com/` }), 99)
  const clock = { seconds: 0 }
  const posts: Post[] = []
  const logged: string[] = []
  const say = (_: object, message: string): void => { logged.push(message) }
  const made = deliverer({
    outbox: records, sealer: sealerBy(undefined), now: () => new Date(at(clock.seconds)), random: () => 0, log: { error: say, warn: say },
    send: async (post) => { posts.push(post); return answer(post) },
    wait: (milliseconds, signal) => new Promise((resolve) => { const timer = setTimeout(resolve, Math.min(milliseconds, 5)); signal.addEventListener('abort', () => { clearTimeout(timer); resolve() }) }),
    ...change,
  })
  const list = async (id = 'w') => (await records.listDeliveries(id, null, null, 99)).items
  return { records, clock, posts, logged, list, ...made }
}

const ok: Reply = { status: 204, retryAfter: null }
const status = (code: number, retryAfter: string | null = null): Reply => ({ status: code, retryAfter })

describe('a failed attempt', () => {
  test.each<[string, Reply]>([
    ['a redirection', status(302)], ['no such page', status(404)], ['too many', status(429)], ['a fault over there', status(500)], ['no answer', { fault: 'No answer in time.' }],
  ])('is one that got %s, and is made again', async (_, reply) => {
    const { records, list, clock, deliverDue, posts } = await set(['w'], () => reply)
    await records.createProject(project('p'), [happening('e')])
    await deliverDue()
    expect(await list()).toMatchObject([{ state: 'due', attempts: 1, nextAt: at(5), status: 'status' in reply ? reply.status : null, fault: 'fault' in reply ? reply.fault : `The receiver answered ${reply.status}.` }])
    clock.seconds = 4
    await deliverDue()
    expect(posts).toHaveLength(1)
  })

  test('is made again by the schedule, with the same id and words and a new moment, until there is an end', async () => {
    const { records, list, clock, deliverDue, posts, logged } = await set(['w'], () => status(503))
    await records.createProject(project('p'), [happening('e')])
    await deliverDue()
    for (const delay of delays) {
      clock.seconds += delay / 1_000
      await deliverDue()
    }
    expect(posts).toHaveLength(10)
    expect(new Set(posts.map(({ text, headers }) => `${headers['webhook-id']} ${text}`)).size).toBe(1)
    expect(new Set(posts.map(({ headers }) => headers['webhook-timestamp'])).size).toBe(10)
    expect(await list()).toMatchObject([{ state: 'givenUp', attempts: 10, nextAt: null, status: 503 }])
    expect(await records.readWebhook('w')).toMatchObject({ disabledBecause: 'unreachable' })
    expect(logged).toEqual(['a delivery was given up and its webhook disabled'])
  })

  test('waits as long as the receiver asks for', async () => {
    const { records, list, deliverDue } = await set(['w'], () => status(503, '3600'))
    await records.createProject(project('p'), [happening('e')])
    await deliverDue()
    expect(await list()).toMatchObject([{ nextAt: at(3_600) }])
  })
})

test('a receiver that is gone gets nothing more', async () => {
  const { records, list, clock, deliverDue, posts } = await set(['w'], () => status(410))
  await records.createProject(project('p'), [happening('e')])
  await deliverDue()
  await records.createProject(project('q'), [happening('f')])
  clock.seconds = 9_999
  await deliverDue()
  expect(posts).toHaveLength(1)
  expect(await list()).toMatchObject([{ event: 'e', state: 'givenUp', status: 410 }])
  expect(await records.readWebhook('w')).toMatchObject({ disabledBecause: 'gone' })
})

test('what is sent is a CloudEvent in structured mode', async () => {
  const { records, deliverDue, posts } = await set(['w'], () => ok)
  await records.createProject(project('p'), [happening('e')])
  await deliverDue()
  expect(posts[0]).toMatchObject({ target: 'https://w.example.com/', headers: { 'content-type': 'application/cloudevents+json; charset=utf-8', 'webhook-id': 'e', 'webhook-timestamp': String(Date.parse(at(0)) / 1_000) } })
})

test('while a secret is changed both sign, and the old one no longer after its time', async () => {
  const { records, clock, deliverDue, posts } = await set(['w'], () => ok)
  await records.rotateSecret('w', { sealed: 'clear:whsec_AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA' }, at(0), at(100))
  for (const [id, seconds] of [['e', 99], ['f', 100]] as const) {
    clock.seconds = seconds
    await records.createProject(project(id), [happening(id)])
    await deliverDue()
  }
  expect(posts.map(({ headers }) => headers['webhook-signature']?.split(' ').length)).toEqual([2, 1])
})

test('while a key is changed both sign, each public key finds its own signature and that of a stranger none', async () => {
  const keys = Array.from({ length: 3 }, () => newSigningSecret('ed25519'))
  const [first = '', second = ''] = keys
  const { records, clock, deliverDue, posts } = await set([], () => ok)
  await records.createWebhook(webhook('w', { secrets: [{ sealed: `clear:${first}`, publicKey: publicKeyOf(first), until: null }] }), 9)
  await records.rotateSecret('w', { sealed: `clear:${second}`, publicKey: publicKeyOf(second) }, at(0), at(100))
  for (const [id, seconds] of [['e', 99], ['f', 100]] as const) {
    clock.seconds = seconds
    await records.createProject(project(id), [happening(id)])
    await deliverDue()
  }
  const fitting = posts.map(({ headers, text }) => keys.map((key) => isSignedBy(publicKeyOf(key), headers, text)))
  expect(fitting).toEqual([[true, true, false], [false, true, false]])
})

test('a secret that cannot be read sends nothing and loses nothing', async () => {
  const { records, list, deliverDue, posts, logged } = await set([], () => ok)
  await records.createWebhook(webhook('w', { secrets: [{ sealed: sealerBy(new Uint8Array(32)).seal('whsec_x', 'w'), until: null }] }), 9)
  await records.createProject(project('p'), [happening('e')])
  await deliverDue()
  expect(posts).toEqual([])
  expect(await list()).toMatchObject([{ state: 'due', attempts: 1, fault: 'The signing secret is encrypted, and WEBHOOK_KEY is not set.' }])
  expect(logged).toEqual(['the signing secret cannot be read'])
})

test('a slow receiver has few under way and does not hold up the others', async () => {
  let letGo: () => void = () => undefined
  const held = new Promise<void>((resolve) => { letGo = resolve })
  const { records, list, deliverDue, posts } = await set(['slow', 'quick'], async ({ target }) => { if (target.includes('slow')) await held; return ok })
  await records.createProject(project('p'), Array.from({ length: 20 }, (_, index) => happening(`e${index}`)))
  const done = deliverDue()
  await until(() => posts.filter(({ target }) => target.includes('quick')).length === 20)
  expect(posts.filter(({ target }) => target.includes('slow'))).toHaveLength(4)
  letGo()
  await done
  expect((await list('slow')).map(({ state }) => state)).toEqual(Array.from({ length: 20 }, () => 'delivered'))
})

test('no more than sixteen are under way at once', async () => {
  let [now, most] = [0, 0]
  const { records, deliverDue } = await set(Array.from({ length: 10 }, (_, index) => `w${index}`), async () => {
    most = Math.max(most, now += 1)
    await later(2)
    now -= 1
    return ok
  })
  await records.createProject(project('p'), Array.from({ length: 6 }, (_, index) => happening(`e${index}`)))
  await deliverDue()
  expect(most).toBe(16)
})

describe('once it is started', () => {
  test('it goes on with what comes, over faults of the store, until it is stopped', async () => {
    const { records, posts, start, stop, logged } = await set(['w'], () => ok)
    start()
    await records.createProject(project('p'), [happening('e')])
    await until(() => posts.length === 1)
    const claim = records.claim.bind(records)
    records.claim = () => Promise.reject(new Error('away'))
    await until(() => logged.length > 1)
    records.claim = claim
    await records.createProject(project('q'), [happening('f')])
    await until(() => posts.length === 2)
    await stop()
    await records.createProject(project('r'), [happening('g')])
    await later(50)
    expect(posts).toHaveLength(2)
    expect(logged).toContain('the outbox cannot be read; another look follows')
  })

  test('stopping lets what is under way end', async () => {
    const { records, list, start, stop, posts } = await set(['w'], async () => { await later(60); return ok }, { wait: (milliseconds, signal) => new Promise((resolve) => { setTimeout(resolve, milliseconds > 1_000 ? milliseconds : 5); signal.addEventListener('abort', () => resolve()) }) })
    await records.createProject(project('p'), [happening('e')])
    start()
    await until(() => posts.length === 1)
    await stop()
    expect(await list()).toMatchObject([{ state: 'delivered' }])
  })

  test('stopping breaks off what takes too long, and hands it back uncounted', async () => {
    const { records, list, start, stop, posts } = await set(['w'], ({ signal }) => new Promise((resolve) => { signal.addEventListener('abort', () => resolve({ fault: 'No answer in time.' })) }))
    await records.createProject(project('p'), [happening('e')])
    start()
    await until(() => posts.length === 1)
    await stop(1)
    expect(await list()).toMatchObject([{ state: 'due', attempts: 0, nextAt: at(0), fault: null }])
  })

  test('an attempt is broken off in time', async () => {
    const { records, list, deliverDue } = await set(['w'], ({ signal }) => new Promise((resolve) => { signal.addEventListener('abort', () => resolve({ fault: 'No answer in time.' })) }), { attemptMilliseconds: 20 })
    await records.createProject(project('p'), [happening('e')])
    await deliverDue()
    expect(await list()).toMatchObject([{ state: 'due', attempts: 1, fault: 'No answer in time.' }])
  })
})
