import { connect, type AddressInfo } from 'node:net'
import { describe, expect, test } from 'vitest'
import { problemDocument } from '../../src/api/problem-document.ts'
import { client } from './client.ts'

const { app, http } = await client()
await app.listen({ host: '127.0.0.1', port: 0 })
const { port } = app.server.address() as AddressInfo

/** Sends bytes as they are and answers everything that comes back until the line is closed. */
function exchange(text: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let answered = ''
    const socket = connect(port, '127.0.0.1', () => socket.write(text))
    socket.on('data', (part: Buffer) => { answered += part.toString() }).on('close', () => resolve(answered)).on('error', reject)
  })
}

function problemOf(answered: string) {
  const [head = '', body = ''] = answered.split('\r\n\r\n')
  return { head, problem: problemDocument.parse(JSON.parse(body)) }
}

// Statuses: RFC 9110, 15.5 (408, 414), and RFC 6585, 5 (431, from memory)
describe('what is too large or no HTTP at all is a problem document too', () => {
  test('an address without an end', async () => {
    const response = await http.get(`/v1/rules?topic=${'x'.repeat(8_200)}`).expect(414)
    expect(problemDocument.parse(response.body)).toMatchObject({ code: 'addressTooLong' })
  })

  test('a hundred headers and more', async () => {
    const headers = Object.fromEntries(Array.from({ length: 101 }, (_, index) => [`x-${index}`, '1']))
    expect(problemDocument.parse((await http.get('/v1/rules').set(headers).expect(431)).body)).toMatchObject({ code: 'headersTooLarge' })
    await http.get('/v1/hold-points').set(Object.fromEntries(Object.entries(headers).slice(0, 90))).expect(200)
  })

  test('headers that are too long to be read', async () => {
    const { head, problem } = problemOf(await exchange(`GET /v1/rules HTTP/1.1\r\nHost: x\r\nX-Long: ${'x'.repeat(40_000)}\r\n\r\n`))
    expect(head).toMatch(/^HTTP\/1\.1 431 .*\r\nContent-Type: application\/problem\+json; charset=utf-8\r\n/)
    expect(problem).toMatchObject({ status: 431, code: 'headersTooLarge' })
  })

  test('what is not HTTP', async () => {
    const { head, problem } = problemOf(await exchange('HELLO\r\n\r\n'))
    expect(head).toMatch(/^HTTP\/1\.1 400 Bad Request\r\n/)
    expect(problem).toMatchObject({ status: 400, code: 'malformed' })
  })
})
