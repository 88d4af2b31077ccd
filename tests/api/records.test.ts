import { describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { bodyOf, jurisdictionService } from './jurisdiction.ts'

const { http, tokenFor } = await jurisdictionService()
const inspector = await tokenFor({ kind: 'record' })
const clerk = await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' })

/** A version 7 UUID that is told apart by its last digits. */
const id = (last: number) => `0199a000-0000-7000-8000-${String(last).padStart(12, '0')}`
const send = (path: string, body: object, token = inspector) => http.post(path).set('authorization', `Bearer ${token}`).send(body)
const graphql = (query: string, variables: object) => http.post('/graphql').set('authorization', `Bearer ${inspector}`).send({ query, variables })
const read = (path: string, token = inspector) => http.get(path).set('authorization', `Bearer ${token}`)

const house = { id: id(1), title: '12 Quarry Walk', jurisdiction: 'us-xa-101', asOf: '2026-03-01' }
const window = { lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: 6 } } }
const about = (last: number, at = '2026-03-02T09:00:00Z') => ({ id: id(last), opening: 'w-1', at, by: 'inspector' })
const bearing = (last: number, member: 'left' | 'right', value: string, at?: string) => ({ ...about(last, at), observation: { fact: 'head.support.bearing', member, value, method: 'examine', holdPoint: 'lintelSet' } })
const design = { ...about(10), design: { description: window } }

let projects = 100
/** A project of its own with what was posted to it. */
async function project(...batches: readonly (readonly object[])[]) {
  const number = (projects += 1)
  const made = bodyOf(operations.createProject, await send('/v1/projects', { ...house, id: id(number) }))
  // Ids are unique over all projects
  const own = (entry: object) => { const { id: first, ...rest } = entry as { id: string }; return { id: first.replace('0199a000-0000', `0199a000-${String(number).padStart(4, '0')}`), ...rest } }
  const answers = []
  for (const batch of batches) answers.push(bodyOf(operations.postEntries, await send(`/v1/projects/${made.project}/entries`, { entries: batch.map(own) })))
  const record = async () => bodyOf(operations.readOpeningRecord, await read(`/v1/projects/${made.project}/openings/w-1`))
  return { path: `/v1/projects/${made.project}`, answers, record, own, made }
}

describe('a project', () => {
  test('is made once, however often it is sent; another under its id is refused', async () => {
    const first = await send('/v1/projects', house).expect(201)
    const again = await send('/v1/projects', house).expect(201)
    expect(again.body).toEqual(first.body)
    expect((await send('/v1/projects', { ...house, title: 'Another' })).body).toMatchObject({ status: 409, code: 'idTaken' })
    expect((await read(`/v1/projects/${house.id}`)).body).toEqual(first.body)
  })

  test('is changed by whoever has seen its version', async () => {
    const { path, made } = await project()
    const change = (version: string | undefined) => http.put(path).set('authorization', `Bearer ${inspector}`).set(version === undefined ? {} : { 'if-match': `"${version}"` }).send({ title: 'Renamed', asOf: '2026-03-01', edition: 'irc-2021' })
    expect((await change(undefined)).status).toBe(428)
    expect((await change('sha256:other')).status).toBe(412)
    expect((await change(made.version)).body).toMatchObject({ title: 'Renamed', edition: 'irc-2021', jurisdiction: null })
    expect((await change(made.version)).status).toBe(412)
  })

  test('needs the scope, and a place for which there are rules', async () => {
    expect((await http.post('/v1/projects').send(house)).status).toBe(401)
    expect((await send('/v1/projects', house, clerk)).status).toBe(403)
    expect((await read('/v1/projects', clerk)).status).toBe(403)
    expect((await send('/v1/projects', { ...house, id: id(2), jurisdiction: 'nowhere' })).body).toMatchObject({ code: 'unknownJurisdiction' })
    expect((await send(`/v1/projects/${id(99)}/entries`, { entries: [design] })).status).toBe(404)
  })
})

