import type { AddressInfo } from 'node:net'
import { afterAll, describe, expect, test, vi } from 'vitest'
import { startTracing } from '../../src/api/tracing.ts'
import { buildApp } from '../../src/app.ts'
import { digestOfText } from '../../src/catalog/digest.ts'
import { delivererOf } from '../../src/service.ts'
import { startReceiver } from '../webhooks/receiver.ts'
import { takenIn } from '../webhooks/told.ts'
import { clock, dependencies, publicUrl } from './client.ts'
import { LogLines } from './log-lines.ts'
import { attributesOf, startCollector, type CollectedSpan } from './collector.ts'
import { serviceOf } from './service.ts'

// Names of spans and attributes: OpenTelemetry, Semantic conventions for HTTP spans; what is collected: OTLP over HTTP in JSON
const collector = await startCollector()
vi.stubEnv('OTEL_EXPORTER_OTLP_ENDPOINT', collector.endpoint)
vi.stubEnv('OTEL_BSP_SCHEDULE_DELAY', '20')
const faults: object[] = []
const log = { warn: (detail: object) => { faults.push(detail) }, error: (detail: object) => { faults.push(detail) } }
const plain = await serviceOf(await dependencies())
const tracing = startTracing(plain.active, log)
const deps = { ...plain, webhooks: { ...plain.webhooks, targets: 'publicAndLoopback' as const }, records: tracing.following(plain.records), follow: tracing.follow, tally: tracing.tally }
const lines = new LogLines()
const app = await buildApp({ deps, publicUrl, mostLag: 0, watchers: [tracing.watch], logger: { level: 'info', stream: lines.stream } })
await app.listen({ host: '127.0.0.1', port: 0 })
const address = `http://127.0.0.1:${(app.server.address() as AddressInfo).port}`
const deliveries = delivererOf({ ...deps, now: () => new Date() }, log, tracing.sending)
const secret = 'wythe_of-nobody'
await plain.records.createToken({ id: 'token', title: 'Somebody by Name', secretHash: digestOfText(secret), scopes: [{ kind: 'record' }, { kind: 'administer' }], createdAt: clock, expiresAt: null, revokedAt: null })
afterAll(async () => {
  await app.close()
  await tracing.stop()
  await plain.records.close()
  await collector.close()
})

// The example of https://www.w3.org/TR/trace-context/#traceparent-header, with a trace of each test's own
const parent = '00f067aa0ba902b7'
let traces = 0
const newTrace = () => `4bf92f3577b34da6a3ce929d0e0e${String(++traces).padStart(4, '0')}`

async function ask(path: string, body?: object, trace = newTrace(), flags = '01') {
  const headers = { traceparent: `00-${trace}-${parent}-${flags}`, authorization: `Bearer ${secret}`, 'content-type': 'application/json' }
  const response = await fetch(`${address}${path}`, body === undefined ? { headers } : { method: 'POST', headers, body: JSON.stringify(body) })
  return { status: response.status, body: (await response.json()) as Readonly<Record<string, unknown>>, trace }
}

/** The spans of a trace, once those are there that end last. */
async function spansOf(trace: string, ...last: readonly string[]): Promise<readonly CollectedSpan[]> {
  const own = () => collector.spans().filter(({ traceId }) => traceId === trace)
  await expect.poll(() => own().map(({ name }) => name), { timeout: 10_000 }).toEqual(expect.arrayContaining([...last]))
  return own()
}

const opening = { reference: 'North Wing 7', opening: { kind: 'window', width: '4 ft', height: '4 ft' } }

