import { beforeAll, describe, expect, test } from 'vitest'
import { embedmentOrdinance, jurisdictionService } from '../jurisdiction.ts'
import { mapping, quarryWalk } from '../schedule.ts'
import { otherProject, project } from './decisions.ts'
import { fieldsOf, overGraphql, overRest, routesOf, type Input } from './doors.ts'

const id = (last: number) => `0199d000-0000-7000-8000-${String(last).padStart(12, '0')}`
const absent = id(404)
const house = { title: 'House', jurisdiction: 'us-xa-101', asOf: '2026-03-01' }
const window = { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 } }
const by = { at: '2026-03-02T09:00:00Z', by: 'crew' }
const evaluation = { jurisdiction: 'us-xa-101', asOf: '2026-03-01', opening: window, keep: true }

/** What each operation on a project is sent beside the project, such that it is done for whoever may. */
const inputs: Readonly<Record<string, Input>> = {
  readProject: {}, listOpenings: {}, readBuilding: {}, readJournal: {},
  readBuildingTable: { table: 'openings' },
  readBuildingReport: {},
  exportProject: { format: 'sarif' },
  readOpeningRecord: { opening: 'w-1' },
  readOpeningReport: { opening: 'w-1' },
  readOpeningForm: { opening: 'w-1', holdPoint: 'lintelSet' },
  evaluateRecordedOpening: { opening: 'w-1', basis: 'asDesigned' },
  postEntries: { entries: [{ id: id(12), opening: 'w-1', ...by, design: { description: window, replaces: null } }] },
  postFormAnswers: { id: id(13), opening: 'w-1', ...by, holdPoint: 'lintelSet', method: 'examine', answers: { head_support_present: 'Yes' } },
  importSchedule: { ...mapping, import: id(14), csv: quarryWalk, validateOnly: true },
  changeProject: house,
}

const service = await jurisdictionService()
const [everywhere, here, elsewhere] = [await service.tokenFor({ kind: 'record' }), await service.tokenFor({ kind: 'record', project }), await service.tokenFor({ kind: 'record', project: otherProject })]
const asked = (token: string | null) => (token === null ? service.http : { post: (path: string) => service.http.post(path).set('authorization', `Bearer ${token}`), get: (path: string) => service.http.get(path).set('authorization', `Bearer ${token}`) })
const routes = (await routesOf(service.app)).filter(({ path }) => path.includes('{project}'))
const fields = fieldsOf().filter(({ name, described }) => name !== 'keepEvaluation' && described.args.some((one) => one.name === 'project'))
const operationOf: Readonly<Record<string, string>> = {
  project: 'readProject', openings: 'listOpenings', building: 'readBuilding', buildingTable: 'readBuildingTable', buildingReport: 'readBuildingReport', projectExport: 'exportProject', journal: 'readJournal',
  openingRecord: 'readOpeningRecord', openingReport: 'readOpeningReport', openingForm: 'readOpeningForm', recordedEvaluation: 'evaluateRecordedOpening',
}
const ids: Record<string, string> = {}

beforeAll(async () => {
  for (const [index, one] of [project, otherProject].entries()) {
    const made = await asked(everywhere).post('/v1/projects').send({ id: one, ...house }).expect(201)
    ids[one] = (made.body as { version: string }).version
    const entry = { id: id(20 + index), opening: 'w-1', ...by, design: { description: window } }
    expect((await asked(everywhere).post(`/v1/projects/${one}/entries`).send({ entries: [entry] })).body).toMatchObject({ results: [{ outcome: 'recorded' }] })
  }
})

/** What is told, whichever project was named and whichever request it was. */
const told = ({ status, body }: { status: number; body: string }) => ({ status, body: body.replaceAll(/0199d000-[0-9a-f-]+/g, 'some project').replaceAll(/urn:request:[\w-]+/g, '') })

