import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import type { Evaluation } from '../../src/evaluation/document.ts'
import { runCompiled } from './run-compiled.ts'

const wythe = (...args: readonly string[]) => runCompiled('cli/wythe.js', args)
const end = ['--jurisdiction', 'us-xa-101-2400000', '--as-of', '2026-03-01']
const openings = 'tests/fixtures/openings'

const folder = mkdtempSync(join(tmpdir(), 'wythe-'))
const shortBearing = join(folder, 'short-bearing.json')
writeFileSync(shortBearing, JSON.stringify({ opening: { kind: 'window', width: '4 ft', height: '4 ft' }, head: { support: { kind: 'looseSteelAngle', bearing: '3 in' } } }))
afterAll(() => { rmSync(folder, { recursive: true }) })

describe('the exit code is', () => {
  test('0 when nothing mandatory fails, with the page on stdout', async () => {
    const { code, stdout, stderr } = await wythe('evaluate', `${openings}/half-seen-head.yaml`, '--edition', 'irc-2021', '--as-of', '2026-03-01')
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(stdout).toContain('Linden Close 12, west bedroom: ')
    expect(stdout).toContain('published text alone on 2026-03-01: irc-2021')
  })

  test('1 when something mandatory fails, with all of the evaluation on stdout', async () => {
    const { code, stdout, stderr } = await wythe('evaluate', shortBearing, ...end, '--json')
    expect({ code, stderr }).toEqual({ code: 1, stderr: '' })
    const { summary, jurisdiction, asOf } = JSON.parse(stdout) as Evaluation
    expect({ verdict: summary.verdict, jurisdiction, asOf }).toEqual({ verdict: 'fail', jurisdiction: 'us-xa-101-2400000', asOf: '2026-03-01' })
  })

  test('1 when the catalog is refused, whatever was asked', async () => {
    const { code, stdout } = await wythe('evaluate', `${openings}/half-seen-head.yaml`, ...end, '--catalog', 'tests/fixtures/openings')
    expect(code).toBe(1)
    expect(stdout).toContain('The catalog is not put to use.')
  })

  test.each([
    ['nothing', []],
    ['a command that is none', ['inspect', 'x']],
    ['a command without its subject', ['evaluate']],
    ['an option that is none', ['evaluate', 'x.yaml', '--colour', 'red']],
    ['an option without its value', ['evaluate', 'x.yaml', '--edition']],
  ])('2 for %s, with the usage on stderr', async (_, args) => {
    const { code, stdout, stderr } = await wythe(...args)
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toContain('Usage:\n  npm run wythe -- evaluate <opening.yaml>')
  })

  test('2 for a file that is not there, by its name', async () => {
    const { code, stdout, stderr } = await wythe('evaluate', 'none.yaml', ...end)
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toMatch(/^none\.yaml: .*no such file or directory/)
  })
})

test('a rule is explained', async () => {
  const { code, stdout } = await wythe('explain', 'lintel.bearing-length', ...end)
  expect(code).toBe(0)
  expect(stdout).toContain('IN FORCE FOR us-xa-101-2400000 ON 2026-03-01')
})

test('the catalog is checked', async () => {
  const { code, stdout } = await wythe('check-catalog')
  expect(code).toBe(0)
  expect(stdout).toMatch(/^Release \d{4}\.\d+\.\d+, sha256:/)
})
