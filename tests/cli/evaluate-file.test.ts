import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { evaluateFile } from '../../src/cli/evaluate-file.ts'
import type { Evaluation } from '../../src/evaluation/document.ts'
import { client } from '../api/client.ts'
import { root } from './compiled.ts'

const { http, deps } = await client()
const folder = mkdtempSync(join(tmpdir(), 'openings-'))
afterAll(() => { rmSync(folder, { recursive: true }) })

const city = { jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' }
const fixtures = readdirSync(join(root, 'tests/fixtures/openings')).map((file) => join(root, 'tests/fixtures/openings', file))
/** A wall in which nothing is missing, from the demonstration building. */
const sound = fileOf('sound.yaml', JSON.stringify([...deps.catalog.buildings.values()][0]?.openings[0]?.opening))

function fileOf(name: string, text: string): string {
  const file = join(folder, name)
  writeFileSync(file, text)
  return file
}

describe.each([...fixtures, sound])('%s', (file) => {
  test('is answered as JSON as over REST, and ends by its verdict', async () => {
    const { text, exitCode } = await evaluateFile(file, { ...city, publication: 'irc', json: true }, deps.catalog)
    const answered = JSON.parse(text) as Evaluation
    const { body } = await http.post('/v1/evaluations').send({ ...city, publication: 'irc', opening: parse(readFileSync(file, 'utf8')) as unknown }).expect(200) as { body: Evaluation }
    expect({ ...answered, id: '', evaluatedAt: '' }).toEqual({ ...body, id: '', evaluatedAt: '' })
    expect(exitCode).toBe(body.summary.verdict === 'fail' ? 1 : 0)
  })

  test('is answered as a page of text with the same exit code', async () => {
    const json = await evaluateFile(file, { ...city, json: true }, deps.catalog)
    const page = await evaluateFile(file, city, deps.catalog)
    expect(page.exitCode).toBe(json.exitCode)
    const { summary, notice } = JSON.parse(json.text) as Evaluation
    expect(page.text.split('\n')[0]).toContain(summary.verdict.toUpperCase())
    expect(page.text.replace(/\s+/g, ' ').trim().endsWith(notice)).toBe(true)
  })
})

test('the exit code is 0 for a sound wall and 1 for one with a mandatory failure', async () => {
  expect((await evaluateFile(sound, city, deps.catalog)).exitCode).toBe(0)
  const short = fileOf('short.yaml', 'opening: { kind: window, width: 4 ft, height: 4 ft }\nhead: { support: { kind: looseSteelAngle, bearing: [4 in, 3 1/2 in] } }')
  expect((await evaluateFile(short, city, deps.catalog)).exitCode).toBe(1)
})

describe('what cannot be evaluated ends with 2 and says why', () => {
  const opening = fileOf('plain.yaml', 'opening: { kind: window, width: 4 ft, height: 4 ft }')

  test.each([
    ['a file that is not there', join(folder, 'none.yaml'), city, ['none.yaml', 'no such file']],
    ['a folder', folder, city, [folder, 'directory']],
    ['a file that is not YAML', fileOf('bad.yaml', 'opening: { kind: window'), city, ['bad.yaml', 'line 1']],
    ['an empty file', fileOf('empty.yaml', ''), city, ['/opening is required']],
    ['a file that is a list', fileOf('list.yaml', '- opening'), city, ['/opening must be an object']],
    ['an opening with two mistakes', fileOf('two.yaml', 'opening: { kind: window, width: 48, height: 4 ft }\nhed: {}'), city, ['/opening/opening/width "48"', '/opening/hed "hed" is not known here. Did you mean "head"?']],
    ['no place', opening, {}, ['/jurisdiction Say where the opening is']],
    ['a date that is none', opening, { ...city, asOf: 'May' }, ['/asOf must be a date']],
    ['a hold point that is none', opening, { ...city, holdPoint: 'lunch' }, ['/holdPoint must be one of']],
    ['an edition that is none', opening, { edition: 'irc-1066' }, ['/edition "irc-1066" is not a code edition of the catalog']],
  ])('%s', async (_, file, options, parts) => {
    const { text, exitCode } = await evaluateFile(file, options, deps.catalog)
    expect(exitCode).toBe(2)
    for (const part of parts) expect(text).toContain(part)
    expect(text).not.toMatch(/\n {4}at /)
  })
})

test('what the work has hidden counts as covered', async () => {
  const { text } = await evaluateFile(fileOf('late.yaml', 'opening: { kind: window, width: 4 ft, height: 4 ft }'), { ...city, holdPoint: 'handover', json: true }, deps.catalog)
  const { holdPoint, findings } = JSON.parse(text) as Evaluation
  expect(holdPoint).toBe('handover')
  expect(findings.filter(({ reason }) => reason === 'covered')).not.toHaveLength(0)
})
