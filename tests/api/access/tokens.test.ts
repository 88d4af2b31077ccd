import { describe, expect, test } from 'vitest'
import { operations } from '../../../src/operations/index.ts'
import { scopesIn, wordOf } from '../../../src/operations/scope-word.ts'
import { bodyOf, jurisdictionService, problemIn } from '../jurisdiction.ts'
import { otherProject, project } from './decisions.ts'

const { http, tokenFor } = await jurisdictionService()
const [administrator, recorder] = [await tokenFor({ kind: 'administer' }), await tokenFor({ kind: 'record' })]
const make = (body: object) => http.post('/v1/tokens').set('authorization', `Bearer ${administrator}`).send(body)
await http.post('/v1/projects').set('authorization', `Bearer ${recorder}`).send({ id: project, title: 'House', jurisdiction: 'us-xa-101', asOf: '2026-03-01' })

describe('a token that is made', () => {
  test('for one project says so, and reaches that one', async () => {
    const { token, secret } = bodyOf(operations.createToken, await make({ title: 'phone', projects: [project] }).expect(201))
    expect(token).toMatchObject({ record: false, projects: [project], amend: [], administer: false })
    const listed = await http.get('/v1/projects').set('authorization', `Bearer ${secret}`).expect(200)
    expect(bodyOf(operations.listProjects, listed).items.map((one) => one.project)).toEqual([project])
  })

  test('is refused with everything that is wrong at once', async () => {
    expect(problemIn(await make({ title: 'x', record: true, projects: [otherProject], amend: ['us-xa-101', 'nowhere'] })).errors.map(({ pointer }) => pointer)).toEqual(['/amend/1', '/record', '/projects/0'])
    expect(problemIn(await make({ title: 'x', projects: [otherProject] }))).toMatchObject({ status: 422, code: 'invalidInput', errors: [{ pointer: '/projects/0', detail: expect.stringContaining(otherProject) as string }] })
  })
})

describe('a scope as a word', () => {
  test.each([
    ['wythe:evaluate', { kind: 'evaluate' }], ['wythe:record', { kind: 'record' }], [`wythe:record:${project}`, { kind: 'record', project }],
    ['wythe:amend:us-xa-101', { kind: 'amend', jurisdiction: 'us-xa-101' }], ['wythe:administer', { kind: 'administer' }],
  ])('%s is read', (word, scope) => {
    expect(scopesIn(word)).toEqual([scope])
    expect(scopesIn(`openid ${word} email`)).toEqual([scope])
    const [, kind, object] = word.split(':')
    expect(wordOf(kind as 'record', object)).toBe(word)
  })

  test.each(['', 'wythe:', 'wythe:amend', 'wythe:amend:', 'wythe:record:', 'wythe:record: ', 'wythe:record:a:b', 'wythe:record:*', 'wythe:administer:x', 'wythe:evaluate:', 'wythe:other', 'record', ' wythe', 'WYTHE:RECORD', 'wythe:__proto__'])('%j grants nothing', (word) => {
    expect(scopesIn(word)).toEqual([])
  })
})
