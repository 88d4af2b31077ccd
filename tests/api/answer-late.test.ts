import { request } from 'node:http'
import type { AddressInfo } from 'node:net'
import Fastify from 'fastify'
import { afterAll, expect, test } from 'vitest'
import { answerLate } from '../../src/api/answer-late.ts'
import { late } from '../../src/api/late.ts'
import { client } from './client.ts'

const { app: service } = await client()
await service.listen({ host: '127.0.0.1', port: 0 })
afterAll(() => service.close())

test('what answers is built once, with the first who asks', async () => {
  const app = Fastify()
  let built = 0
  answerLate(app, ['/late/*'], async () => {
    built += 1
    const other = Fastify()
    other.get('/late/a', ({ url }) => url)
    await other.ready()
    return other
  })
  await app.ready()
  expect(built).toBe(0)
  const bodies = await Promise.all([1, 2, 3].map(async () => (await app.inject('/late/a')).body))
  expect([built, ...bodies]).toEqual([1, '/late/a', '/late/a', '/late/a'])
})

test('what could not be built is built for whoever asks next', async () => {
  let tries = 0
  const build = late(async () => {
    tries += 1
    if (tries === 1) throw new Error('not yet')
    return tries
  })
  await expect(Promise.all([build(), build()])).rejects.toThrow('not yet')
  expect(await Promise.all([build(), build(), build()])).toEqual([2, 2, 2])
})

test.each(['/reference/static/../../v1/rules', '/reference/static/%2e%2e/%2e%2e/v1/rules', '/reference/static/..%2f..%2fv1/rules', '/page/%2e%2e/server.js'])('%s does not lead out of the pages', async (path) => {
  const { status, body } = await asWritten(path)
  expect([400, 404]).toContain(status)
  expect(JSON.parse(body)).toMatchObject({ status })
})

/** Other clients would tidy the address before they send it. */
function asWritten(path: string): Promise<{ readonly status: number; readonly body: string }> {
  const { port } = service.server.address() as AddressInfo
  return new Promise((resolve, reject) => {
    request({ port, path, agent: false }, (response) => {
      const parts: Buffer[] = []
      response.on('data', (part: Buffer) => parts.push(part)).on('end', () => { resolve({ status: response.statusCode ?? 0, body: Buffer.concat(parts).toString() }) })
    }).on('error', reject).end()
  })
}