describe('a token for one project', () => {
  test('there is a request for every route and every field of a project', () => {
    expect(routes.map(({ operation }) => operation).toSorted()).toEqual(Object.keys(inputs).toSorted())
    expect(fields.map(({ name }) => operationOf[name] ?? name).toSorted()).toEqual(Object.keys(inputs).toSorted())
  })

  test.each(routes)('$method $path: its own is answered, another is as if it were not there', async (route) => {
    const ask = (token: string, one: string) => overRest(service.app, route, { ...inputs[route.operation], project: one, ...(route.method === 'PUT' && { version: ids[one] ?? 'none' }) }, token)
    const [foreign, missing] = [await ask(here, otherProject), await ask(here, absent)]
    expect(foreign).toMatchObject({ status: 404, code: 'notFound' })
    expect(told(foreign)).toEqual(told(missing))
    expect(told(foreign)).toEqual(told(await ask(everywhere, absent)))
    expect((await ask(here, project)).code).toBe('answered')
    expect((await ask(everywhere, otherProject)).code).toBe('answered')
  })

  test.each(fields)('$root $name: its own is answered, another is as if it were not there', async (field) => {
    const ask = (token: string, one: string) => overGraphql(service.app, field, { ...inputs[operationOf[field.name] ?? field.name], project: one, ...(field.name === 'changeProject' && { version: ids[one] ?? 'none' }) }, token)
    const [foreign, missing] = [await ask(here, otherProject), await ask(here, absent)]
    expect(foreign.code).toBe('notFound')
    expect(told(foreign)).toEqual(told(missing))
    expect((await ask(here, project)).code).toBe('answered')
    expect((await ask(everywhere, otherProject)).code).toBe('answered')
  })

  test('lists its own project, however it pages', async () => {
    const listed = async (token: string, query = '') => ((await asked(token).get(`/v1/projects${query}`)).body as { items: { project: string }[] }).items.map((one) => one.project)
    expect(await listed(everywhere)).toEqual([project, otherProject])
    expect(await listed(here)).toEqual([project])
    expect(await listed(elsewhere)).toEqual([otherProject])
    const { nextCursor } = (await asked(everywhere).get('/v1/projects?first=1')).body as { nextCursor: string }
    expect(await listed(everywhere, `?after=${nextCursor}`)).toEqual([otherProject])
    expect(await listed(here, `?after=${nextCursor}`)).toEqual([])
    const { data } = (await asked(here).post('/graphql').send({ query: '{ projects { edges { node { project } } } }' })).body as { data: { projects: unknown } }
    expect(data.projects).toEqual({ edges: [{ node: { project } }] })
  })

  test('opens no project', async () => {
    const refused = await asked(here).post('/v1/projects').send({ id: project, ...house }).expect(403)
    expect(refused.body).toMatchObject({ detail: 'The token lacks the scope "record" for all projects.' })
  })

  test('of several reaches each of them', async () => {
    const both = await service.tokenFor({ kind: 'record', project }, { kind: 'record', project: otherProject })
    for (const one of [project, otherProject]) await asked(both).get(`/v1/projects/${one}`).expect(200)
  })
})

describe('a kept evaluation', async () => {
  const keep = (token: string | null, change: object = {}) => asked(token).post('/v1/evaluations').send({ ...evaluation, ...change })
  const keptIn = async (token: string, change: object = {}) => ((await keep(token, change).expect(200)).body as { id: string }).id
  const statuses = async (token: string | null, kept: string) => [(await asked(token).get(`/v1/evaluations/${kept}`)).status, (await asked(token).post(`/v1/evaluations/${kept}/reproduce`)).status]
  const codesOf = async (token: string, evaluation: string) => Promise.all(fieldsOf().filter(({ name }) => ['keptEvaluation', 'reproduction'].includes(name)).map(async (field) => (await overGraphql(service.app, field, { evaluation }, token)).code))
  const clerk = await service.tokenFor({ kind: 'amend', jurisdiction: 'us' }, { kind: 'evaluate' }, { kind: 'administer' })

  test('is for those who may record where it was kept', async () => {
    const own = await keptIn(here, { project })
    expect([await statuses(here, own), await statuses(everywhere, own), await statuses(elsewhere, own), await statuses(clerk, own), await statuses(null, own)]).toEqual([[200, 200], [200, 200], [404, 404], [403, 403], [401, 401]])
    expect([await codesOf(here, own), await codesOf(elsewhere, own), await codesOf(clerk, own)]).toEqual([['answered', 'answered'], ['notFound', 'notFound'], ['forbidden', 'forbidden']])
  })

  test('in no project is for those who may record in all', async () => {
    const loose = await keptIn(everywhere)
    expect([await statuses(everywhere, loose), await statuses(here, loose)]).toEqual([[200, 200], [404, 404]])
    const [foreign, missing] = await Promise.all([loose, 'none'].map((kept) => asked(here).get(`/v1/evaluations/${kept}`)))
    expect((foreign?.body as { detail: string }).detail.replace(loose, 'none')).toBe((missing?.body as { detail: string }).detail)
  })

  test('is kept only where its sender may record', async () => {
    expect((await keep(here)).body).toMatchObject({ status: 403, errors: [{ pointer: '/project' }] })
    expect((await keep(here, { project: otherProject })).body).toMatchObject({ status: 404, detail: `There is no project "${otherProject}".` })
    expect((await keep(everywhere, { project: absent })).body).toMatchObject({ status: 404 })
    expect((await keep(clerk, { project })).status).toBe(403)
    expect((await keep(null, { project })).status).toBe(401)
  })

  test('says where only when it is kept', async () => {
    for (const kept of [undefined, false]) expect((await keep(here, { project, keep: kept })).body).toMatchObject({ status: 422, errors: [{ pointer: '/project' }] })
  })
})

