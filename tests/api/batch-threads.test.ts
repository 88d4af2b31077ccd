import { once } from 'node:events'
import { request as send, type ClientRequest, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { setImmediate, setTimeout as pause } from 'node:timers/promises'
import { afterAll, describe, expect, test } from 'vitest'
import { buildApp } from '../../src/app.ts'
import type { Quota, QuotaKeeper } from '../../src/api/quota-keeper.ts'
import { lineThreads, type LineThreads } from '../../src/api/rest/line-threads.ts'
import { batchAnswer, type BatchAnswer } from '../../src/operations/evaluate-batch.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { corpus } from '../corpus.ts'
import { root } from '../read-sources.ts'
import { dependencies, publicUrl } from './client.ts'
import { serviceOf } from './service.ts'

const place = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' } as const
const media = 'application/x-ndjson'
const program = join(root, 'dist/bundle/line-worker.js')
const plain = JSON.stringify({ opening: { opening: { kind: 'window', width: '48 in', height: '60 in' } } })
const openings = corpus(await realCatalog()).filter((_, index) => index % 12 === 0)
const severalStarts = 120_000

interface Served {
  readonly port: number
  readonly close: () => Promise<void>
  readonly threads: LineThreads
  /** How many lines the threads were given, how many evaluations were counted, how often the quota was asked and had enough or had not, and what was logged. */
  readonly seen: { given: number; counted: number; paid: number; notPaid: number; readonly logged: string[] }
}

/** A service with two threads that are awake, or with none. */
async function served({ by = program, awake = true, idleMilliseconds = 60_000, quota }: { readonly by?: string | null; readonly awake?: boolean; readonly idleMilliseconds?: number; readonly quota?: Quota } = {}): Promise<Served> {
  const seen = { given: 0, counted: 0, paid: 0, notPaid: 0, logged: [] as string[] }
  const real = lineThreads({ count: 2, program: by ?? program, idleMilliseconds, log: { error: (_, message) => seen.logged.push(message) } })
  const threads: LineThreads = { ...real, answer: (batch, lines, counted) => { seen.given += lines.length; return real.answer(batch, lines, counted) } }
  const deps = { ...(await serviceOf(await dependencies())), giveWay: () => setImmediate(), tally: { evaluated: () => { seen.counted += 1 } } }
  const app = await buildApp({ deps, publicUrl, mostLag: 0, lineThreads: by === null ? undefined : threads, quota })
  if (app.quotaKeeper) app.quotaKeeper = watched(app.quotaKeeper, seen)
  await app.listen({ host: '127.0.0.1', port: 0 })
  afterAll(() => app.close())
  if (awake && by !== null) await expect.poll(() => threads.areReady(), { timeout: 30_000 }).toBe(true)
  return { port: (app.server.address() as AddressInfo).port, close: () => app.close(), threads, seen }
}

function watched(keeper: QuotaKeeper, seen: Served['seen']): QuotaKeeper {
  return {
    ...keeper,
    async take(caller, units) {
      const standing = await keeper.take(caller, units)
      seen[standing.allowed ? 'paid' : 'notPaid'] += 1
      return standing
    },
  }
}

function begin({ port }: Served, query = ''): { sent: ClientRequest; response: Promise<IncomingMessage> } {
  const sent = send({ port, host: '127.0.0.1', path: `/v1/evaluations/batch?${new URLSearchParams(place).toString()}${query}`, method: 'POST', headers: { 'content-type': media, 'transfer-encoding': 'chunked' } })
  sent.flushHeaders()
  return { sent, response: once(sent, 'response').then(([response]) => response as IncomingMessage) }
}

async function textOf(from: IncomingMessage): Promise<string> {
  const parts: Buffer[] = []
  for await (const part of from) parts.push(part as Buffer)
  return Buffer.concat(parts).toString()
}

async function answersTo(service: Served, body: Buffer | string, query = ''): Promise<string> {
  const { sent, response } = begin(service, query)
  sent.end(body)
  return textOf(await response)
}

const answersIn = (text: string): readonly BatchAnswer[] => text.trimEnd().split('\n').map((line) => batchAnswer.parse(JSON.parse(line)))
const lines = (count: number, line: (index: number) => string = () => plain): string => Array.from({ length: count }, (_, index) => `${line(index)}\n`).join('')
const numbers = (count: number) => Array.from({ length: count }, (_, index) => index + 1)

describe('a long batch', () => {
  test('is answered byte for byte as without threads, whatever its lines hold', async () => {
    const good = openings.map(({ name, description }) => JSON.stringify({ key: name, opening: description }))
    const odd = ['', '{"opening":', '[1]', '{"key":"k","openin":1}', `{"key":"${'x'.repeat(300_000)}"}`, '{"key":"half","opening":{"reference":"\\ud800"}}', '  ', '{"opening":{"reference":"3⅞″ – π","opening":{"kind":"window","width":"48 in","height":"60 in"}}}']
    const mixed = good.flatMap((line, index) => (index % 9 === 4 ? [odd[index % odd.length] ?? '', line] : [line]))
    const body = Buffer.concat([Buffer.from(`${[...mixed, ...mixed].join('\r\n')}\n`), Buffer.from([0x22, 0xe2, 0x82]), Buffer.from(`\n${good.join('\n')}`)])
    const [beside, alone] = [await served(), await served({ by: null })]
    const [theirs, ours] = [await answersTo(beside, body), await answersTo(alone, body)]
    expect(beside.seen.given).toBeGreaterThan(good.length)
    expect(theirs).toBe(ours)
    expect(beside.seen).toMatchObject({ counted: alone.seen.counted, logged: [] })
    expect(alone.seen.counted).toBeGreaterThan(good.length)
  }, severalStarts)

  test('says in full the same under the same digests', async () => {
    const body = openings.slice(0, 60).map(({ description }) => `${JSON.stringify({ opening: description })}\n`).join('').repeat(3)
    const [beside, alone] = [await served(), await served({ by: null })]
    const whole = async (service: Served) => answersIn(await answersTo(service, body, '&detail=full')).map((answer) => ({ ...answer, evaluation: { ...answer.evaluation, id: '', evaluatedAt: '' } }))
    expect(await whole(beside)).toEqual(await whole(alone))
    expect(beside.seen.given).toBeGreaterThan(0)
  }, severalStarts)

  test('wakes the threads by itself, loses nothing meanwhile, and they go when nobody wants them', async () => {
    const service = await served({ awake: false, idleMilliseconds: 300 })
    const { sent, response } = begin(service)
    const text = response.then(textOf)
    let written = 0
    for (; service.seen.given === 0 && written < 20_000; written += 50) {
      sent.write(lines(50))
      await pause(20)
    }
    sent.end()
    expect(answersIn(await text).map(({ line }) => line)).toEqual(numbers(written))
    expect(service.seen.given).toBeGreaterThan(0)
    await expect.poll(() => service.threads.areReady(), { timeout: 20_000, interval: 2_000 }).toBe(false)
  }, severalStarts)

  test('goes no faster than it is read', async () => {
    const service = await served()
    const { sent, response } = begin(service)
    const line = `${JSON.stringify({ key: 'x'.repeat(150), ...(JSON.parse(plain) as object) })}\n`
    let written = 0
    for (let taken = true; taken && written < 20_000; written += 1) taken = sent.write(line)
    const from = await response
    await standingStill(service)
    expect(service.seen.given, 'nobody read any answer').toBeLessThan(400)
    const more = 3_000
    sent.end(line.repeat(more))
    expect(answersIn(await textOf(from)).map((answer) => answer.line)).toEqual(numbers(written + more))
    expect(service.seen.given).toBeGreaterThan(more / 2)
  }, severalStarts)

  test('whose caller sends a line and waits is answered at once', async () => {
    const service = await served()
    const { sent, response } = begin(service)
    sent.write(lines(300))
    const answered = linesRead(await response)
    await expect.poll(answered, { timeout: 20_000 }).toBe(300)
    for (const count of [301, 302, 303]) {
      sent.write(`${plain}\n`)
      await expect.poll(answered, { timeout: 10_000 }).toBe(count)
    }
    sent.write(lines(5))
    await expect.poll(answered, { timeout: 10_000 }).toBe(308)
    sent.end()
  }, severalStarts)

  test('waits for the quota of its caller: each line is paid for, in its turn, and none is refused', async () => {
    const [count, inWindow] = [300, 100]
    const service = await served({ quota: { units: inWindow * 5, window: 1 } })
    // The threads have the catalog before anything is counted, so that it is the quota that is waited for
    await answersTo(service, lines(200))
    // A request that comes in a window that is used up would be refused as a whole, as any is
    await pause(1_050)
    Object.assign(service.seen, { given: 0, paid: 0, notPaid: 0 })
    const start = performance.now()
    const answers = answersIn(await answersTo(service, lines(count)))
    expect(answers.map(({ line, code }) => [line, code])).toEqual(numbers(count).map((line) => [line, null]))
    expect(service.seen.paid).toBe(count)
    expect(service.seen.notPaid, 'lines that had to wait').toBeGreaterThan(0)
    // Of the windows of a second that so many lines need, one at least began and ended meanwhile; a timer may come a little early
    expect(performance.now() - start).toBeGreaterThan(950)
    expect(service.seen.given).toBeGreaterThan(count / 3)
  }, severalStarts)

  test('ends when its caller goes away', async () => {
    const service = await served()
    const { sent, response } = begin(service)
    sent.on('error', () => undefined)
    sent.write(lines(5_000))
    await response
    sent.destroy()
    await standingStill(service)
    expect(service.seen.given).toBeLessThan(4_000)
  }, severalStarts)

  test('is told where to go on when the service stops, after all that was taken in is answered', async () => {
    const service = await served()
    const { sent, response } = begin(service)
    sent.on('error', () => undefined)
    sent.write(lines(400))
    const text = textOf(await response)
    await expect.poll(() => service.seen.given, { timeout: 20_000 }).toBeGreaterThan(0)
    await service.close()
    const answers = answersIn(await text)
    expect(answers.map(({ line }) => line)).toEqual(numbers(answers.length))
    expect(answers.map(({ code }) => code)).toEqual([...Array.from({ length: answers.length - 1 }, () => null), 'unavailable'])
  }, severalStarts)
})

describe('a thread that breaks down', () => {
  test('is told on the line it broke down over, and on no other', async () => {
    const service = await served({ by: join(root, 'tests/api/breaking-worker.js') })
    const bad = JSON.stringify({ key: 'break down', ...(JSON.parse(plain) as object) })
    const answers = answersIn(await answersTo(service, lines(900, (index) => (index === 500 ? bad : plain))))
    expect(answers.map(({ line }) => line)).toEqual(numbers(900))
    const told = answers.filter(({ code }) => code !== null)
    expect(told).toMatchObject([{ line: 501, code: 'internal', brief: null }])
    expect(service.seen.logged).toContain('a thread for batches broke down')
    expect(answersIn(await answersTo(service, lines(900))).map(({ code }) => code), 'the next batch').toEqual(Array.from({ length: 900 }, () => null))
  }, severalStarts)

  test('before it ever answered is done without', async () => {
    const service = await served({ by: join(root, 'tests/api/no-such-worker.js'), awake: false })
    const answers = answersIn(await answersTo(service, lines(400)))
    expect(answers.map(({ line, code }) => [line, code])).toEqual(numbers(400).map((line) => [line, null]))
    await expect.poll(() => service.seen.logged).toContain('a thread for batches broke down')
    expect(service.seen.given).toBe(0)
  }, severalStarts)
})

async function standingStill({ seen }: Served): Promise<void> {
  for (let before = -1; before !== seen.given; ) {
    before = seen.given
    await pause(700)
  }
}

function linesRead(from: IncomingMessage): () => number {
  let count = 0
  from.on('data', (part: Buffer) => { count += part.toString().split('\n').length - 1 })
  return () => count
}
