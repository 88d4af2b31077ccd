import { once } from 'node:events'
import { connect, type AddressInfo } from 'node:net'
import Fastify from 'fastify'
import { expect, test } from 'vitest'
import { handleBrokenRequest } from '../../src/api/faults.ts'
import { awaitRequests } from '../../src/api/patience.ts'
import { problemDocument } from '../../src/api/problem-document.ts'

const app = Fastify({ requestTimeout: 0 })
const end = handleBrokenRequest('https://wythe.example', () => 'id-1')
awaitRequests(app, 300, (socket) => end(Object.assign(new Error('too slow'), { code: 'ERR_HTTP_REQUEST_TIMEOUT' }), socket))
app.addContentTypeParser('application/x-ndjson', (_, body, done) => done(null, body))
app.post('/whole', async () => 'whole')
app.post('/lines', { config: { inLines: true } }, async (request) => {
  let size = 0
  for await (const part of request.body as AsyncIterable<Buffer>) size += part.length
  return String(size)
})
await app.listen({ host: '127.0.0.1', port: 0 })
const { port } = app.server.address() as AddressInfo

/** Sends the head of a request and then so many bytes, one every hundred milliseconds. */
async function slowly(path: string, type: string, bytes: number): Promise<string> {
  const socket = connect(port, '127.0.0.1')
  let answered = ''
  socket.on('data', (part: Buffer) => { answered += part.toString() }).on('error', () => undefined)
  socket.write(`POST ${path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\nContent-Type: ${type}\r\nContent-Length: 8\r\n\r\n`)
  let sent = 0
  const timer = setInterval(() => { if (sent++ < bytes) socket.write('1') }, 100)
  await once(socket, 'close')
  clearInterval(timer)
  return answered
}

// RFC 9110, 15.5.9: 408 to a request that did not arrive within the time the server was prepared to wait
test('a request that does not arrive in time is told so', async () => {
  const [head = '', body = ''] = (await slowly('/whole', 'application/json', 8)).split('\r\n\r\n')
  expect(head).toMatch(/^HTTP\/1\.1 408 /)
  expect(problemDocument.parse(JSON.parse(body))).toMatchObject({ code: 'tooSlow' })
})

test('one that comes in lines may last as long as it moves, and ends when it stands still', async () => {
  expect(await slowly('/lines', 'application/x-ndjson', 8)).toMatch(/^HTTP\/1\.1 200 [^]*\r\n\r\n8$/)
  expect(await slowly('/lines', 'application/x-ndjson', 3)).toBe('')
  await app.close()
})
