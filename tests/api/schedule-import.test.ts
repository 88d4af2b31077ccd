import { describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { bodyOf, problemIn, jurisdictionService } from './jurisdiction.ts'
import { id, mapping, projectsOf, quarryWalk } from './schedule.ts'

const { http, tokenFor } = await jurisdictionService()
const { send, read, graphql, make } = projectsOf(http, await tokenFor({ kind: 'record' }))

const plain = { columns: [{ column: 'Kind', fact: 'opening.kind' }, { column: 'Width', fact: 'opening.width' }, { column: 'Height', fact: 'opening.height' }], forEveryRow: null }
const told = (problems: readonly { row: number; column: string | null; code: string }[]) => problems.map(({ row, column, code }) => [row, column, code])
let last = 100
const project = () => make((last += 1))

describe('a schedule', () => {
  test('becomes the designs of its openings, and the same import sent twice is one', async () => {
    const { take, path } = await project()
    const first = await take(quarryWalk)
    expect(first).toMatchObject({ outcome: 'taken', rows: 40, openings: 40, counts: { recorded: 40 }, problems: [], unreadColumns: ['Remarks'] })
    expect(first.results[0]).toMatchObject({ row: 2, opening: 'W-101', reference: 'W-101', outcome: 'recorded', verdict: 'fail' })
    const again = await take(quarryWalk)
    expect(again).toMatchObject({ outcome: 'taken', counts: { recorded: 0, alreadyRecorded: 40 } })
    expect(again.results.map(({ entry }) => entry)).toEqual(first.results.map(({ entry }) => entry))
    const journal = bodyOf(operations.readJournal, await read(`${path}/journal?first=1000`))
    expect(journal.items).toHaveLength(40)
    expect(JSON.parse(journal.items[3]?.content ?? '')).toMatchObject({
      opening: 'W-104', at: mapping.at, by: 'design-office',
      design: { description: { reference: 'W-104', lengthUnit: 'in', opening: { kind: 'window', width: `6'-0"`, height: `5'-0"` }, head: { support: { kind: 'looseSteelAngle', section: 'L5x3-1/2x5/16', bearing: ['6', '6'] } } } },
    })
  })

  test('of another import is the same where nothing changed, and revises only when asked', async () => {
    const { take, path } = await project()
    await take(quarryWalk)
    const wider = quarryWalk.replace(`W-102,DH,"4'-0"""`, `W-102,DH,"4'-8"""`)
    const held = await take(wider, { import: id(901) })
    expect(held).toMatchObject({ outcome: 'nothingTaken', counts: { unchanged: 39, refused: 1 }, problems: [{ row: 3, column: null, code: 'designExists' }] })
    const revised = await take(wider, { import: id(901), revise: true })
    expect(revised).toMatchObject({ outcome: 'taken', counts: { recorded: 1, unchanged: 39 } })
    const evaluated = bodyOf(operations.evaluateRecordedOpening, await read(`${path}/openings/W-102/evaluation?basis=asDesigned`))
    expect(evaluated.subject.facts.find(({ fact }) => fact === 'opening.width')?.given).toBe(`4'-8"`)
    expect(await take(wider, { import: id(901), revise: true })).toMatchObject({ counts: { recorded: 0, alreadyRecorded: 1, unchanged: 39 } })
    expect(await take(wider, { import: id(900), revise: true })).toMatchObject({ outcome: 'takenInPart', counts: { alreadyRecorded: 39, refused: 1 }, problems: [{ row: 3, code: 'idTaken' }] })
  })

  test('with a quantity makes so many openings, each with a number', async () => {
    const { take } = await project()
    const answer = await take('Mark,Qty,Kind,Width,Height\nA 1/b (x),3,window,48,60\nB,1,door,40,84\n', { ...plain, quantityColumn: 'Qty' })
    expect(answer.results.map(({ row, opening, reference }) => [row, opening, reference])).toEqual([[2, 'A-1-b-x-1', 'A 1/b (x)-1'], [2, 'A-1-b-x-2', 'A 1/b (x)-2'], [2, 'A-1-b-x-3', 'A 1/b (x)-3'], [3, 'B-1', 'B-1']])
  })

  test('only checked puts nothing on record', async () => {
    const { take, path } = await project()
    expect(await take(quarryWalk, { validateOnly: true })).toMatchObject({ outcome: 'checked', counts: { heldBack: 40 }, problemCount: 0 })
    expect(bodyOf(operations.readJournal, await read(`${path}/journal`)).items).toEqual([])
  })
})

describe('a nasty sheet', () => {
  const sheet = '\uFEFF"Window schedule, revision B";;;;\rMark;Kind;" Clear\nwidth ";Height;Width\rA;window;4\'-0";60;x\rB;windoww;48;;x\r;;;;\r"C";door;4O in;84;"a ""b""; c"\rA;vent;12;1,5;x\rD;window;48;60\r;window;48;60;x\rE;window;48 mm;60;x\r'
  const nasty = { ...plain, headerRow: 2, columns: [{ column: 'kind', fact: 'opening.kind' }, { column: 'clear width', fact: 'opening.width' }, { column: '4', fact: 'opening.height' }] }
  const expected = [
    [3, 'Mark', 'duplicate'], [4, 'Kind', 'notAllowed'], [4, 'Height', 'missingKey'], [6, 'Clear width', 'unreadable'], [7, 'Height', 'decimalComma'], [7, 'Mark', 'duplicate'],
    [8, null, 'cellCount'], [9, 'Mark', 'missingKey'], [10, 'Clear width', 'notBelievable'],
  ]

  test('with a mark for the byte order, line ends of old, semicolons and quotes is told of cell by cell, and nothing is taken', async () => {
    const { take, path } = await project()
    const answer = await take(sheet, nasty)
    expect(told(answer.problems)).toEqual(expected)
    expect(answer).toMatchObject({ outcome: 'nothingTaken', rows: 7, wrongRows: 7, problemCount: expected.length, unreadColumns: ['Width'] })
    expect(answer.problems[1]?.detail).toBe('"windoww" is none of the choices of "Kind of opening": window, door, slidingDoor, garageDoor, louver, vent, recess. Did you mean "window"? Say in the "values" of this column what it means.')
    expect(answer.problems[0]?.detail).toBe('"A" stands in row 7 as well.')
    expect(bodyOf(operations.readJournal, await read(`${path}/journal`)).items).toEqual([])
  })

  test('gives its good rows when they are asked for, and says which', async () => {
    const { take } = await project()
    const answer = await take(`${sheet}F;Window;48;60;"=1+1"\r`, { ...nasty, takeGoodRows: true })
    expect(told(answer.problems)).toEqual(expected)
    expect(answer).toMatchObject({ outcome: 'takenInPart', counts: { recorded: 1, refused: 6, heldBack: 0 } })
    expect(answer.results.filter(({ outcome }) => outcome === 'recorded').map(({ row, opening }) => [row, opening])).toEqual([[11, 'F']])
  })

  test.each([
    ['is empty', '\uFEFF \n', 'missingKey', 'The sheet is empty.'],
    ['has headers alone', 'Mark,Kind,Width,Height\n,,,\n', 'missingKey', 'The sheet has no row below the headers in row 1.'],
    ['has a quote that is never closed', 'Mark,Kind,Width,Height\nA,window,"48,60\nB,window,48,60\n', 'unreadable', 'A cell begins with a quote that is never closed. Close it, and write a quote within a cell that is in quotes twice.'],
    ['is too long', `Mark,Kind,Width,Height\n${'A,window,48,60\n'.repeat(10_001)}`, 'outOfRange', 'The sheet has more than 10000 rows below the headers. Send it in parts.'],
  ])('that %s is refused', async (_, csv, code, detail) => {
    expect((await (await project()).refuse(csv, plain)).errors).toEqual([{ code, pointer: '/csv', detail }])
  })

  test('with one delimiter said is read by that', async () => {
    const { take } = await project()
    const csv = 'Mark|Kind|Width|Height\nA,1|window|48|60\n'
    expect((await take(csv, { ...plain, delimiter: '|' })).results).toMatchObject([{ opening: 'A-1', reference: 'A,1' }])
  })
})

describe('a mapping', () => {
  test('is refused with everything that is wrong in it', async () => {
    const { refuse } = await project()
    const { errors } = await refuse('Mark,Kind,Widht,Width,width,Height\nA,window,1,48,1,60\n', {
      markColumn: 'Marc', quantityColumn: 'Number',
      columns: [
        { column: 'WIDTH', fact: 'opening.width' }, { column: 'Height', fact: 'opening.hight' }, { column: 'Height', fact: 'wall.airSpace', end: 'left' },
        { column: 'Kind', fact: 'head.support.kind', values: [{ cell: 'LA', value: 'looseAngle' }] },
      ],
      forEveryRow: [{ fact: 'opening.width', value: 48 }, { fact: 'head.support.bearing', end: 'left', value: 'six' }],
    })
    expect(errors.map(({ code, pointer }) => `${code} ${pointer}`).toSorted()).toEqual([
      'ambiguous /columns/0/column', 'duplicate /forEveryRow/0/fact', 'missingKey /columns', 'missingKey /columns', 'notAllowed /columns/2/end', 'notAllowed /columns/3/values/0/value',
      'unknownColumn /markColumn', 'unknownColumn /quantityColumn', 'unknownFact /columns/1/fact', 'unreadable /forEveryRow/1/value',
    ])
    expect(errors.find(({ pointer }) => pointer === '/markColumn')?.detail).toContain('Did you mean "Mark"?')
    expect(errors.find(({ pointer }) => pointer === '/columns/1/fact')?.detail).toContain('Did you mean "opening.height"?')
    expect(errors.find(({ code }) => code === 'ambiguous')?.detail).toBe('"WIDTH" stands over columns 4, 5. Name the one that is meant by its number.')
  })

  test('may leave a word of the sheet unknown', async () => {
    const { take, path } = await project()
    await take('Mark,Kind,Width,Height,Air\nA,window,48,60,TBD\n', { ...plain, columns: [...plain.columns, { column: 'Air', fact: 'wall.airSpace', values: [{ cell: 'tbd' }] }] })
    const { subject } = bodyOf(operations.evaluateRecordedOpening, await read(`${path}/openings/A/evaluation?basis=asDesigned`))
    expect(subject.facts.map(({ fact }) => fact)).not.toContain('wall.airSpace')
  })
})

test('needs a token that may record, and a project', async () => {
  const { path } = await project()
  const body = { ...mapping, import: id(900), csv: quarryWalk }
  expect(problemIn(await http.post(`${path}/schedule-imports`).send(body)).code).toBe('unauthenticated')
  expect((await send(`/v1/projects/${id(99)}/schedule-imports`, body)).status).toBe(404)
})

test('GraphQL takes and refuses the same', async () => {
  const { project: number, take } = await project()
  const query = 'mutation($project: String!, $import: String!, $csv: String!, $columns: [ScheduleColumnInput!]!) { importSchedule(project: $project, import: $import, csv: $csv, markColumn: "Mark", lengthUnit: in, columns: $columns, at: "2026-03-02T09:00:00Z", by: "office") { outcome counts { recorded } problems { row column code } results { opening outcome } } }'
  const variables = { project: number, import: id(950), columns: plain.columns }
  const good = await graphql(query, { ...variables, csv: 'Mark,Kind,Width,Height\nA,window,48,60\n' })
  expect(good.body).toEqual({ data: { importSchedule: { outcome: 'taken', counts: { recorded: 1 }, problems: [], results: [{ opening: 'A', outcome: 'recorded' }] } } })
  const bad = await graphql(query, { ...variables, csv: 'Mark,Kind,Width,Height\nB,window,48,sixty\n' })
  expect(bad.body).toMatchObject({ data: { importSchedule: { outcome: 'nothingTaken', problems: [{ row: 2, column: 'Height', code: 'unreadable' }] } } })
  expect(await take('Mark,Kind,Width,Height\nA,window,48,60\n', { ...plain, import: id(950), by: 'office' })).toMatchObject({ outcome: 'taken', counts: { recorded: 0, alreadyRecorded: 1 } })
})
