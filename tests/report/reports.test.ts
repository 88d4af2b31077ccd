import { describe, expect, test } from 'vitest'
import { jurisdictionService } from '../api/jurisdiction.ts'
import { complaintsAbout } from './reported.ts'

const { http, tokenFor } = await jurisdictionService()
const token = await tokenFor({ kind: 'record' })
const bearer = `Bearer ${token}`
const id = (last: number) => `0199e000-0000-7000-8000-${String(last).padStart(12, '0')}`
const project = id(1)
const opening = { reference: 'W-104', lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: ['6', '3 1/2'] } } }
const request = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01', opening }
const html = 'text/html; charset=utf-8'

const graphql = async (query: string, variables: object) => ((await http.post('/graphql').set('authorization', bearer).send({ query, variables })).body as { data: Record<string, string> }).data
/** Every report is made at another moment under another id. */
const lasting = (page: string | undefined) => page?.replaceAll(/id-\d{6}/g, 'id')

describe('a report on one opening', () => {
  test('is HTML under a policy that lets nothing run', async () => {
    const { headers, text } = await http.post('/v1/reports').send(request).expect(200).expect('content-type', html)
    expect(headers['content-security-policy']).toMatch(/^default-src 'none'; style-src 'sha256-[\w+/=]+'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'$/)
    expect(headers['cache-control']).toBe('no-store')
    expect(text).toContain('<bdi>W-104</bdi>')
    expect(await complaintsAbout(text)).toEqual([])
  })

  test('is the same over GraphQL', async () => {
    const { text } = await http.post('/v1/reports').send(request)
    const data = await graphql('query R($opening: OpeningInput!, $jurisdiction: String, $asOf: String) { report(opening: $opening, jurisdiction: $jurisdiction, asOf: $asOf) }', request)
    expect(lasting(data['report'])).toBe(lasting(text))
  })

  test('refuses what an evaluation refuses, in the same words', async () => {
    const wrong = { ...request, holdPoint: 'nowhere', opening: { opening: { kind: 'window', width: 'wide', height: 60 } } }
    const [report, evaluation] = [await http.post('/v1/reports').send(wrong).expect(422), await http.post('/v1/evaluations').send(wrong).expect(422)]
    const { errors } = report.body as { errors: readonly object[] }
    expect(errors).toHaveLength(3)
    expect(errors).toEqual((evaluation.body as { errors: unknown }).errors)
  })

  test('by a release that is not here is refused', () => http.post('/v1/reports').send({ ...request, release: '1999.1.0' }).expect(409).then(() => undefined))
})

describe('a report on a kept evaluation', () => {
  test('tells what was kept, and where it is read again', async () => {
    const kept = (await http.post('/v1/evaluations').set('authorization', bearer).send({ ...request, keep: true }).expect(200)).body as { id: string; digest: string }
    const { text } = await http.get(`/v1/evaluations/${kept.id}/report`).set('authorization', bearer).expect(200).expect('content-type', html)
    expect(text).toContain(kept.digest)
    expect(text).toContain(`href="https://wythe.example/v1/evaluations/${kept.id}"`)
    expect(text).toContain('data-kind="elevation"')
    expect((await graphql('query R($evaluation: String!) { evaluationReport(evaluation: $evaluation) }', { evaluation: kept.id }))['evaluationReport']).toBe(text)
  })

  test('is for those who may read it', () => http.get(`/v1/evaluations/${id(9)}/report`).expect(401).then(() => undefined))
})

describe('a report on a building', async () => {
  const said = { at: '2026-03-02T09:00:00Z', by: '<i>crew</i>' }
  await http.post('/v1/projects').set('authorization', bearer).send({ id: project, title: 'House <b>&</b> barn', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }).expect(201)
  await http.post(`/v1/projects/${project}/entries`).set('authorization', bearer).send({
    entries: [
      { id: id(2), opening: 'W-104', ...said, design: { description: opening } },
      { id: id(3), opening: 'W-105', ...said, design: { description: { ...opening, reference: 'W-105', head: { support: { kind: 'looseSteelAngle', bearing: '8' } } } } },
      { id: id(4), opening: 'W-104', ...said, observation: { fact: 'head.support.bearing', member: 'right', value: '3 in', method: 'examine', holdPoint: 'lintelSet' } },
      { id: id(5), opening: 'X', ...said, observation: { fact: 'sill.slope', value: '10 deg', method: 'test', holdPoint: 'jambRise' } },
    ],
  }).expect(200)
  const { text } = await http.get(`/v1/projects/${project}/report`).set('authorization', bearer).expect(200).expect('content-type', html)
  const part = (from: string, to = '</main>') => text.slice(text.indexOf(`id="${from}"`), text.indexOf(to, text.indexOf(`id="${from}"`)))

  test('counts every opening, and the one that cannot be evaluated by itself', () => {
    expect(part('summary', '</section>')).toContain('2 of 3 openings could be evaluated; 1 could not')
    expect(part('status', '</section>')).toContain('Not described far enough to be evaluated')
  })

  test('tells each miss with what was found, by whom, and the remedy', () => {
    const misses = part('misses', 'id="status"')
    expect(misses).toContain('<bdi>W-104</bdi>: Lintel bearing at each end, right end')
    expect(misses).toMatch(/<dd>3 in<\/dd>[\s\S]*at least 6 in \(152 mm\)[\s\S]*3 in \(76\.2 mm\)/)
    expect(misses).toContain('2026-03-02T09:00:00Z by <bdi>&lt;i&gt;crew&lt;/i&gt;</bdi>')
    expect(misses).toMatch(/Remedy before cover-up[\s\S]*href="#caution-1"/)
  })

  test('has the lintel schedule, the take-off and every opening in short', () => {
    expect(part('take-off', 'id="openings"')).toMatch(/Lintel schedule[\s\S]*60 in \(1524 mm\)/)
    expect(part('take-off', 'id="openings"')).toContain('What could not be computed')
    expect([...part('openings').matchAll(/<article class="opening kept"><h3><bdi>(W-\d+)/g)].map(([, name]) => name)).toEqual(['W-104', 'W-105'])
  })

  test('escapes what people write, and is valid HTML', async () => {
    expect(text).toContain('<h1><bdi>House &lt;b&gt;&amp;&lt;/b&gt; barn</bdi></h1>')
    expect(text).not.toMatch(/<i>crew|<b>&/)
    expect(await complaintsAbout(text)).toEqual([])
  })

  test('is the same over GraphQL', async () => {
    expect((await graphql('query R($project: String!) { buildingReport(project: $project) }', { project }))['buildingReport']).toBe(text)
  })
})
