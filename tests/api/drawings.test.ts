import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { drawFile } from '../../src/cli/draw-file.ts'
import { drawingKinds } from '../../src/drawing/index.ts'
import { operations } from '../../src/operations/index.ts'
import { allIn, readSvg } from '../drawing/read-svg.ts'
import { bodyOf, embedmentOrdinance, jurisdictionService } from './jurisdiction.ts'
import { client } from './client.ts'

const { http, tokenFor } = await jurisdictionService()
const inspector = await tokenFor({ kind: 'record' })
const clerk = await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' })
const folder = mkdtempSync(join(tmpdir(), 'drawings-'))
afterAll(() => { rmSync(folder, { recursive: true }) })

const around = { jurisdiction: 'us-xa-101', asOf: '2026-04-01' }
const opening = { lengthUnit: 'in', reference: '<W-104>', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: [4, 2] } }, ties: { kind: 'wire', embedment: '1 3/4' } }
const request = { ...around, opening }
/** The answer as text, with its status and its headers. */
async function imageOf(asked: Promise<{ readonly status: number; readonly headers: unknown; readonly body: unknown }>) {
  const { status, headers, body } = await asked
  return { status, headers: headers as Readonly<Record<string, string>>, svg: String(body) }
}

const query = `query ($opening: OpeningInput!, $jurisdiction: String, $asOf: String, $kind: DrawingKind!) {
  drawing(opening: $opening, jurisdiction: $jurisdiction, asOf: $asOf, kind: $kind) { kind title description svg unknown callouts { number rule outcome text } }
}`

const queryInRelease = query.replace('$kind: DrawingKind!', '$kind: DrawingKind!, $release: String').replace('kind: $kind', 'kind: $kind, release: $release')

describe('a drawing', () => {
  test.each(drawingKinds)('%s is answered as an image that runs and loads nothing, and the same over GraphQL', async (kind) => {
    const { status, headers, svg } = await imageOf(http.post('/v1/drawings').send({ ...request, kind }).buffer(true))
    expect([status, headers['content-type'], headers['x-content-type-options']]).toEqual([200, 'image/svg+xml; charset=utf-8', 'nosniff'])
    expect(headers['content-security-policy']).toMatch(/default-src 'none'.*sandbox/)
    expect(readSvg(svg).attributes).toMatchObject({ 'role': 'img', 'data-kind': kind })
    const answered = await http.post('/graphql').send({ query, variables: { ...request, kind } })
    const { data, errors } = answered.body as { data?: { drawing: { kind: string; svg: string; title: string; callouts: readonly { rule: string; outcome: string }[] } }; errors?: unknown }
    expect(errors).toBeUndefined()
    expect(data?.drawing).toMatchObject({ kind, svg })
    expect(data?.drawing.title).toContain('<W-104>')
    expect(svg).toContain('&lt;W-104&gt;')
  })

  test('numbers what the evaluation says fails', async () => {
    const answered = await http.post('/graphql').send({ query, variables: { ...request, kind: 'elevation' } })
    const { callouts } = (answered.body as { data: { drawing: { callouts: readonly { rule: string; outcome: string }[] } } }).data.drawing
    const { findings } = bodyOf(operations.evaluateOpening, await http.post('/v1/evaluations').send(request))
    const outcomes = new Map(findings.map(({ rule, outcome }) => [rule, outcome]))
    expect(callouts.length).toBeGreaterThan(5)
    for (const { rule, outcome } of callouts) expect([rule, outcomes.get(rule)]).toEqual([rule, outcome])
    expect(callouts.filter(({ outcome }) => outcome === 'fail').map(({ rule }) => rule)).toContain('lintel.bearing-length')
  })

  test('is refused with every problem at once where it cannot be made', async () => {
    const refused = await http.post('/v1/drawings').send({ ...around, kind: 'perspective', opening: { opening: { kind: 'window', width: 'wide', height: 60 } } })
    expect(refused.status).toBe(422)
    const pointers = (refused.body as { errors: readonly { pointer: string }[] }).errors.map(({ pointer }) => pointer)
    expect(pointers).toEqual(expect.arrayContaining(['/kind', '/opening/opening/width', '/opening/opening/height']))
  })
})

