import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { sendBy, type Post } from '../../src/webhooks/send.ts'
import { startReceiver, type Receiver } from './receiver.ts'

let receiver: Receiver
let elsewhere: Receiver
beforeAll(async () => { [receiver, elsewhere] = [await startReceiver(), await startReceiver()] })
afterAll(async () => { await Promise.all([receiver.close(), elsewhere.close()]) })
afterEach(() => { receiver.answer = (_, response) => { response.writeHead(204).end() } })

const post = (target: string, change: Partial<Post> = {}): Post => ({ target, headers: { 'content-type': 'application/json', 'webhook-id': 'one' }, text: '{"a":"3½″"}', signal: AbortSignal.timeout(5_000), ...change })
const send = sendBy('publicAndLoopback')

test('what is posted arrives byte for byte, and its status comes back', async () => {
  receiver.answer = (_, response) => { response.writeHead(202, { 'retry-after': '7' }).end('thanks') }
  expect(await send(post(receiver.address))).toEqual({ status: 202, retryAfter: '7' })
  expect(receiver.arrived.at(-1)).toMatchObject({ text: '{"a":"3½″"}', headers: { 'webhook-id': 'one', 'content-type': 'application/json', 'content-length': String(Buffer.byteLength('{"a":"3½″"}')) } })
})

test('a redirection is not followed, wherever it points', async () => {
  const before = elsewhere.arrived.length
  for (const status of [301, 302, 303, 307, 308]) {
    receiver.answer = (_, response) => { response.writeHead(status, { location: elsewhere.address }).end() }
    expect(await send(post(receiver.address))).toMatchObject({ status })
  }
  expect(elsewhere.arrived).toHaveLength(before)
})

test('an endless answer is cut off, and its status counts', async () => {
  let sent = 0
  receiver.answer = (_, response) => {
    response.writeHead(200)
    const more = (): void => { while (!response.destroyed && response.write(Buffer.alloc(4_096))) sent += 4_096 }
    response.on('drain', more).on('error', () => undefined)
    more()
  }
  expect(await send(post(receiver.address))).toMatchObject({ status: 200 })
  expect(sent).toBeLessThan(20_000_000)
})

test('a receiver that does not answer in time is a fault', async () => {
  receiver.answer = () => undefined
  expect(await send(post(receiver.address, { signal: AbortSignal.timeout(100) }))).toEqual({ fault: 'No answer in time.' })
})

test.each<[string, string, RegExp]>([
  ['does not listen', 'http://127.0.0.1:1/', /ECONNREFUSED/],
  ['is not to be reached from here by these rules', 'http://10.0.0.1/', /^The target must be an https address/],
])('one that %s is a fault', async (_, target, fault) => expect(await send(post(target))).toEqual({ fault: expect.stringMatching(fault) as string }))

test('https is spoken to https: a plain server does not count as reached', async () => {
  const before = receiver.arrived.length
  expect(await send(post(receiver.address.replace('http:', 'https:')))).toEqual({ fault: expect.stringContaining('The connection failed') as string })
  expect(receiver.arrived).toHaveLength(before)
})

describe('a name', () => {
  test('is looked up once, and the connection goes to the address that was checked', async () => {
    const there = await startReceiver('127.0.0.2')
    const asked: string[] = []
    // The name of this machine, which everybody else would take to 127.0.0.1
    const pinned = sendBy('publicAndLoopback', async (host) => { asked.push(host); return [{ address: '127.0.0.2', family: 4 }] })
    expect(await pinned(post(`http://localhost:${there.port}/hook`))).toMatchObject({ status: 204 })
    expect(asked).toEqual(['localhost'])
    expect(there.arrived).toHaveLength(1)
    expect(there.arrived[0]?.headers.host).toBe(`localhost:${there.port}`)
    await there.close()
  })

  test.each([
    ['this machine', ['127.0.0.1']],
    ['a public and an inner address', ['93.184.216.34', '10.0.0.7']],
    ['where a cloud keeps its secrets', ['169.254.169.254']],
    ['an IPv4 address wrapped in IPv6', ['::ffff:127.0.0.1']],
    ['an inner IPv6 network', ['fd12::1']],
    ['nothing that is an address', ['localhost']],
  ])('that leads to %s is not followed', async (_, addresses) => {
    const before = receiver.arrived.length
    const reply = await sendBy('public', async () => addresses.map((address) => ({ address, family: address.includes(':') ? 6 : 4 })))(post(`https://rebound.example.com:${receiver.port}/`))
    expect(reply).toEqual({ fault: expect.stringContaining('is not a public address') as string })
    expect(receiver.arrived).toHaveLength(before)
  })

  test('that leads nowhere, or is not looked up in time, is a fault', async () => {
    expect(await sendBy('public', async () => [])(post('https://receiver.example.com/'))).toEqual({ fault: 'The name has no address.' })
    const unknown = sendBy('public', async () => { throw Object.assign(new Error('no'), { code: 'ENOTFOUND' }) })
    expect(await unknown(post('https://receiver.example.com/'))).toEqual({ fault: 'The name cannot be looked up: ENOTFOUND.' })
    const slow = sendBy('public', () => new Promise(() => undefined))
    expect(await slow(post('https://receiver.example.com/', { signal: AbortSignal.timeout(50) }))).toEqual({ fault: 'No answer in time.' })
  })
})