describe('what is posted', () => {
  test('may come in any order, twice and late, and is there once', async () => {
    const { answers, record, path } = await project([bearing(11, 'left', '4 in')], [design, bearing(11, 'left', '4 in')], [bearing(11, 'left', '4 in')])
    expect(answers.map(({ results }) => results.map(({ outcome, sequence }) => [outcome, sequence]))).toEqual([[['recorded', 1]], [['recorded', 2], ['alreadyRecorded', 1]], [['alreadyRecorded', 1]]])
    expect(answers[0]?.openings).toMatchObject([{ opening: 'w-1', verdict: null, missing: ['opening'] }])
    expect((await record()).facts).toHaveLength(1)
    const journal = bodyOf(operations.readJournal, await read(`${path}/journal`))
    expect(journal).toMatchObject({ holds: true, items: [{ sequence: 1, kind: 'observation' }, { sequence: 2, kind: 'design' }] })
    expect(bodyOf(operations.readJournal, await read(`${path}/journal?after=1`))).toMatchObject({ holds: true, items: [{ sequence: 2 }] })
  })

  test('is answered one by one, with every reason', async () => {
    const { answers } = await project([
      design,
      bearing(12, 'left', 'four'),
      { ...about(13), observation: { fact: 'head.support.baring', value: '4 in', method: 'examine', holdPoint: 'lintelSet' } },
      { ...about(14), observation: { fact: 'wall.airSpace', member: 'left', value: '1 in', method: 'examine', holdPoint: 'jambRise' } },
      { ...about(15) },
      { id: 'no-uuid', opening: 'w-1', at: 'yesterday', by: 'inspector' },
      bearing(16, 'right', '6 in'),
      { ...bearing(16, 'right', '7 in') },
    ])
    expect(answers[0]?.results.map(({ outcome, problems }) => [outcome, ...problems.map(({ code, pointer }) => `${code} ${pointer}`)])).toEqual([
      ['recorded'],
      ['refused', 'unreadable /observation/value'],
      ['refused', 'unknownFact /observation/fact'],
      ['refused', 'notAllowed /observation/member'],
      ['refused', 'notAllowed '],
      ['refused', 'notAllowed /id', 'notAllowed /at'],
      ['recorded'],
      ['refused', 'idTaken /id'],
    ])
  })

  test('a design names the one that it replaces', async () => {
    const wider = { ...about(21), design: { description: { ...window, opening: { ...window.opening, width: 72 } } } }
    const { record, path, own, answers } = await project([design], [wider])
    expect(answers[1]?.results).toMatchObject([{ outcome: 'refused', problems: [{ code: 'versionStale', pointer: '/design/replaces' }] }])
    const replaces = (await record()).designVersion
    const taken = await send(`${path}/entries`, { entries: [own({ ...wider, id: id(22), design: { ...wider.design, replaces } })] })
    expect(taken.body).toMatchObject({ results: [{ outcome: 'recorded' }] })
    const both = await project([design, design, { ...design, id: id(23) }])
    expect(both.answers[0]?.results).toMatchObject([{ outcome: 'recorded' }, { outcome: 'alreadyRecorded' }, { outcome: 'refused', problems: [{ code: 'versionStale' }] }])
    expect((await read(`${path}/openings/w-1/evaluation?basis=asDesigned`)).body).toMatchObject({ subject: { basis: 'asDesigned' }, quantities: expect.arrayContaining([expect.objectContaining({ id: 'lintel.length', inchPound: '84 in' })]) as unknown })
  })
})

describe('two readings of one fact', () => {
  test('both stay, the later by the clock of the reader governs, and the difference is told', async () => {
    const { answers, record } = await project([design], [bearing(31, 'left', '6 in', '2026-03-02T10:00:00Z')], [bearing(32, 'left', '3 1/2 in', '2026-03-02T09:00:00Z'), bearing(33, 'right', '6 in')])
    const { facts, builtOtherwise } = await record()
    expect(facts).toMatchObject([
      { fact: 'head.support.bearing', member: 'left', contradicted: true, governs: { value: '6 in' }, earlier: [{ value: '3 1/2 in' }] },
      { fact: 'head.support.bearing', member: 'right', contradicted: false, governs: { value: '6 in' }, earlier: [] },
    ])
    expect(answers[2]?.openings[0]?.contradicted).toEqual(['head.support.bearing left'])
    expect(builtOtherwise).toEqual([])
  })

  test('one that was a mistake is taken out of account and still shown', async () => {
    const mistaken = bearing(34, 'left', '3 1/2 in')
    const { record, own, path } = await project([design, mistaken])
    expect((await record()).builtOtherwise).toEqual([{ fact: 'head.support.bearing', member: 'left', designed: '6 in', built: '3 1/2 in' }])
    await send(`${path}/entries`, { entries: [own({ ...about(35), correction: { entry: own(mistaken).id, reason: 'read at another window' } })] })
    const { facts, entries } = await record()
    expect(facts).toEqual([])
    expect(entries.map(({ kind }) => kind)).toEqual(['design', 'correction'])
  })
})