describe('a request', () => {
  test('whose caller names no trace begins one, which its log lines name too', async () => {
    lines.clear()
    await fetch(`${address}/v1/rules/none`)
    const [trace, ...others] = new Set(lines.lines.map(({ trace_id: id }) => String(id)))
    expect(others).toEqual([])
    const spans = await spansOf(trace ?? '', 'GET /v1/rules/:rule')
    expect(spans.find(({ name }) => name === 'GET /v1/rules/:rule')?.parentSpanId ?? '').toBe('')
    expect(spans.some(({ name }) => name === 'operation readRule')).toBe(true)
  })

  test('is a span under the trace of its caller, with its operation and what that asks of the store beneath', async () => {
    const { status, trace } = await ask('/v1/evaluations', { jurisdiction: 'us-xa-101', asOf: '2026-03-01', opening, keep: true })
    expect(status).toBe(200)
    const spans = await spansOf(trace, 'POST /v1/evaluations')
    const named = (name: string) => spans.find((span) => span.name === name)
    const [server, operation, store] = [named('POST /v1/evaluations'), named('operation evaluateOpening'), named('store keepEvaluation')]
    expect([server?.kind, operation?.kind, store?.kind]).toEqual([2, 1, 3])
    expect([server?.parentSpanId, operation?.parentSpanId, store?.parentSpanId]).toEqual([parent, server?.spanId, operation?.spanId])
    // https://opentelemetry.io/docs/specs/semconv/http/http-spans/#http-server
    expect(server && attributesOf(server)).toEqual({ 'http.request.method': 'POST', 'http.route': '/v1/evaluations', 'url.scheme': 'http', 'network.protocol.version': '1.1', 'http.response.status_code': 200 })
    expect(operation && attributesOf(operation)).toMatchObject({ 'wythe.operation': 'evaluateOpening', 'wythe.answer': 'ok', 'wythe.jurisdiction': 'us-xa-101', 'wythe.verdict': 'incomplete', 'wythe.catalog.release': deps.active.state.catalog.release })
    expect(new Set(collector.services())).toEqual(new Set(['wythe']))
  })

  test('has the template of its route in its name and nothing of what stands in its place; a refusal is no error', async () => {
    const { trace } = await ask('/v1/rules/nobody-knows')
    const [server] = (await spansOf(trace, 'GET /v1/rules/:rule')).filter(({ kind }) => kind === 2)
    expect([server?.name, server?.status.code ?? 0]).toEqual(['GET /v1/rules/:rule', 0])
    const nowhere = await ask('/v1/a/place/of/nobody')
    expect((await spansOf(nowhere.trace, 'GET')).map(({ name }) => name)).toEqual(['GET'])
  })

  test('over GraphQL has its operations beneath, and not the name that the query gives itself', async () => {
    const { trace } = await ask('/graphql', { query: 'query MyOwnName { rules(first: 1) { pageInfo { endCursor } } project(project: "none") { project } }' })
    const spans = await spansOf(trace, 'POST /graphql')
    expect(spans.map(({ name }) => name).toSorted()).toEqual(['POST /graphql', 'operation listRules', 'operation readProject', 'store findToken', 'store readProject'])
  })

  test('begins a trace of its own without a caller\'s, and is passed over where the caller does not sample; probes are none', async () => {
    const before = collector.spans().length
    await fetch(`${address}/readyz`)
    const unsampled = await ask('/v1/rules/nobody-knows', undefined, newTrace(), '00')
    await fetch(`${address}/v1/hold-points`, { headers: { traceparent: 'nonsense' } })
    await expect.poll(() => collector.spans().slice(before).map(({ name }) => name)).toContain('GET /v1/hold-points')
    const since = collector.spans().slice(before)
    expect(since.filter(({ name, traceId }) => name.includes('readyz') || traceId === unsampled.trace)).toEqual([])
    expect(since.find(({ name }) => name === 'GET /v1/hold-points')?.parentSpanId ?? '').toBe('')
  })
})

test('a delivery is under the trace of what it tells of, and hands it on', async () => {
  const receiver = await startReceiver()
  const made = await ask('/v1/webhooks', { target: receiver.address, eventTypes: ['projectCreated'] })
  const { trace, status } = await ask('/v1/projects', { id: '0199a000-0000-7000-8000-00000000beef', title: '12 Quarry Walk', jurisdiction: 'us-xa-101', asOf: '2026-03-01' })
  expect(status).toBe(201)
  await deliveries.deliverDue()
  const [arrived] = receiver.arrived
  if (!arrived) throw new Error('nothing arrived')
  takenIn(arrived, String(made.body['secret']))
  const spans = await spansOf(trace, 'POST /v1/projects', 'POST webhook')
  const [server, delivery] = ['POST /v1/projects', 'POST webhook'].map((name) => spans.find((span) => span.name === name))
  expect(delivery).toMatchObject({ kind: 3, parentSpanId: server?.spanId })
  expect(delivery && attributesOf(delivery)).toEqual({ 'http.request.method': 'POST', 'wythe.event': 'wythe.projectCreated', 'http.response.status_code': 204 })
  expect(arrived.headers['traceparent']).toBe(`00-${trace}-${delivery?.spanId ?? ''}-01`)
  await receiver.close()
})

test('nothing that was sent, and nobody who sent it, is in any span', () => {
  const told = JSON.stringify(collector.spans())
  expect(collector.spans().length).toBeGreaterThan(10)
  for (const own of ['North Wing', 'Quarry', 'beef', 'nobody', 'Somebody', 'MyOwnName', secret, 'token', '127.0.0.1', '/hook']) expect(told).not.toContain(own)
  expect(collector.spans().flatMap(({ events }) => events)).toEqual([])
  expect(faults).toEqual([])
})
