import { createServer, request, type Server } from 'node:http'
import { type AddressInfo } from 'node:net'
import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { parse } from 'yaml'
import { embedmentOrdinance } from './api/jurisdiction.ts'
import { served, type Served } from './api/served.ts'
import { runCompiled } from './cli/run-compiled.ts'
import { startPostgres, type PostgresServer } from './store/postgres-server.ts'

interface Told {
  readonly status: number
  readonly etag: string
  readonly body: Readonly<Record<string, unknown>>
}

/** What docker/compose.replicas.yaml starts, as plain processes: a database, two replicas, and a proxy that takes turns. */
let database: PostgresServer
let replicas: readonly Served[] = []
let proxy: Server
let address = ''
let token = ''

beforeAll(async () => {
  database = await startPostgres()
  const environment = { DATABASE_URL: await database.freshDatabase() }
  replicas = await Promise.all([served(environment), served(environment)])
  const made = await runCompiled('cli/wythe.js', ['create-token', 'all', '--record', '--amend', 'us-xa-101'], environment)
  token = made.stdout.trim()
  proxy = takingTurns(replicas.map(({ port }) => port))
  await new Promise<void>((resolve) => { proxy.listen(0, '127.0.0.1', resolve) })
  address = `http://127.0.0.1:${(proxy.address() as AddressInfo).port}`
}, 120_000)
afterAll(async () => {
  proxy.closeAllConnections()
  proxy.close()
  await Promise.all(replicas.map(({ stop }) => stop()))
  await database.end()
})

test('what is posted through one replica is read through the other', async () => {
  const [first = '', second = ''] = replicas.map((one) => one.address)
  const id = await project(first)
  const entry = width()
  expect(await ask(first, `/v1/projects/${id}/entries`, { entries: [entry] })).toMatchObject({ status: 200, body: { results: [{ outcome: 'recorded' }] } })
  expect(await ask(second, `/v1/projects/${id}/journal`)).toMatchObject({ status: 200, body: { holds: true, items: [{ id: entry.id }] } })
  expect(await ask(second, `/v1/projects/${id}/entries`, { entries: [entry] })).toMatchObject({ body: { results: [{ outcome: 'alreadyRecorded' }] } })
})

test('an adoption through the proxy reaches both', async () => {
  const drafted = await ask(address, '/v1/amendment-drafts', parse(embedmentOrdinance('us-xa-101')))
  expect(drafted.status).toBe(201)
  const adopted = await ask(address, `/v1/amendment-drafts/${String(drafted.body['id'])}/adopt`, {}, { 'if-match': drafted.etag })
  expect(adopted).toMatchObject({ status: 201, body: { amendment: 'us-xa-101/ord-2026-01' } })
  for (const one of replicas) await expect.poll(async () => JSON.stringify((await ask(one.address, '/v1/amendments')).body), { timeout: 2_000 }).toContain('us-xa-101/ord-2026-01')
})

test('killing one while both take postings loses nothing that was answered, and the other goes on', async () => {
  const id = await project(address)
  const answered: string[] = []
  const unanswered: string[] = []
  const post = async () => {
    const entry = width()
    const send = () => ask(address, `/v1/projects/${id}/entries`, { entries: [entry] })
    const told = await send()
    if (told.status === 200) return answered.push(entry.id)
    // Broken off, or so many at one opening that it is to be sent again
    expect([502, 409]).toContain(told.status)
    unanswered.push(entry.id)
    await expect.poll(async () => (await send()).body, { timeout: 10_000 }).toMatchObject({ results: [{ outcome: expect.stringMatching(/^(recorded|alreadyRecorded)$/) as string }] })
    return unanswered.length
  }
  const senders = Array.from({ length: 6 }, async () => { for (let round = 0; round < 12; round += 1) await post() })
  while (answered.length < 12) await new Promise((resolve) => { setTimeout(resolve, 10) })
  await replicas[0]?.stop('SIGKILL')
  const before = answered.length
  await Promise.all(senders)
  const journal = await ask(replicas[1]?.address ?? '', `/v1/projects/${id}/journal?first=1000`)
  const items = journal.body['items'] as readonly { readonly id: string; readonly sequence: number }[]
  expect(journal.body['holds']).toBe(true)
  expect(items.map(({ sequence }) => sequence)).toEqual(items.map((_, index) => index + 1))
  expect(items.map((one) => one.id).toSorted()).toEqual([...answered, ...unanswered].toSorted())
  expect(items).toHaveLength(72)
  expect(answered.length).toBeGreaterThan(before)
  process.stdout.write(`${before} postings answered before one replica was killed, ${answered.length - before} after; ${unanswered.length} sent again\n`)
}, 60_000)

async function project(at: string): Promise<string> {
  const id = randomUUID()
  expect(await ask(at, '/v1/projects', { id, title: 'House', jurisdiction: 'us-xa-101', asOf: '2026-03-01' })).toMatchObject({ status: 201 })
  return id
}

function width() {
  return { id: randomUUID(), opening: 'w-1', at: '2026-03-02T09:00:00Z', by: 'crew-1', observation: { fact: 'opening.width', value: '4 ft', method: 'examine', holdPoint: 'lintelSet' } }
}

async function ask(at: string, path: string, body?: unknown, headers: Readonly<Record<string, string>> = {}): Promise<Told> {
  const sent = body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) }
  const response = await fetch(`${at}${path}`, { ...sent, headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json', ...headers } })
  return { status: response.status, etag: response.headers.get('etag') ?? '', body: (await response.json()) as Told['body'] }
}

/** Each request goes to the next port. One where nobody listens is passed over, and one that breaks off is a 502. */
function takingTurns(ports: readonly number[]): Server {
  let turn = 0
  return createServer((incoming, outgoing) => {
    const parts: Buffer[] = []
    incoming.on('data', (part: Buffer) => parts.push(part)).on('end', () => { forward(ports.length) })
    const forward = (tries: number): void => {
      const { method, url, headers } = incoming
      const onward = request({ host: '127.0.0.1', port: ports[turn++ % ports.length], method, path: url, headers, agent: false }, (answer) => {
        outgoing.writeHead(answer.statusCode ?? 502, answer.headers)
        answer.on('error', () => outgoing.destroy()).pipe(outgoing)
      })
      onward.on('error', (error: NodeJS.ErrnoException) => {
        if (error.code === 'ECONNREFUSED' && tries > 1) forward(tries - 1)
        else outgoing.writeHead(502, { 'content-type': 'application/json' }).end('{}')
      })
      onward.end(Buffer.concat(parts))
    }
  })
}