describe('an evaluation by the record', () => {
  const seen = [bearing(41, 'left', '3 1/2 in')]
  test.each([
    ['asDesigned', ['6 in', '6 in']],
    ['asBuilt', ['3 1/2 in']],
    ['asBuiltOverDesign', ['3 1/2 in', '6 in']],
  ])('%s', async (basis, bearings) => {
    const { path } = await project([design], seen)
    const evaluated = bodyOf(operations.evaluateRecordedOpening, await read(`${path}/openings/w-1/evaluation?basis=${basis}`))
    expect(evaluated.subject.facts.filter(({ fact }) => fact === 'head.support.bearing').map(({ given }) => given.replace(/^6$/, '6 in'))).toEqual(bearings)
  })
})

describe('a miss', () => {
  test('is new, stays, is settled and comes back', async () => {
    const statuses = async (...batches: readonly (readonly object[])[]) => {
      const { record } = await project([design], ...batches)
      return (await record()).misses.filter(({ rule, member }) => rule === 'lintel.bearing-length' && member === 'left').map(({ status }) => status)
    }
    const short = [bearing(51, 'left', '3 1/2 in', '2026-03-02T10:00:00Z')]
    const other = [{ ...about(52), observation: { fact: 'sill.projection', value: '1 in', method: 'examine', holdPoint: 'jambRise' } }]
    const mended = [bearing(53, 'left', '6 in', '2026-03-03T10:00:00Z')]
    const shortAgain = [bearing(54, 'left', '3 in', '2026-03-04T10:00:00Z')]
    expect(await statuses(short)).toEqual(['new'])
    expect(await statuses(short, other)).toEqual(['unchanged'])
    expect(await statuses(short, mended)).toEqual(['settled'])
    expect(await statuses(short, mended, shortAgain)).toEqual(['reopened'])
  })
})

describe('a sign-off', () => {
  const signOff = (last: number, reason?: string) => ({ ...about(last, '2026-03-02T11:00:00Z'), signOff: { holdPoint: 'lintelSet', ...(reason === undefined ? {} : { reason }) } })

  test('needs every mandatory rule to be decided and met, or a reason', async () => {
    const { answers } = await project([design], [signOff(61)], [signOff(62, 'lintel to be replaced on Friday')])
    expect(answers[1]?.results).toMatchObject([{ outcome: 'refused', problems: [{ code: 'notReady', pointer: '/signOff/reason', detail: expect.stringContaining('lintel.bearing-length') as string }] }])
    expect(answers[2]).toMatchObject({ results: [{ outcome: 'recorded' }], openings: [{ holdPoint: 'lintelSet' }] })
  })
})

test('GraphQL puts on record and reads the same', async () => {
  const { made } = await project()
  const own = { ...about(71), id: id(9_071) }
  const posted = await graphql('mutation($project: String!, $entries: [EntryInput!]!) { postEntries(project: $project, entries: $entries) { results { outcome sequence } openings { opening holdPoint } } }',
    { project: made.project, entries: [{ ...own, observation: { fact: 'sill.slope', value: '10 deg', method: 'examine', holdPoint: 'jambRise' } }] })
  expect(posted.body).toEqual({ data: { postEntries: { results: [{ outcome: 'recorded', sequence: 1 }], openings: [{ opening: 'w-1', holdPoint: 'jambRise' }] } } })
  const kept = await graphql('query($project: String!) { openingRecord(project: $project, opening: "w-1") { facts { fact governs { value by } } } }', { project: made.project })
  expect(kept.body).toEqual({ data: { openingRecord: { facts: [{ fact: 'sill.slope', governs: { value: '10 deg', by: 'inspector' } }] } } })
})