describe('a kept evaluation', async () => {
  const kept = bodyOf(operations.keepEvaluation, await http.post('/v1/evaluations').set('authorization', `Bearer ${inspector}`).send({ ...request, keep: true }))
  const draw = (token: string | null, id = kept.id, kind = 'elevation') => {
    const asked = http.get(`/v1/evaluations/${id}/drawings/${kind}`)
    return imageOf((token === null ? asked : asked.set('authorization', `Bearer ${token}`)).buffer(true))
  }
  const { svg: asEvaluated } = await imageOf(http.post('/v1/drawings').send({ ...request, kind: 'elevation' }).buffer(true))

  test('is drawn as it was evaluated', async () => {
    const { status, headers, svg } = await draw(inspector)
    expect([status, headers['content-type']]).toEqual([200, 'image/svg+xml; charset=utf-8'])
    expect(svg).toBe(asEvaluated)
  })

  test('is drawn for whoever may read it, and for nobody else', async () => {
    expect((await draw(null)).status).toBe(401)
    expect((await draw(clerk)).status).toBe(403)
    expect((await draw(inspector, 'none')).status).toBe(404)
    expect((await draw(inspector, kept.id, 'perspective')).status).toBe(422)
  })

  test('is drawn with its own findings after the law has changed', async () => {
    const draft = bodyOf(operations.createDraft, await http.post('/v1/amendment-drafts').set('authorization', `Bearer ${clerk}`).set('content-type', 'application/yaml').send(embedmentOrdinance('us-xa-101')))
    expect((await http.post(`/v1/amendment-drafts/${draft.id}/adopt`).set('authorization', `Bearer ${clerk}`).set('if-match', `"${draft.version}"`)).status).toBe(201)
    expect((await draw(inspector)).svg).toBe(asEvaluated)
    const described = (svg: string) => allIn(readSvg(svg)).find(({ name }) => name === 'desc')?.text ?? ''
    const now = await imageOf(http.post('/v1/drawings').send({ ...request, kind: 'section' }).buffer(true))
    expect(described((await draw(inspector, kept.id, 'section')).svg)).not.toMatch(/fails: [^.]*embedment|fails: Length of tie/i)
    expect(described(now.svg)).toMatch(/fails: Length of tie in the bed joint/)
  })

  test('by a release that was cut, an opening is drawn as that release judges it, the same over GraphQL', async () => {
    const asked = { ...request, kind: 'section', release: '2026.1.0' }
    const { status, svg } = await imageOf(http.post('/v1/drawings').send(asked).buffer(true))
    const description = allIn(readSvg(svg)).find(({ name }) => name === 'desc')?.text
    expect([status, description]).toEqual([200, expect.not.stringMatching(/fails: Length of tie in the bed joint/)])
    expect((await http.post('/graphql').send({ query: queryInRelease, variables: asked })).body).toMatchObject({ data: { drawing: { svg, description } } })
  })

  test('a release that is not here, or is none, is refused over both doors', async () => {
    const none = { ...request, kind: 'elevation', release: '1999.1.0' }
    expect((await http.post('/v1/drawings').send(none)).body).toMatchObject({ status: 409, code: 'catalogGone', errors: [{ pointer: '/release' }] })
    expect((await http.post('/v1/drawings').send({ ...none, release: 'newest' })).body).toMatchObject({ status: 422, errors: [{ pointer: '/release' }] })
    expect((await http.post('/graphql').send({ query: queryInRelease, variables: none })).body).toMatchObject({ errors: [{ extensions: { code: 'catalogGone' } }] })
  })
})

test('the command line writes the drawing that REST answers', async () => {
  const service = await client()
  const [file, out] = [join(folder, 'opening.json'), join(folder, 'section.svg')]
  writeFileSync(file, JSON.stringify(opening))
  const place = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }
  const written = await drawFile(file, { ...place, kind: 'section', out }, service.deps.catalog)
  const { svg } = await imageOf(service.http.post('/v1/drawings').send({ ...place, opening, kind: 'section' }).buffer(true))
  expect(written).toEqual({ text: `Vertical section: <W-104>: ${out}\n`, exitCode: 0 })
  expect(readFileSync(out, 'utf8')).toBe(svg)
  expect(await drawFile(file, { ...place, kind: 'perspective' }, service.deps.catalog)).toMatchObject({ exitCode: 2 })
  expect(await drawFile(join(folder, 'none.yaml'), place, service.deps.catalog)).toMatchObject({ exitCode: 2 })
})
