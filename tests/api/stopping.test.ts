import { EventEmitter, once } from 'node:events'
import { connect, type AddressInfo } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { healthStatus } from '../../src/api/rest/health.ts'
import { problemDocument } from '../../src/api/problem-document.ts'
import { client, dependencies, publicUrl } from './client.ts'
import { serviceOf } from './service.ts'

test('while the service stops, what still comes is answered, and readiness says so', async () => {
  const app = await buildApp({ deps: await serviceOf(await dependencies()), publicUrl })
  const gate = new EventEmitter()
  await app.register(async (slow) => { slow.addHook('preClose', async () => { await once(gate, 'open') }) })
  await app.listen({ host: '127.0.0.1', port: 0 })
  const { port } = app.server.address() as AddressInfo
  expect(await ask(port, '/readyz')).toMatchObject({ status: 200, body: { status: 'ready' } })
  const closed = app.close()
  await pause(50)
  const ready = await ask(port, '/readyz')
  const other = await ask(port, '/v1/hold-points')
  gate.emit('open')
  await closed
  expect(ready.status).toBe(503)
  expect(healthStatus.parse(ready.body)).toEqual({ status: 'stopping' })
  expect(other.status).toBe(200)
  await expect(ask(port, '/readyz')).rejects.toThrow('ECONNREFUSED')
})

test('a service that cannot keep up says so, lives on, and takes its time again', async () => {
  const { http } = await busy()
  const refused = await http.get('/v1/hold-points').expect(503).expect('content-type', 'application/problem+json; charset=utf-8').expect('retry-after', '10')
  expect(problemDocument.parse(refused.body)).toMatchObject({ code: 'unavailable', detail: 'Try again after a moment.', errors: [] })
  expect(problemDocument.parse((await http.post('/graphql').send({ query: '{ holdPoints { items { id } } }' }).expect(503)).body)).toMatchObject({ code: 'unavailable' })
  await http.get('/livez').expect(200)
  await http.get('/readyz').expect(503)
  await pause(2_500)
  await http.get('/v1/hold-points').expect(200)
})

const saturated = await client({ mostLag: 1_000 })

/** Keeps the event loop from turning, again and again, as endless work would. */
async function busy() {
  for (let turn = 0; turn < 3; turn += 1) {
    const end = performance.now() + 1_300
    while (performance.now() < end);
    await pause(1)
  }
  return saturated
}

function ask(port: number, path: string): Promise<{ status: number; body: unknown }> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1')
    let text = ''
    socket.on('data', (data) => { text += data.toString() })
    socket.on('error', reject)
    socket.on('end', () => { resolve({ status: Number(text.slice(9, 12)), body: JSON.parse(text.slice(text.indexOf('\r\n\r\n'))) }) })
    socket.write(`GET ${path} HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n`)
  })
}
