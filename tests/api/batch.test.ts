import { once } from 'node:events'
import { request as send, type ClientRequest, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { setImmediate, setTimeout as pause } from 'node:timers/promises'
import { afterAll, describe, expect, test } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { batchAnswer, type BatchAnswer } from '../../src/operations/evaluate-batch.ts'
import type { Evaluation } from '../../src/evaluation/document.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { corpus } from '../corpus.ts'
import { client, dependencies, publicUrl } from './client.ts'
import { serviceOf } from './service.ts'

const place = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' } as const
const path = `/v1/evaluations/batch?${new URLSearchParams(place).toString()}`
/** One JSON text to a line, each ended by a line feed, in UTF-8, as NDJSON and JSON Lines have it (jsonlines.org, from memory). */
const media = 'application/x-ndjson'
const plain = { opening: { kind: 'window', width: '48 in', height: '60 in' } }
const { http } = await client()
const openings = corpus(await realCatalog()).filter((_, index) => index % 40 === 0)

function answersIn(text: string): readonly BatchAnswer[] {
  expect(text.endsWith('\n')).toBe(true)
  return text.trimEnd().split('\n').map((line) => batchAnswer.parse(JSON.parse(line)))
}

async function inLines(body: string | Buffer, query = ''): Promise<readonly BatchAnswer[]> {
  const response = await http.post(path + query).set('content-type', media).send(body).buffer(true).parse((from, done) => {
    const parts: Buffer[] = []
    from.on('data', (part: Buffer) => parts.push(part)).on('end', () => done(null, Buffer.concat(parts).toString()))
  }).expect(200).expect('content-type', `${media}; charset=utf-8`).expect('cache-control', 'no-store')
  return answersIn(response.body as string)
}

describe('lines', () => {
  test('are answered in order, each as by itself', async () => {
    const answers = await inLines(openings.map(({ name, description }) => JSON.stringify({ key: name, opening: description })).join('\n'))
    expect(answers.map(({ key }) => key)).toEqual(openings.map(({ name }) => name))
    expect(answers.map(({ line }) => line)).toEqual(openings.map((_, index) => index + 1))
    for (const [index, { description }] of openings.entries()) {
      const alone = (await http.post('/v1/evaluations').send({ ...place, opening: description }).expect(200)).body as Evaluation
      expect(answers[index]).toMatchObject({ reference: alone.subject.reference, code: null, evaluation: null, brief: { summary: alone.summary, nextToMeasure: alone.nextToMeasure, catalog: alone.catalog, notice: alone.notice } })
    }
  }, 60_000)

  test('say in full what an evaluation says, under the same digest', async () => {
    const [answer] = await inLines(JSON.stringify({ opening: openings[0]?.description }), '&detail=full')
    const { digest } = (await http.post('/v1/evaluations').send({ ...place, opening: openings[0]?.description }).expect(200)).body as Evaluation
    expect(answer?.evaluation?.digest).toBe(digest)
  })

  test('that cannot be read are told as such, and hold nothing up', async () => {
    const good = JSON.stringify({ key: 'good', opening: plain })
    const lines = [good, '', '{"opening":', '[1]', '{"key":"k","openin":1}', `{"key":"${'x'.repeat(300_000)}"}`, '{"key":"half","opening":{"reference":"\\ud800"}}', '{"__proto__":{"opening":1}}', '  ', good]
    const answers = await inLines(Buffer.concat([Buffer.from(lines.join('\r\n')), Buffer.from('\n'), Buffer.from([0x22, 0xff, 0x22]), Buffer.from(`\n${good}`)]))
    expect(answers.map(({ line, key, code, problems }) => [line, key, code, problems.map(({ code: one, pointer }) => `${one} ${pointer}`)])).toEqual([
      [1, 'good', null, []],
      [3, null, 'malformed', ['malformed ']],
      [4, null, 'invalidInput', expect.arrayContaining([expect.stringMatching(/^wrongType/)])],
      [5, 'k', 'invalidInput', ['unknownKey /openin', 'missingKey /opening']],
      [6, null, 'tooLarge', ['tooLarge ']],
      [7, 'half', 'invalidInput', ['notText /opening/reference']],
      [8, null, 'invalidInput', expect.arrayContaining(['missingKey /opening'])],
      [10, 'good', null, []],
      [11, null, 'malformed', ['malformed ']],
      [12, 'good', null, []],
    ])
    expect(answers[1]?.brief).toBeNull()
  })

  test('without a place are refused before any is read, and so is what is not known in the query', async () => {
    const refused = await http.post('/v1/evaluations/batch').set('content-type', media).send('{}').expect(422)
    expect(refused.body).toMatchObject({ code: 'placeMissing' })
    expect((await http.post(`${path}&detial=full`).set('content-type', media).send('{}').expect(422)).body).toMatchObject({ errors: [{ code: 'unknownKey', pointer: '/detial' }] })
  })

  test('of a hold point count what it hid as covered', async () => {
    const lines = `${JSON.stringify({ opening: plain })}\n${JSON.stringify({ opening: plain, holdPoint: 'handover' })}`
    const [open, covered] = await inLines(lines)
    const reasons = (answer: BatchAnswer | undefined) => new Set(answer?.brief?.notDetermined.map(({ reason }) => reason))
    expect(reasons(open)).not.toContain('covered')
    expect(reasons(covered)).toContain('covered')
  })
})

test('a document holds up to a hundred, over both doors', async () => {
  const body = { ...place, openings: [{ key: 'a', opening: plain }, { key: 'b', opening: { opening: { ...plain.opening, width: '48' } } }] }
  const { answers } = (await http.post('/v1/evaluations/batch').send(body).expect(200)).body as { answers: readonly BatchAnswer[] }
  expect(answers).toMatchObject([{ line: 1, key: 'a', code: null }, { line: 2, key: 'b', code: 'invalidInput', problems: [{ pointer: '/opening/opening/width' }] }])
  await http.post('/v1/evaluations/batch').send({ ...place, openings: Array.from({ length: 101 }, () => ({ opening: plain })) }).expect(422)
})

describe('a batch under way', () => {
  test('goes no faster than it is read, and loses nothing', async () => {
    const { port, evaluated, app } = await service()
    const { sent, response } = begin(port)
    const line = `${JSON.stringify({ key: 'x'.repeat(150), opening: plain })}\n`
    let written = 0
    for (let taken = true; taken && written < 5_000; written += 1) taken = sent.write(line)
    const from = await response
    await settled(evaluated)
    const before = evaluated()
    expect(before, 'nobody read any answer').toBeLessThan(400)
    for (; written < 500; written += 1) sent.write(line)
    sent.end()
    const answers = answersIn(await textOf(from))
    expect(answers.map((answer) => answer.line)).toEqual(Array.from({ length: written }, (_, index) => index + 1))
    await app.close()
  }, 120_000)

  test('ends when its caller goes away', async () => {
    const { port, evaluated, app } = await service()
    const { sent, response } = begin(port)
    sent.on('error', () => undefined)
    for (let index = 0; index < 2_000; index += 1) sent.write(`${JSON.stringify({ opening: plain })}\n`)
    await response
    sent.destroy()
    await settled(evaluated)
    expect(evaluated()).toBeLessThan(2_000)
    await app.close()
  }, 60_000)

  test('is told where to go on when the service stops', async () => {
    const { port, app } = await service()
    const { sent, response } = begin(port)
    sent.on('error', () => undefined)
    for (let index = 0; index < 3; index += 1) sent.write(`${JSON.stringify({ opening: plain })}\n`)
    const from = await response
    const text = textOf(from)
    await pause(500)
    await app.close()
    const answers = answersIn(await text)
    expect(answers.map(({ line, code }) => [line, code])).toEqual([[1, null], [2, null], [3, null], [4, 'unavailable']])
  }, 30_000)

  test('waits for the quota of its caller', async () => {
    const { port, app } = await service({ units: 10, window: 2 })
    const { sent, response } = begin(port)
    const start = performance.now()
    sent.end(Array.from({ length: 5 }, () => JSON.stringify({ opening: plain })).join('\n'))
    expect(answersIn(await textOf(await response)).map(({ code }) => code)).toEqual([null, null, null, null, null])
    // Two lines to a window of two seconds, so the fifth waits for the third window, long after all were sent
    expect(performance.now() - start).toBeGreaterThan(3_500)
    await app.close()
  }, 30_000)
})

/** A service that listens and counts what it evaluates. */
async function service(quota?: { units: number; window: number }) {
  let count = 0
  const deps = await serviceOf(await dependencies())
  const app = await buildApp({ deps: { ...deps, tally: { evaluated: () => { count += 1 } }, giveWay: () => setImmediate() }, publicUrl, mostLag: 0, quota })
  await app.listen({ host: '127.0.0.1', port: 0 })
  afterAll(() => app.close())
  return { app, port: (app.server.address() as AddressInfo).port, evaluated: () => count }
}

function begin(port: number): { sent: ClientRequest; response: Promise<IncomingMessage> } {
  const sent = send({ port, host: '127.0.0.1', path, method: 'POST', headers: { 'content-type': media, 'transfer-encoding': 'chunked' } })
  sent.flushHeaders()
  return { sent, response: once(sent, 'response').then(([response]) => response as IncomingMessage) }
}

/** Until it has stood still for a while. */
async function settled(evaluated: () => number): Promise<void> {
  for (let before = -1; before !== evaluated(); ) {
    before = evaluated()
    await pause(700)
  }
}

async function textOf(from: IncomingMessage): Promise<string> {
  const parts: Buffer[] = []
  for await (const part of from) parts.push(part as Buffer)
  return Buffer.concat(parts).toString()
}
