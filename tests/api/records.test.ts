import { describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { bodyOf, jurisdictionService } from './jurisdiction.ts'

const { http, tokenFor, records } = await jurisdictionService()
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
  test.each<[string, object | string, string, string]>([
    ['entries alone, without the object around them', [design], '', 'must be an object'],
    ['a text', '"entries"', '', 'must be an object'],
    ['nothing', 'null', '/entries', 'is required'],
  ])('is an object: %s is refused', async (_, body, pointer, detail) => {
    const { path } = await project()
    const refused = await http.post(`${path}/entries`).set('authorization', `Bearer ${inspector}`).type('json').send(body)
    expect(refused.body).toMatchObject({ status: 422, code: 'invalidInput', errors: [{ pointer, detail }] })
    expect(bodyOf(operations.readJournal, await read(`${path}/journal`)).items).toEqual([])
  })

  test('may come in any order, twice and late, and is there once', async () => {
    const { answers, record, path } = await project([bearing(11, 'left', '4 in')], [design, bearing(11, 'left', '4 in')], [bearing(11, 'left', '4 in')])
    expect(answers.map(({ results }) => results.map(({ outcome, sequence }) => [outcome, sequence]))).toEqual([[['recorded', 1]], [['recorded', 2], ['alreadyRecorded', 1]], [['alreadyRecorded', 1]]])
    expect(answers[0]?.openings).toMatchObject([{ standing: { opening: 'w-1', verdict: null, missing: ['opening'] }, changed: [] }])
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
    expect(answers[2]?.openings[0]?.standing.contradicted).toEqual(['head.support.bearing left'])
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
      return (await record()).nonConformances.filter(({ rule, member }) => rule === 'lintel.bearing-length' && member === 'left').map(({ status }) => status)
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

describe('the answer to a posting', () => {
  test('says what comes out otherwise, what is not met and what the next operation hides', async () => {
    const { answers } = await project([design], [bearing(55, 'left', '3 1/2 in')], [bearing(56, 'left', '3 1/2 in', '2026-03-02T12:00:00Z')])
    const [drawn, seen, again] = answers.map(({ openings }) => openings[0])
    expect(drawn?.changed.filter(({ rule }) => rule === 'lintel.bearing-length')).toEqual([
      { rule: 'lintel.bearing-length', title: expect.any(String) as string, member: 'left', before: null, after: 'pass' },
      { rule: 'lintel.bearing-length', title: expect.any(String) as string, member: 'right', before: null, after: 'pass' },
    ])
    expect(seen?.changed).toContainEqual({ rule: 'lintel.bearing-length', title: expect.any(String) as string, member: 'left', before: 'pass', after: 'fail' })
    expect(seen?.standing).toMatchObject({ verdict: 'fail', notMet: ['lintel.bearing-length'] })
    const hidden = seen?.standing.beforeCoverUp ?? []
    expect(hidden.length).toBeGreaterThan(0)
    expect(new Set(hidden.map(({ hiddenBy }) => hiddenBy))).toEqual(new Set(['headFlashing']))
    expect(again?.changed).toEqual([])
  })
})

/** Everything that somebody has to look at before the lintel is hidden, as it is asked for. */
const lintelSeen = (from: number) => Object.entries(seenAtLintel).map(([fact, value], index) => ({ ...about(from + index), observation: { fact, value, method: 'examine', holdPoint: 'lintelSet' } }))
const seenAtLintel = {
  'head.support.kind': 'looseSteelAngle', 'head.support.bearing': '6 in', 'head.support.section': 'L5x3-1/2x5/16', 'head.support.material': 'steel', 'head.support.protection': 'hotDipGalvanized',
} as const

describe('a sign-off', () => {
  const signOff = (last: number, reason?: string) => ({ ...about(last, '2026-03-02T11:00:00Z'), signOff: { holdPoint: 'lintelSet', ...(reason === undefined ? {} : { reason }) } })

  test('needs every mandatory rule to be decided and met, or a reason', async () => {
    const { answers } = await project([design], [signOff(61)], [signOff(62, 'lintel to be replaced on Friday')])
    expect(answers[1]?.results).toMatchObject([{ outcome: 'refused', problems: [{ code: 'notReady', pointer: '/signOff/reason', detail: expect.stringContaining('lintel.bearing-length') as string }] }])
    expect(answers[2]).toMatchObject({ results: [{ outcome: 'recorded' }], openings: [{ standing: { holdPoint: 'lintelSet' } }] })
  })

  test('keeps what was known when it was given, in the chain of the journal, and tells whether it would still be given', async () => {
    const { record, path } = await project([design], [...lintelSeen(600), bearing(63, 'left', '3 1/2 in', '2026-03-02T10:00:00Z')], [signOff(64, 'seen by the engineer')], [bearing(65, 'left', '6 in', '2026-03-02T10:30:00Z')])
    const [given] = (await record()).signOffs
    expect(given).toMatchObject({ holdPoint: 'lintelSet', reason: 'seen by the engineer', ground: { ready: false, notMet: ['lintel.bearing-length'] } })
    expect(given?.ground?.outcomes).toContainEqual({ rule: 'lintel.bearing-length', member: 'left', outcome: 'fail' })
    const journal = bodyOf(operations.readJournal, await read(`${path}/journal`))
    expect(journal.holds).toBe(true)
    expect(journal.items.filter(({ judged }) => judged !== null).map(({ kind, judged }) => [kind, JSON.parse(judged ?? '') as unknown])).toEqual([['signOff', given?.ground]])
  })

  test('goes with what is seen in the same posting, whatever the order, and not with what is refused in it', async () => {
    const together = await project([design], [signOff(66), ...lintelSeen(660)])
    const [asked] = together.answers[1]?.results ?? []
    const left = asked?.problems[0]?.detail ?? ''
    expect(left).not.toContain('lintel.bearing-length')
    const stale = { ...about(67), design: { description: window } }
    const refused = await project([bearing(68, 'left', '6 in')], [signOff(69), { ...stale, design: { ...stale.design, replaces: 'sha256:none' } }])
    expect(refused.answers[1]?.results.map(({ problems }) => problems[0]?.detail)).toEqual([
      'The opening is not described far enough to be evaluated. Say why it is signed off all the same.',
      'There is no design to replace; leave it out for the first.',
    ])
  })

  test('that is withdrawn no longer counts', async () => {
    const mistaken = signOff(70, 'by mistake')
    const { record, own, path } = await project([design], [mistaken])
    await send(`${path}/entries`, { entries: [own({ ...about(71), correction: { entry: own(mistaken).id, reason: 'another window was meant' } })] })
    const { signOffs, entries } = await record()
    expect(signOffs).toEqual([])
    expect(entries.map(({ kind }) => kind)).toEqual(['design', 'signOff', 'correction'])
  })
})

describe('a waiver', () => {
  const waiver = (last: number, expires: string | null) => ({
    ...about(last),
    waiver: { rule: 'lintel.bearing-length', kind: 'modification', grantedBy: 'building official', instrument: { kind: 'notice', number: 'M-17', adopted: '2026-03-01' }, expires, conditions: 'bearing plate under the left end' },
  })
  const short = bearing(72, 'left', '3 1/2 in')

  test('leaves the finding as it is, and counts in what was granted, until it runs out', async () => {
    const inForce = await project([design, short, waiver(73, '2026-12-31')])
    expect(inForce.answers[0]?.openings[0]?.standing).toMatchObject({ verdict: 'fail', verdictAsGranted: 'incomplete', notMet: ['lintel.bearing-length'], waived: ['lintel.bearing-length'] })
    expect((await inForce.record()).nonConformances).toMatchObject([{ rule: 'lintel.bearing-length', status: 'new', state: 'waived', grant: { inForce: true, conditions: 'bearing plate under the left end' } }])
    const runOut = await project([design, short, waiver(74, '2026-01-31')])
    expect(runOut.answers[0]?.openings[0]?.standing).toMatchObject({ verdict: 'fail', verdictAsGranted: 'fail', waived: [] })
    expect((await runOut.record()).grants).toMatchObject([{ rule: 'lintel.bearing-length', inForce: false, expires: '2026-01-31' }])
  })

  test('that is withdrawn covers nothing', async () => {
    const granted = waiver(75, null)
    const { record, own, path } = await project([design, short, granted])
    await send(`${path}/entries`, { entries: [own({ ...about(76), correction: { entry: own(granted).id, reason: 'revoked' } })] })
    expect((await record()).grants).toEqual([])
  })
})

describe('a non-conformance', () => {
  const short = bearing(81, 'left', '3 1/2 in', '2026-03-02T10:00:00Z')
  const remedy = { ...about(82), remedy: { rule: 'lintel.bearing-length', member: 'left', work: 'longer angle', due: '2026-03-09' } }
  const verified = (last: number, result: string) => ({ ...about(last), verification: { rule: 'lintel.bearing-length', member: 'left', result, holdPoint: 'lintelSet' } })
  const mended = bearing(85, 'left', '6 in', '2026-03-09T10:00:00Z')

  test('goes from open to settled by what is put on record, and only a reading settles it', async () => {
    const states = async (...batches: readonly (readonly object[])[]) => {
      const { record } = await project([design], [short], ...batches)
      return (await record()).nonConformances.map(({ state }) => state)
    }
    expect(await states()).toEqual(['open'])
    expect(await states([remedy])).toEqual(['remedyChosen'])
    expect(await states([remedy], [verified(83, 'notMended')])).toEqual(['notMended'])
    expect(await states([remedy], [verified(84, 'mended')])).toEqual(['saidMended'])
    expect(await states([remedy], [verified(84, 'mended')], [mended])).toEqual(['settled'])
  })

  test('names the remedy for before the cover-up, and after it the other', async () => {
    const { record, own, path } = await project([design], [short])
    const [open] = (await record()).nonConformances
    expect(open).toMatchObject({ measured: '3 1/2 in', covered: false, force: 'mandatory' })
    const later = { ...about(86), observation: { fact: 'head.flashing.present', value: true, method: 'examine', holdPoint: 'headFlashing' } }
    await send(`${path}/entries`, { entries: [own(later)] })
    const [hidden] = (await record()).nonConformances
    expect(hidden?.covered).toBe(true)
    expect(hidden?.remedy).not.toBe(open?.remedy)
    expect(hidden?.cautions.length).toBeGreaterThan(0)
  })
})

describe('a correction', () => {
  test('takes out a reading, and neither a design nor another correction', async () => {
    const { answers, own, path } = await project([design], [{ ...about(87), correction: { entry: id(88), reason: 'arrives before what it corrects' } }])
    expect(answers[1]?.results).toMatchObject([{ outcome: 'recorded' }])
    const wrong = (last: number, target: object) => own({ ...about(last), correction: { entry: own(target).id, reason: 'no' } })
    const posted = await send(`${path}/entries`, { entries: [wrong(89, design), wrong(90, { id: id(87) })] })
    expect(bodyOf(operations.postEntries, posted).results.map(({ problems }) => problems.map(({ pointer }) => pointer))).toEqual([['/correction/entry'], ['/correction/entry']])
  })
})

describe('two that are faster than each other', () => {
  const revision = (last: number, replaces: string, width: number) => ({ ...about(last), design: { description: { ...window, opening: { ...window.opening, width } }, replaces } })

  /** With an append of its own for as long as the work takes. */
  async function appending<T>(own: (append: typeof records.appendEntries) => typeof records.appendEntries, work: () => Promise<T>): Promise<T> {
    const append = records.appendEntries.bind(records)
    records.appendEntries = own(append)
    try {
      return await work()
    } finally {
      records.appendEntries = append
    }
  }

  test('of two revisions of one design that were judged at the same instant, one is taken', async () => {
    const { path, record, own } = await project([design])
    const replaces = (await record()).designVersion ?? ''
    let waiting = 0
    let letGo: () => void = () => undefined
    const bothJudged = new Promise<void>((resolve) => { letGo = resolve })
    const both = await appending(
      (append) => async (...given) => {
        waiting += 1
        if (waiting === 2) letGo()
        if (waiting <= 2) await bothJudged
        return append(...given)
      },
      () => Promise.all([60, 72].map((width, index) => send(`${path}/entries`, { entries: [own(revision(91 + index, replaces, width))] }).then((response) => bodyOf(operations.postEntries, response)))),
    )
    // Both, and the slower one anew
    expect(waiting).toBe(3)
    const results = both.flatMap((answer) => answer.results)
    expect(results.map(({ outcome }) => outcome).toSorted()).toEqual(['recorded', 'refused'])
    expect(results.flatMap(({ problems }) => problems)).toMatchObject([{ code: 'versionStale' }])
  })

  test('what is always overtaken is refused as a whole, and nothing of it is taken', async () => {
    const { path, own } = await project([design])
    const refused = await appending(() => async () => ({ ok: false, reason: 'grown' }), async () => send(`${path}/entries`, { entries: [own(bearing(93, 'left', '6 in'))] }))
    expect(refused.body).toMatchObject({ status: 409, code: 'recordBusy' })
    expect(bodyOf(operations.readJournal, await read(`${path}/journal`)).items).toHaveLength(1)
  })
})

test('GraphQL puts on record and reads the same', async () => {
  const { made } = await project()
  const own = { ...about(71), id: id(9_071) }
  const posted = await graphql('mutation($project: String!, $entries: [EntryInput!]!) { postEntries(project: $project, entries: $entries) { results { outcome sequence } openings { standing { opening holdPoint } } } }',
    { project: made.project, entries: [{ ...own, observation: { fact: 'sill.slope', value: '10 deg', method: 'examine', holdPoint: 'jambRise' } }] })
  expect(posted.body).toEqual({ data: { postEntries: { results: [{ outcome: 'recorded', sequence: 1 }], openings: [{ standing: { opening: 'w-1', holdPoint: 'jambRise' } }] } } })
  const kept = await graphql('query($project: String!) { openingRecord(project: $project, opening: "w-1") { facts { fact governs { value by } } } }', { project: made.project })
  expect(kept.body).toEqual({ data: { openingRecord: { facts: [{ fact: 'sill.slope', governs: { value: '10 deg', by: 'inspector' } }] } } })
})
