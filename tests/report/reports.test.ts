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

  test('says the source of each miss, publication and place in it', () => {
    expect(part('misses', 'id="status"')).toMatch(/<code>lintel\.bearing-length<\/code> <span class="source">[\s\S]*?irc 2021 R703\.8\.3[\s\S]*?class="evidence /)
  })

  test('leads with the units of most of its openings, and at each miss with those of its own', async () => {
    const metric = id(100)
    const described = (reference: string, lengthUnit: string, width: number, bearing: string) => ({ reference, lengthUnit, opening: { kind: 'window', width, height: width }, head: { support: { kind: 'looseSteelAngle', bearing } } })
    await http.post('/v1/projects').set('authorization', bearer).send({ id: metric, title: 'Millimeters', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }).expect(201)
    await http.post(`/v1/projects/${metric}/entries`).set('authorization', bearer).send({ entries: [
      { id: id(101), opening: 'M-1', ...said, design: { description: described('M-1', 'mm', 1200, '100') } },
      { id: id(102), opening: 'M-2', ...said, design: { description: described('M-2', 'mm', 1500, '200') } },
      { id: id(103), opening: 'I-1', ...said, design: { description: described('I-1', 'in', 48, '4') } },
    ] }).expect(200)
    const { text: page } = await http.get(`/v1/projects/${metric}/report`).set('authorization', bearer).expect(200)
    const offBy = (reference: string) => new RegExp(`<bdi>${reference}</bdi>: Lintel bearing[\\s\\S]*?<dt>Off by</dt><dd>([^<]*)`).exec(page)?.[1]
    expect([offBy('M-1'), offBy('I-1')]).toEqual([expect.stringMatching(/^52\.4 mm \(/), expect.stringMatching(/^2 in \(50\.8 mm/)])
    expect(/Lintel schedule[\s\S]*?<tbody>([\s\S]*?)<\/tbody>/.exec(page)?.[1]).toMatch(/<td>[\d.]+ mm \([\d /]+ ?in\)<\/td>/)
  })
})

describe('a report on an opening by its record', async () => {
  const built = id(200)
  const name = 'W-7'
  const path = `/v1/projects/${built}/openings/${name}`
  const post = (entries: readonly object[]) => http.post(`/v1/projects/${built}/entries`).set('authorization', bearer).send({ entries: entries.map((entry) => ({ opening: name, by: '<b>inspector</b>', ...entry })) }).expect(200)
  const bearing = (entry: number, at: string, member: string, value: string) => ({ id: id(entry), at, observation: { fact: 'head.support.bearing', member, value, method: 'examine', holdPoint: 'lintelSet' } })
  const rule = 'lintel.bearing-length'
  const instrument = { kind: 'notice', number: 'V-12', adopted: '2026-03-04' }
  await http.post('/v1/projects').set('authorization', bearer).send({ id: built, title: 'House', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }).expect(201)
  await post([{ id: id(201), at: '2026-03-01T09:00:00Z', design: { description: { ...opening, reference: name, head: { support: { kind: 'looseSteelAngle', bearing: '8' } } } } }])
  await post([bearing(202, '2026-03-02T09:00:00Z', 'right', '3 in'), bearing(203, '2026-03-02T09:01:00Z', 'left', '2 in')])
  await post([{ id: id(204), at: '2026-03-03T09:00:00Z', remedy: { rule, member: 'right', work: 'Set a longer angle', due: '2026-03-20' } }])
  await post([{ id: id(205), at: '2026-03-03T10:00:00Z', verification: { rule, member: 'right', result: 'mended', holdPoint: 'lintelSet' } }, bearing(206, '2026-03-03T11:00:00Z', 'left', '7 in')])
  await post([{ id: id(207), at: '2026-03-04T09:00:00Z', signOff: { holdPoint: 'lintelSet', reason: 'Scaffold <has> to go' } }])
  const read = async () => (await http.get(`${path}/report`).set('authorization', bearer).expect(200).expect('content-type', html)).text
  const text = await read()
  const record = text.slice(text.indexOf('id="record"'), text.indexOf('</section>', text.indexOf('id="record"')))
  const rows = [...record.matchAll(/<tr>([\s\S]*?)<\/tr>/g)].map(([, row = '']) => row.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' '))
  const rowWith = (...words: readonly string[]) => rows.filter((row) => words.every((word) => row.includes(word)))

  test('is of what is known now: as seen, and as drawn where nobody has looked', async () => {
    const answered = await http.get(`${path}/evaluation?basis=asBuiltOverDesign`).set('authorization', bearer).expect(200)
    expect(text).toContain((answered.body as { digest: string }).digest)
    expect(text).toContain(`href="https://wythe.example${path}/evaluation?basis=asBuiltOverDesign"`)
    expect(text).toContain('data-kind="elevation"')
    expect(text).toContain('Structural results must be confirmed by a licensed professional')
    expect(text).toContain('the authority having jurisdiction')
  })

  test('has the request that gives the same evaluation without the record', async () => {
    const call = /<pre[^>]*>[\s\S]*? -d &#39;([\s\S]*?)&#39;<\/pre>/.exec(text)?.[1] ?? ''
    const answered = await http.post('/v1/evaluations').send(JSON.parse(call.replaceAll('&quot;', '"').replaceAll('&amp;', '&')) as object).expect(200)
    expect(text).toContain((answered.body as { digest: string }).digest)
  })

  test('tells which readings contradict each other, with who read what and when', () => {
    expect(rowWith('Bearing', 'left end', '7 in , 2026-03-03T11:00:00Z by &lt;b&gt;inspector&lt;/b&gt;', '2 in , 2026-03-02T09:01:00Z')).toHaveLength(1)
    expect(rowWith('right end', '3 in , 2026')).toEqual([])
  })

  test('tells each sign-off with what was known when it was given', () => {
    expect(rowWith('Lintel on its bearings', '2026-03-04T09:00:00Z by', `not ready: not determined: ${rule}`, 'Scaffold &lt;has&gt; to go')).toHaveLength(1)
  })

  test('tells what is said to be mended from what a reading has settled', () => {
    expect(rowWith(rule, 'right end', 'Said to be mended', 'Set a longer angle , chosen 2026-03-03T09:00:00Z', 'due 2026-03-20', 'said mended 2026-03-03T10:00:00Z')).toHaveLength(1)
    expect(rowWith(rule, 'left end', 'Settled by a reading')).toHaveLength(1)
    expect(record).toContain('No waiver or modification is in force.')
  })

  test('is valid HTML, and the same over GraphQL', async () => {
    expect(await complaintsAbout(text)).toEqual([])
    expect(lasting((await graphql('query R($project: String!, $opening: String!) { openingReport(project: $project, opening: $opening) }', { project: built, opening: name }))['openingReport'])).toBe(lasting(text))
  })

  test('tells the waivers that count, and how many ran out', async () => {
    await post([
      { id: id(208), at: '2026-03-05T09:00:00Z', waiver: { rule, kind: 'waiver', instrument, grantedBy: 'building official', conditions: 'Until the <lintel> is changed' } },
      { id: id(209), at: '2026-03-05T09:00:00Z', waiver: { rule, kind: 'waiver', instrument, grantedBy: 'building official', expires: '2020-01-01' } },
    ])
    const later = await read()
    const plain = later.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ')
    expect(plain).toContain('waiver by building official : V-12 without an end Until the &lt;lintel&gt; is changed yes: not met')
    expect(plain).toContain('1 waiver or modification ran out and counts no more.')
    expect(plain).toContain(`right end ${rule} mandatory Waived`)
    expect(await complaintsAbout(later)).toEqual([])
  })

  test('of what is not on record is not there; of what is not described far enough it says what is missing', async () => {
    await http.get(`/v1/projects/${built}/openings/none/report`).set('authorization', bearer).expect(404)
    await http.post(`/v1/projects/${built}/entries`).set('authorization', bearer).send({ entries: [{ id: id(210), opening: 'bare', at: '2026-03-05T09:00:00Z', by: 'crew', observation: { fact: 'sill.slope', value: '10 deg', method: 'test', holdPoint: 'jambRise' } }] }).expect(200)
    await http.get(`/v1/projects/${built}/openings/bare/report`).set('authorization', bearer).expect(422)
  })
})
