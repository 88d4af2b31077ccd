import { describe, expect, test } from 'vitest'
import { metricsPage } from '../../src/api/metrics-page.ts'
import { createMetrics } from '../../src/api/metrics.ts'
import { verdict } from '../../src/evaluation/document.ts'
import { countedRecords } from '../../src/store/counted-records.ts'
import { openRecords } from '../../src/store/open-records.ts'
import { draft, entry, project } from '../store/samples.ts'
import { client } from './client.ts'
import { servedDocument } from './served-document.ts'

interface Sample {
  readonly name: string
  readonly labels: Readonly<Record<string, string>>
  readonly value: number
}

const metrics = createMetrics()
const { app, http, graphql } = await client({ metrics })
metrics.watch(app.deps.active)
const page = metricsPage(metrics)
const id = '0199a000-0000-7000-8000-00000000abcd'
const opening = { opening: { kind: 'window', width: '4 ft', height: '4 ft' } }

describe('what is counted', () => {
  test('requests, by route template, method and class of status, in the buckets of the OpenTelemetry semantic conventions', async () => {
    await http.get('/v1/rules/weep.spacing').expect(200)
    await http.get(`/v1/rules/${id}`).expect(404)
    const mine = (await samples()).filter(({ name, labels }) => name === 'http_server_request_duration_seconds_bucket' && labels['http_route'] === '/v1/rules/:rule' && labels['http_response_status_class'] === '4xx')
    // https://opentelemetry.io/docs/specs/semconv/http/http-metrics/#metric-httpserverrequestduration
    expect(mine.map(({ labels }) => labels['le'])).toEqual(['0.005', '0.01', '0.025', '0.05', '0.075', '0.1', '0.25', '0.5', '0.75', '1', '2.5', '5', '7.5', '10', '+Inf'])
    expect(mine.at(-1)).toMatchObject({ labels: { http_request_method: 'GET' }, value: 1 })
  })

  test('evaluations by verdict, through both doors', async () => {
    const answered = [
      (await http.post('/v1/evaluations').send({ edition: 'irc-2021', opening }).expect(200)).body as { summary: { verdict: string } },
      ((await graphql('query($o: OpeningInput!) { evaluation(edition: "irc-2021", opening: $o) { summary { verdict } } }', { o: opening }).expect(200)).body as { data: { evaluation: { summary: { verdict: string } } } }).data.evaluation,
    ].map(({ summary }) => summary.verdict)
    const counted = await samples('wythe_evaluations_total')
    expect(counted).toEqual([{ name: 'wythe_evaluations_total', labels: { verdict: answered[0] }, value: 2 }])
    expect(verdict.options).toContain(answered[1])
    await http.post('/v1/evaluations').send({ edition: 'irc-2021', opening: {} }).expect(422)
    expect(await samples('wythe_evaluations_total')).toEqual(counted)
  })

  test('entries that are new on record, by kind, and none that were there', async () => {
    const { records } = app.deps
    await records.createProject(project('p'))
    const received = { receivedAt: '2026-03-02T09:00:00.000Z', receivedBy: 't', posting: 'one' }
    for (let times = 0; times < 2; times += 1) await records.appendEntries('p', [entry('a'), entry('b', { kind: 'waiver' }), entry('c')], received, new Map())
    expect(await samples('wythe_entries_recorded_total')).toEqual([
      { name: 'wythe_entries_recorded_total', labels: { kind: 'observation' }, value: 2 },
      { name: 'wythe_entries_recorded_total', labels: { kind: 'waiver' }, value: 1 },
    ])
  })

  test('what the store fails to do, and not what it refuses', async () => {
    const failed: string[] = []
    const records = countedRecords(await openRecords({ dataDir: ':memory:' }), { recorded: () => undefined, failed: (call) => failed.push(call) })
    expect(await records.changeDraft('none', 'sha256:', draft('none'))).toEqual({ ok: false, reason: 'absent' })
    expect(failed).toEqual([])
    await records.createDraft(draft('twice'))
    await expect(records.createDraft(draft('twice'))).rejects.toThrow('UNIQUE')
    expect(failed).toEqual(['createDraft'])
    await records.close()
  })

  test('the adoptions that this replica has taken in, and the process', async () => {
    expect(await samples('wythe_adoptions_taken_in')).toEqual([{ name: 'wythe_adoptions_taken_in', labels: {}, value: 0 }])
    expect((await samples('process_resident_memory_bytes'))[0]?.value).toBeGreaterThan(1_000_000)
  })
})

describe('labels', () => {
  test('have closed lists of values, whatever is asked', async () => {
    const before = await seriesCount()
    const odd = (round: number) => [`/v1/projects/${id}-${round}`, `/v1/rules/r${round}`, `/nowhere/${round}`, `/v1/facts?x=${round}`, `/explorer/${round}`, `/v1/hold-points/%2e%2e/${round}`, `/problems/p${round}`]
    for (const path of odd(0)) await http.get(path)
    await http.options('/v1/rules/x')
    await app.inject({ method: 'PROPFIND' as never, url: '/v1/rules' })
    const once = await seriesCount()
    for (let round = 1; round < 20; round += 1) for (const path of odd(round)) await http.get(path)
    expect(once).toBeGreaterThan(before)
    expect(await seriesCount()).toBe(once)
    const values = (await samples()).filter(({ name }) => /^(http|wythe)_/.test(name)).flatMap(({ labels }) => Object.values(labels))
    expect(values.filter((value) => /[0-9a-f]{8}-|nowhere|r1\b/.test(value))).toEqual([])
    const routes = new Set((await samples()).flatMap(({ labels }) => labels['http_route'] ?? []))
    expect(routes).toContain('none')
    expect([...routes].filter((route) => route !== 'none' && !app.hasRoute({ method: 'GET', url: route }) && !app.hasRoute({ method: 'POST', url: route }))).toEqual([])
  })
})

test('the page is no part of the service, and not in its contract', async () => {
  await http.get('/metrics').expect(404)
  expect(Object.keys((await servedDocument(app)).paths ?? {}).filter((path) => path.includes('metrics'))).toEqual([])
  const answered = await page.inject('/metrics')
  expect(answered.headers['content-type']).toBe('text/plain; version=0.0.4; charset=utf-8')
})

async function seriesCount(): Promise<number> {
  return (await samples()).filter(({ name }) => /^(http|wythe)_/.test(name)).length
}

/** The text format: https://prometheus.io/docs/instrumenting/exposition_formats/ */
async function samples(only?: string): Promise<readonly Sample[]> {
  const { body } = await page.inject('/metrics')
  const lines = body.split('\n').filter((line) => line !== '' && !line.startsWith('#'))
  const all = lines.map((line): Sample => {
    const [, name = '', labels = '', value = ''] = /^(\w+)(?:\{(.*)\})? (\S+)$/.exec(line) ?? []
    if (name === '') throw new Error(`no sample: ${line}`)
    return { name, labels: Object.fromEntries([...labels.matchAll(/(\w+)="([^"]*)"/g)].map(([, label = '', held = '']) => [label, held])), value: Number(value) }
  })
  return only === undefined ? all : all.filter(({ name }) => name === only)
}