test.each(['x", error="none', 'ü\nset-cookie: a=b', 'us-xb'])('a draft for the jurisdiction %j is refused, and no word of it gets into a header but an id', async (jurisdiction) => {
  const clerk = await service.tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' })
  const refused = await asked(clerk).post('/v1/amendment-drafts').set('content-type', 'application/json').send(JSON.stringify({ jurisdiction }))
  expect(refused.status).toBe(403)
  expect(refused.headers['www-authenticate']).toBe(`Bearer realm="wythe", error="insufficient_scope"${jurisdiction === 'us-xb' ? ', scope="wythe:amend:us-xb"' : ''}`)
})

describe('a draft of another jurisdiction', async () => {
  const [clerk, stranger] = [await service.tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' }), await service.tokenFor({ kind: 'amend', jurisdiction: 'us-xb' }, { kind: 'record' }, { kind: 'administer' })]
  let number = 0
  const drafted = async () => {
    const text = embedmentOrdinance('us-xa-101', `ord-object-${(number += 1)}`)
    const made = await asked(clerk).post('/v1/amendment-drafts').set('content-type', 'application/yaml').send(text).expect(201)
    const { id: draft, version } = made.body as { id: string; version: string }
    return { draft, version, text, format: 'yaml' }
  }
  /** Adopting ends the part of the draft, so the routes and fields that adopt come last. */
  const adoptingLast = <T extends { readonly name?: string; readonly operation?: string }>(all: readonly T[]) => all.toSorted((a, b) => Number((a.name ?? a.operation)?.startsWith('adopt')) - Number((b.name ?? b.operation)?.startsWith('adopt')))
  const asStranger = ({ text, ...rest }: Awaited<ReturnType<typeof drafted>>) => ({ ...rest, text: text.replace('jurisdiction: us-xa-101', 'jurisdiction: us-xb') })

  test.each(adoptingLast((await routesOf(service.app)).filter(({ path }) => path.includes('{draft}'))))('$method $path is as if it were not there', async (route) => {
    const draft = await drafted()
    const foreign = await overRest(service.app, route, asStranger(draft), stranger)
    expect(foreign).toMatchObject({ status: 404, code: 'notFound' })
    expect(told(foreign).body.replaceAll(draft.draft, 'none')).toBe(told(await overRest(service.app, route, { ...asStranger(draft), draft: 'none' }, stranger)).body)
    expect((await overRest(service.app, route, draft, clerk)).code).toBe('answered')
  })

  test.each(fieldsOf().filter(({ described }) => described.args.some((one) => one.name === 'draft')))('$root $name is as if it were not there', async (field) => {
    const draft = await drafted()
    expect((await overGraphql(service.app, field, asStranger(draft), stranger)).code).toBe('notFound')
    expect(['answered', 'amendmentRefused'], 'refused for what the routes have adopted').toContain((await overGraphql(service.app, field, draft, clerk)).code)
  })
})
