import { describe, expect, test } from 'vitest'
import { operations } from '../../src/operations/index.ts'
import { questionsIn, sectionsIn, type FormDocument } from '../form/forms.ts'
import { bodyOf, jurisdictionService, problemIn } from './jurisdiction.ts'

const { http, tokenFor } = await jurisdictionService()
const inspector = await tokenFor({ kind: 'record' })
const clerk = await tokenFor({ kind: 'amend', jurisdiction: 'us-xa-101' })

const id = (last: number) => `0199c000-0000-7000-8000-${String(last).padStart(12, '0')}`
const send = (path: string, body: unknown, token = inspector) => http.post(path).set('authorization', `Bearer ${token}`).send(body as object)
const read = (path: string, token = inspector) => http.get(path).set('authorization', `Bearer ${token}`)

const project = id(1)
const opening = `/v1/projects/${project}/openings/w-1`
await send('/v1/projects', { id: project, title: 'Invented house', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' })
const description = { reference: 'W-104', lengthUnit: 'in', opening: { kind: 'window', width: 48, height: 60 }, head: { support: { kind: 'looseSteelAngle', bearing: [6, '6 1/2'] }, flashing: { present: true, material: 'pvc' } } }
await send(`/v1/projects/${project}/entries`, { entries: [{ id: id(2), opening: 'w-1', at: '2026-03-02T08:00:00Z', by: 'architect', design: { description } }] })

const filling = (last: number, answers: object, more: object = {}) => ({ id: id(last), at: '2026-03-03T09:00:00Z', by: 'inspector', holdPoint: 'lintelSet', method: 'examine', answers, ...more })
const post = (body: unknown, path = `${opening}/form-answers`) => send(path, body)
const form = async (holdPoint: string, path = opening) => bodyOf(operations.readOpeningForm, await read(`${path}/form?holdPoint=${holdPoint}`))
const documentOf = async (holdPoint: string) => (await form(holdPoint)).schema as unknown as FormDocument
const outcomes = (response: { body: unknown }) => bodyOf(operations.postFormAnswers, response).results.map(({ question, outcome, problems }) => [question, outcome, ...problems.map(({ code, pointer }) => `${code} ${pointer}`)].join(' '))

describe('the form of an opening on record', () => {
  test('takes its place from the project and its title from the opening, and has beside each question what was drawn', async () => {
    const { title, holdPoint, questions, id: formId, schema } = await form('lintelSet')
    expect({ title, holdPoint, formId }).toEqual({ title: 'Lintel on its bearings: W-104', holdPoint: 'lintelSet', formId: schema['$id'] })
    const asked = Object.fromEntries(questionsIn(schema as unknown as FormDocument))
    expect(Object.keys(asked)).toHaveLength(questions)
    expect(asked['head_support_bearing_left']).toMatchObject({ 'x-drawn': '6 in', 'x-why': expect.arrayContaining(['lintel.bearing-length']) as unknown })
    expect(asked['head_support_bearing_right']).toMatchObject({ 'x-drawn': '6 1/2 in' })
    expect(schema['x-place']).toMatchObject({ jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01', adoption: 'us-xa/irc-2021' })
    const head = Object.fromEntries(questionsIn(await documentOf('headFlashing')))
    expect(head['head_flashing_present']).toMatchObject({ 'x-drawn': 'Yes' })
    expect(head['head_flashing_material']).toMatchObject({ 'x-drawn': 'PVC' })
  })

  test('is answered the same over GraphQL', async () => {
    const query = 'query($project: String!, $opening: String!) { openingForm(project: $project, opening: $opening, holdPoint: lintelSet) { id title holdPoint questions schema } }'
    const response = await http.post('/graphql').set('authorization', `Bearer ${inspector}`).send({ query, variables: { project, opening: 'w-1' } })
    expect(response.body).toEqual({ data: { openingForm: await form('lintelSet') } })
  })

  test('needs the scope, and an opening of which something is on record', async () => {
    expect((await http.get(`${opening}/form?holdPoint=lintelSet`)).status).toBe(401)
    expect((await read(`${opening}/form?holdPoint=lintelSet`, clerk)).status).toBe(403)
    expect((await read(`/v1/projects/${project}/openings/w-9/form?holdPoint=lintelSet`)).status).toBe(404)
    expect(problemIn(await read(`${opening}/form?holdPoint=lunch`)).errors).toMatchObject([{ pointer: '/holdPoint' }])
    expect(problemIn(await read(`${opening}/form`)).errors).toMatchObject([{ code: 'missingKey', pointer: '/holdPoint' }])
  })

  test('asks for what was never drawn too, and shows what was read last once it was', async () => {
    const path = `/v1/projects/${project}/openings/w-2`
    await post(filling(20, { overdue: { head_support_kind: 'Loose steel angle' }, now: { wall_loadAbove: 'No' } }, { holdPoint: 'detailReview' }), `${path}/form-answers`)
    const { title, schema } = await form('detailReview', path)
    expect(title).toMatch(/: w-2$/)
    const asked = Object.fromEntries(questionsIn(schema as unknown as FormDocument))
    expect(asked['head_support_kind']).toMatchObject({ 'x-lastRead': { value: 'Loose steel angle', at: '2026-03-03T09:00:00Z', holdPoint: 'detailReview', contradicted: false } })
    expect(asked['wall_loadAbove']).toMatchObject({ 'x-lastRead': { value: 'No' } })
    expect(asked['head_support_kind']).not.toHaveProperty('x-drawn')
    expect(questionsIn((await form('lintelSet', path)).schema as unknown as FormDocument).map(([name]) => name)).not.toContain('head_support_kind')
  })
})

describe('a filled form', () => {
  const answers = { lastChance: { head_support_bearing_left: '6 1/8 in', head_support_bearing_right: '5 1/2 in', head_support_protection: 'Hot-dip galvanized' }, note: 'Right end seen from the scaffold.' }

  test('is recorded answer by answer, with its note; what was left out stays unknown', async () => {
    const response = await post(filling(10, answers))
    expect(outcomes(response)).toEqual(['head_support_bearing_left recorded', 'head_support_bearing_right recorded', 'head_support_protection recorded'])
    expect(response.body).toMatchObject({ results: [{ fact: 'head.support.bearing', member: 'left' }, { member: 'right' }, { fact: 'head.support.protection', member: null }], openings: [{ standing: { opening: 'w-1', holdPoint: 'lintelSet', notMet: expect.arrayContaining(['lintel.bearing-length']) as unknown } }] })
    const { facts } = bodyOf(operations.readOpeningRecord, await read(opening))
    expect(facts.map(({ fact, member, governs }) => [fact, member, governs.value])).toEqual([['head.support.bearing', 'left', '6 1/8 in'], ['head.support.bearing', 'right', '5 1/2 in'], ['head.support.protection', null, 'hotDipGalvanized']])
    const { items } = bodyOf(operations.readJournal, await read(`/v1/projects/${project}/journal?first=100`))
    const noted = items.map(({ content }) => JSON.parse(content) as { note?: string; at: string }).filter(({ at }) => at === '2026-03-03T09:00:00Z').filter(({ note }) => note === answers.note)
    expect(noted).toHaveLength(3)
  })

  test('sent twice is one, with the same ids; the rest of it may come later', async () => {
    const first = await post(filling(11, { lastChance: { head_support_endGap_left: '1/2 in' } }))
    const again = await post(filling(11, { lastChance: { head_support_endGap_left: '1/2 in', head_support_endGap_right: '3/8 in' } }))
    expect(outcomes(again)).toEqual(['head_support_endGap_left alreadyRecorded', 'head_support_endGap_right recorded'])
    expect((again.body as { results: { id: string }[] }).results[0]?.id).toBe((first.body as { results: { id: string }[] }).results[0]?.id)
    const otherwise = await post(filling(11, { lastChance: { head_support_endGap_left: '5/8 in' } }))
    expect(outcomes(otherwise)).toEqual(['head_support_endGap_left refused idTaken /answers/lastChance/head_support_endGap_left'])
    expect(JSON.stringify(otherwise.body)).toContain('fill the form anew, under a new id')
  })

  test('has what cannot be taken refused where it stands, and the rest recorded', async () => {
    const sent = { lastChance: { head_support_bearing_left: 'six', head_support_longLeg: 'Diagonal', head_support_section: 'L5', head_support_length: '60' }, now: { head_suport_kind: 'Shelf angle', wall_loadAbove: 'perhaps', wall_storiesAbove: 1 } }
    expect(outcomes(await post(filling(12, sent)))).toEqual([
      'head_support_bearing_left refused unreadable /answers/lastChance/head_support_bearing_left',
      'head_support_longLeg refused notAllowed /answers/lastChance/head_support_longLeg',
      'head_support_section refused unreadable /answers/lastChance/head_support_section',
      'head_support_length refused unitMissing /answers/lastChance/head_support_length',
      'head_suport_kind refused unknownKey /answers/now/head_suport_kind',
      'wall_loadAbove refused notAllowed /answers/now/wall_loadAbove',
      'wall_storiesAbove recorded',
    ])
    expect(outcomes(await post(filling(13, { head_suport_kind: 'Shelf angle' })))).toEqual(['head_suport_kind refused unknownKey /answers/head_suport_kind'])
  })

  test('may have bare numbers where it names their unit', async () => {
    expect(outcomes(await post(filling(14, { lastChance: { head_support_length: '60' } }, { lengthUnit: 'in' })))).toEqual(['head_support_length recorded'])
    expect(bodyOf(operations.readOpeningRecord, await read(opening)).facts.find(({ fact }) => fact === 'head.support.length')?.governs.value).toBe('60 in')
  })

  test('is refused as a whole only where nothing of it could be recorded', async () => {
    const wrong = problemIn(await post({ ...filling(15, answers), id: 'no-uuid', at: 'yesterday', holdPoint: 'lunch', method: 'guess' }))
    expect(wrong.errors.map(({ pointer }) => pointer)).toEqual(['/id', '/at', '/holdPoint', '/method'])
    expect(problemIn(await post(filling(16, {}))).errors).toMatchObject([{ code: 'missingKey', pointer: '/answers' }])
    expect(problemIn(await post(filling(16, { note: 'Nothing to be seen.', now: { wall_loadAbove: '' } }))).errors).toMatchObject([{ pointer: '/answers' }])
    expect(problemIn(await post(filling(16, { ...answers, note: 'x'.repeat(2_001) }))).errors).toMatchObject([{ pointer: '/answers/note' }])
    expect(problemIn(await post({ ...filling(16, {}), answers: ['yes'] })).errors).toMatchObject([{ pointer: '/answers', detail: 'must be an object with the answers by question' }])
    expect(problemIn(await post(filling(16, Object.fromEntries(Array.from({ length: 501 }, (_, index) => [`q${index}`, 'Yes']))))).errors).toMatchObject([{ code: 'outOfRange', pointer: '/answers' }])
    expect(problemIn(await post([1])).errors.map(({ pointer }) => pointer)).toContain('/answers')
    expect((await send(`${opening}/form-answers`, filling(16, answers), clerk)).status).toBe(403)
    expect((await post(filling(16, answers), `/v1/projects/${id(9)}/openings/w-1/form-answers`)).status).toBe(404)
    expect((await post(filling(16, { nothing: 'x' }), `/v1/projects/${id(9)}/openings/w-1/form-answers`)).status).toBe(404)
  })

  test('is taken over GraphQL too', async () => {
    const query = 'mutation($project: String!, $id: String!, $answers: FormAnswers!) { postFormAnswers(project: $project, opening: "w-1", id: $id, at: "2026-03-03T10:00:00Z", by: "inspector", holdPoint: lintelSet, method: examine, answers: $answers) { results { question outcome } openings { standing { opening } } } }'
    const response = await http.post('/graphql').set('authorization', `Bearer ${inspector}`).send({ query, variables: { project, id: id(17), answers: { lastChance: { head_support_gapToFrame: '3/8 in' } } } })
    expect(response.body).toEqual({ data: { postFormAnswers: { results: [{ question: 'head_support_gapToFrame', outcome: 'recorded' }], openings: [{ standing: { opening: 'w-1' } }] } } })
  })

  test('answers what its own form asked, whatever the form', async () => {
    const schema = await documentOf('sillFlashing')
    const given = Object.fromEntries(Object.entries(sectionsIn(schema)).map(([section, names]) => [section, Object.fromEntries(names.map((name) => [name, answerTo(Object.fromEntries(questionsIn(schema))[name])]))]))
    const told = outcomes(await post(filling(18, given, { holdPoint: 'sillFlashing' })))
    expect(told.length).toBeGreaterThan(20)
    expect(told.filter((line) => !line.endsWith(' recorded'))).toEqual([])
  })
})

/** An answer that the schema of a question itself offers. */
function answerTo(question: { readonly enum?: readonly string[]; readonly $ref?: string; readonly type?: string } | undefined): unknown {
  if (question?.enum) return question.enum.at(-1)
  if (question?.type === 'integer') return 1
  const examples: Readonly<Record<string, string>> = { length: '3 in', lengthOrNegative: '3 in', section: 'L5x3-1/2x5/16', angleOrNegative: '15 deg', arealLoad: '40 psf', lineLoad: '300 lbf/ft', force: '500 lbf', stress: '36 ksi' }
  return examples[question?.$ref?.replace('#/$defs/', '') ?? ''] ?? `no example for ${question?.$ref}`
}
