import { mkdtempSync, rmSync } from 'node:fs'
import { Agent, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as later } from 'node:timers/promises'
import { afterAll, expect, test } from 'vitest'
import { openRecords } from '../../src/store/open-records.ts'
import { ended, runCompiled, startCompiled } from '../cli/run-compiled.ts'
import { journalOf } from '../store/crash/journal-account.ts'
import { project } from '../store/samples.ts'
import { freePort } from './free-port.ts'

interface Sent {
  readonly id: string
  readonly became: 'answered' | 'refused' | 'cut'
  readonly status?: number
  readonly outcome?: string
  readonly at: number
  readonly why?: string
}

const dataDir = mkdtempSync(join(tmpdir(), 'wythe-drain-'))
afterAll(() => rmSync(dataDir, { recursive: true, force: true }))
const senders = 12
/** As many look at readiness, as whoever spreads requests over replicas does. */
const heeding = 6
const drainSeconds = 1

test('a service that is told to end under load first says so, answers whatever it took, and ends well', async () => {
  const records = await openRecords({ dataDir })
  await records.createProject(project('p', { jurisdiction: null, edition: 'irc-2021' }))
  await records.close()
  const made = await runCompiled('cli/wythe.js', ['create-token', 'load', '--record'], { DATA_DIR: dataDir })
  const [port, metricsPort] = [await freePort(), await freePort()]
  const child = startCompiled('bundle/server.js', [], { PORT: String(port), METRICS_PORT: String(metricsPort), DRAIN_SECONDS: String(drainSeconds), DATA_DIR: dataDir, LOG_LEVEL: 'info' })
  const end = ended(child)
  await expect.poll(() => readiness(port), { timeout: 20_000 }).toBe(200)
  const balancer = { ready: true }
  const load = Array.from({ length: senders }, (_, sender) => sendOn(port, made.stdout.trim(), sender, sender < heeding ? balancer : { ready: true }))
  await later(700)
  const metrics = await (await fetch(`http://127.0.0.1:${metricsPort}/metrics`)).text()
  const told = performance.now()
  child.kill('SIGTERM')
  const notReady = watchReadiness(port, balancer)
  const perSender = await Promise.all(load)
  const sent = perSender.flat()
  const { code, stdout, stderr } = await end
  const endedAfter = performance.now() - told

  expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
  expect(endedAfter).toBeLessThan(drainSeconds * 1_000 + 10_000)
  expect(metrics).toMatch(/^wythe_entries_recorded_total\{kind="observation"\} [1-9]/m)
  const saidSo = await notReady
  const refusedFirst = Math.min(...sent.filter(({ became }) => became !== 'answered').map(({ at }) => at))
  expect(saidSo.status).toBe(503)
  expect(saidSo.at).toBeLessThan(refusedFirst)

  const answered = sent.filter(({ became }) => became === 'answered')
  expect(answered.filter(({ status, outcome }) => status !== 200 || outcome !== 'recorded')).toEqual([])
  expect(answered.filter(({ at }) => at > told).length).toBeGreaterThan(senders)
  const again = await openRecords({ dataDir })
  const onRecord = (await journalOf(again)).map(({ id }) => id)
  await again.close()
  expect(onRecord.toSorted()).toEqual(answered.map(({ id }) => id).toSorted())
  expect(perSender.slice(0, heeding).flat().filter(({ became }) => became !== 'answered')).toEqual([])
  const read = stdout.split('\n').filter((line) => line.includes('"incoming request"') && line.includes('"POST"'))
  expect(read).toHaveLength(answered.length)
  const cut = sent.filter(({ became }) => became === 'cut')
  process.stdout.write(`${answered.length} postings answered, ${answered.filter(({ at }) => at > told).length} of them after SIGTERM; ${cut.length} of those who did not look reset before anything was read\n`)
  expect(cut.filter(({ id, at }) => onRecord.includes(id) || at < saidSo.at)).toEqual([])
}, 60_000)

/** One posting after the other on a connection that is kept, until the service is gone or said to be not ready. */
async function sendOn(port: number, token: string, sender: number, balancer: { readonly ready: boolean }): Promise<readonly Sent[]> {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 })
  const sent: Sent[] = []
  for (let round = 0; balancer.ready && sent.at(-1)?.became !== 'refused'; round += 1) {
    sent.push(await post(port, agent, token, `0199a000-0000-7000-8000-${String(sender * 1_000_000 + round).padStart(12, '0')}`))
    if (sent.filter(({ became }) => became === 'cut').length > 20) throw new Error('the service neither answers nor ends')
  }
  agent.destroy()
  return sent
}

function post(port: number, agent: Agent, token: string, id: string): Promise<Sent> {
  const body = JSON.stringify({ entries: [{ id, opening: `w-${id.slice(-8)}`, at: '2026-03-02T09:00:00Z', by: 'load', observation: { fact: 'opening.width', value: '4 ft', method: 'examine', holdPoint: 'lintelSet' } }] })
  const headers = { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body), authorization: `Bearer ${token}` }
  return new Promise((resolve) => {
    const lost = (error: NodeJS.ErrnoException) => resolve({ id, became: error.code === 'ECONNREFUSED' ? 'refused' : 'cut', at: performance.now(), why: error.code ?? error.message })
    const sending = request({ host: '127.0.0.1', port, path: '/v1/projects/p/entries', method: 'POST', agent, headers }, (response) => {
      let text = ''
      response.setEncoding('utf8').on('data', (part: string) => { text += part })
      response.on('error', lost)
      response.on('end', () => {
        const answer = JSON.parse(text) as { results?: readonly { outcome: string }[] }
        resolve({ id, became: 'answered', status: response.statusCode ?? 0, outcome: answer.results?.[0]?.outcome ?? text, at: performance.now() })
      })
    })
    sending.on('error', lost).end(body)
  })
}

async function readiness(port: number): Promise<number> {
  return fetch(`http://127.0.0.1:${port}/readyz`).then(({ status }) => status, () => 0)
}

/** What readiness answers first that is not 200, and when. */
async function watchReadiness(port: number, balancer: { ready: boolean }): Promise<{ readonly status: number; readonly at: number }> {
  for (;;) {
    const status = await readiness(port)
    balancer.ready = status === 200
    if (!balancer.ready) return { status, at: performance.now() }
    await later(10)
  }
}
