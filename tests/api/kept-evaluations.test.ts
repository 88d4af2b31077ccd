import { describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { bodyOf, embedmentOrdinance, jurisdictionService } from './jurisdiction.ts'

const { http, tokenFor, records } = await jurisdictionService()
const inspector = await tokenFor({ kind: 'record' })
const clerk = await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' })

const request = { jurisdiction: 'us-xa-101', asOf: '2026-04-01', opening: { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, ties: { kind: 'wire', embedment: '1 3/4' } } }
const answered = await http.post('/v1/evaluations').set('authorization', `Bearer ${inspector}`).send({ ...request, keep: true })
const kept = bodyOf(operations.keepEvaluation, answered)
const read = (path: string, token = inspector) => http.get(path).set('authorization', `Bearer ${token}`)
const reproduced = async (id = kept.id) => bodyOf(operations.reproduceEvaluation, await http.post(`/v1/evaluations/${id}/reproduce`).set('authorization', `Bearer ${inspector}`))
const evaluated = async () => bodyOf(operations.evaluateOpening, await http.post('/v1/evaluations').send(request))

describe('a kept evaluation', () => {
  test('is read word for word as it was given', async () => {
    expect(answered.status).toBe(200)
    expect((await read(`/v1/evaluations/${kept.id}`)).body).toEqual(kept)
  })

  test('keeping and reading need the scope; evaluating alone does not', async () => {
    expect((await http.post('/v1/evaluations').send(request)).status).toBe(200)
    expect((await http.post('/v1/evaluations').send({ ...request, keep: true })).status).toBe(401)
    expect((await http.post('/v1/evaluations').set('authorization', `Bearer ${clerk}`).send({ ...request, keep: true })).status).toBe(403)
    expect((await read(`/v1/evaluations/${kept.id}`, clerk)).status).toBe(403)
    expect((await read('/v1/evaluations/none')).status).toBe(404)
  })

  test('is not kept when nobody asks', async () => {
    expect((await read(`/v1/evaluations/${(await evaluated()).id}`)).status).toBe(404)
    const refused = await http.post('/v1/evaluations').set('authorization', `Bearer ${inspector}`).send({ ...request, keep: 'yes' })
    expect(refused.body).toMatchObject({ status: 422, errors: [{ pointer: '/keep' }] })
  })

  test('is reproduced as identical', async () => {
    expect(await reproduced()).toEqual({
      evaluation: kept.id, outcome: 'identical', keptDigest: kept.digest, digest: kept.digest, keptCatalog: kept.catalog.digest, catalog: kept.catalog.digest, differences: [],
    })
  })

  test('is still reproduced as identical after the law has changed, while a new one comes out otherwise', async () => {
    const draft = bodyOf(operations.createDraft, await http.post('/v1/amendment-drafts').set('authorization', `Bearer ${clerk}`).set('content-type', 'application/yaml').send(embedmentOrdinance('us-xa-101')))
    const adopted = await http.post(`/v1/amendment-drafts/${draft.id}/adopt`).set('authorization', `Bearer ${clerk}`).set('if-match', `"${draft.version}"`)
    expect(adopted.status).toBe(201)
    const outcome = ({ findings }: { findings: { rule: string; outcome: string }[] }) => findings.find(({ rule }) => rule === 'tie.embedment')?.outcome
    expect(outcome(kept)).toBe('pass')
    expect(outcome(await evaluated())).toBe('fail')
    expect(await reproduced()).toMatchObject({ outcome: 'identical', differences: [] })
  })

  test('whose catalog is gone shows the exact difference', async () => {
    const before = await records.readEvaluation(kept.id)
    if (!before) throw new Error('it was kept')
    const elsewhere = { ...before, id: 'from-elsewhere', catalogDigest: `sha256:${'0'.repeat(64)}`, digest: `sha256:${'1'.repeat(64)}`, answer: { ...kept, id: 'from-elsewhere' } }
    await records.keepEvaluation(elsewhere)
    const { outcome, differences } = await reproduced('from-elsewhere')
    expect(outcome).toBe('different')
    const changed = new Map(differences.map(({ pointer, kept: then, now }) => [pointer, [then, now]]))
    expect(changed.get('/findings/tie.embedment/outcome')).toEqual(['"pass"', '"fail"'])
    expect(changed.get('/summary/fail')).toEqual([String(kept.summary.fail), String(kept.summary.fail + 1)])
  })

  test('by a release that was cut shows that release, whatever is in force now', async () => {
    const { current, cut } = bodyOf(operations.listReleases, await http.get('/v1/releases'))
    expect(cut).toContain('2026.1.0')
    const answer = bodyOf(operations.evaluateOpening, await http.post('/v1/evaluations').send({ ...request, release: '2026.1.0' }))
    expect(answer.catalog.release).toBe('2026.1.0')
    expect(answer.catalog.digest).not.toBe(current.digest)
    expect(answer.findings.find(({ rule }) => rule === 'tie.embedment')?.outcome).toBe('pass')
  })

  test('by a release that is not here is refused', async () => {
    expect((await http.post('/v1/evaluations').send({ ...request, release: '1999.1.0' })).body).toMatchObject({ status: 409, code: 'catalogGone' })
    expect((await http.post('/v1/evaluations').send({ ...request, release: 'newest' })).body).toMatchObject({ status: 422, errors: [{ pointer: '/release' }] })
  })
})
