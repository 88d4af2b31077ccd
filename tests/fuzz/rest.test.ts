import fc from 'fast-check'
import type { InjectOptions } from 'fastify'
import { describe, expect, test } from 'vitest'
import { FromSchema, type Schema } from './from-schema.ts'
import { damaged, hostile } from './hostile.ts'
import { heapInUse } from './heap.ts'
import { cases, fuzzedService, holdsUp } from './service.ts'
import { servedDocument } from '../api/served-document.ts'

interface Described {
  readonly parameters?: readonly { readonly name: string; readonly in: string; readonly schema: Schema }[]
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema?: Schema }>> }
}

const { app, ask, ids } = await fuzzedService()
const document = (await servedDocument(app)) as unknown as { readonly paths: Readonly<Record<string, Readonly<Record<string, Described>>>>; readonly components: { readonly schemas: Readonly<Record<string, Schema>> } }
const from = new FromSchema(document.components.schemas, ids)
const routes = Object.entries(document.paths).flatMap(([path, methods]) => Object.entries(methods).map(([method, described]) => ({ method: method.toUpperCase(), path, described })))

function requestFor({ method, path, described: { parameters = [], requestBody } }: (typeof routes)[number]): fc.Arbitrary<InjectOptions> {
  const [media, body] = Object.entries(requestBody?.content ?? {})[0] ?? []
  const values = (place: string) => fc.record(Object.fromEntries(parameters.filter((one) => one.in === place).map(({ name, schema }) => [name, place === 'path' ? fc.oneof(fc.constantFrom(...ids, 'w-1', 'us-xa-101'), from.value(schema)) : from.value(schema)])), place === 'query' ? { requiredKeys: [] } : {})
  const payload = body?.schema ? from.value(body.schema).map((value) => (typeof value === 'string' && media !== 'application/json' ? value : JSON.stringify(value))) : fc.constant(undefined)
  const spoiled = payload.chain((text) => (text === undefined ? fc.constant(undefined) : fc.oneof({ weight: 6, arbitrary: fc.constant(text) }, { weight: 1, arbitrary: damaged(text) })))
  return fc.tuple(values('path'), values('query'), spoiled, fc.oneof({ weight: 9, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: hostile })).map(([inPath, inQuery, sent, etag]) => ({
    method: method as 'GET',
    url: path.replace(/\{(\w+)\}/g, (_, name: string) => inAddress(textOf((inPath as Readonly<Record<string, unknown>>)[name]).slice(0, 400)) || 'x'),
    query: Object.fromEntries(Object.entries(inQuery).map(([name, value]) => [name, textOf(value)])),
    headers: { ...(sent === undefined ? {} : { 'content-type': media ?? 'application/json' }), ...(etag === undefined ? {} : { 'if-match': `"${textOf(etag).replace(/[^\x20-\x7e]/g, '').slice(0, 200)}"` }) },
    ...(sent === undefined ? {} : { payload: sent }),
  }))
}

/** Half of a surrogate pair has no form in an address; its bytes are sent all the same. */
function inAddress(text: string): string {
  return text.split(/(\p{Surrogate})/u).map((part) => (/^\p{Surrogate}$/u.test(part) ? '%ED%A0%80' : encodeURIComponent(part))).join('')
}

function textOf(value: unknown): string {
  return typeof value === 'string' ? value : JSON.stringify(value ?? null)
}

const megabyte = 1024 * 1024
/** In use after each route, in bytes. What is put on record stays in the store, which lies outside the heap. */
const heaps: number[] = []
/** Caches that are bounded fill in the meantime; what grows with every request would be far more. */
const mostGrowth = 64 * megabyte

describe('whatever is sent, the service answers and lives on', () => {
  test.each(routes.map((route) => [`${route.method} ${route.path}`, route] as const))('%s', async (_, route) => {
    const runs = Math.max(8, Math.round(cases / routes.length))
    const statuses = new Set<number>()
    await fc.assert(fc.asyncProperty(requestFor(route), async (request) => { statuses.add((await holdsUp(ask(request))).statusCode) }), { numRuns: runs })
    heaps.push(heapInUse())
    expect(statuses.size).toBeGreaterThan(0)
  }, 600_000 + cases * 100)
})

test('memory does not grow with what is refused', async () => {
  const refused = { method: 'POST' as const, url: '/v1/evaluations', payload: JSON.stringify({ edition: 'irc-2021', opening: { opening: { kind: 'hole' }, x: 'y'.repeat(50_000) } }), headers: { 'content-type': 'application/json' } }
  const used = async (times: number) => {
    for (let time = 0; time < times; time += 1) await ask(refused)
    return heapInUse()
  }
  const before = await used(100)
  expect((await used(1_000)) - before).toBeLessThan(16 * megabyte)
}, 120_000)

test('memory does not grow with how much was sent', () => {
  const [third = 0, end = 0] = [heaps[Math.floor(heaps.length / 3)], heaps.at(-1)]
  expect(heaps).toHaveLength(routes.length)
  expect(end - third, `in use after each route, in MB: ${heaps.map((heap) => Math.round(heap / megabyte)).join(' ')}`).toBeLessThan(mostGrowth)
})
