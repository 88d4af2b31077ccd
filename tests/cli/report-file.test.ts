import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test, vi } from 'vitest'
import { runCommand } from '../../src/cli/commands.ts'
import { unpacked } from '../form/browser.ts'
import { complaintsAbout } from '../report/reported.ts'

const folder = mkdtempSync(join(tmpdir(), 'wythe-reports-'))
afterAll(() => { vi.unstubAllEnvs(); rmSync(folder, { recursive: true }) })

const opening = 'tests/fixtures/openings/metric-precast-sill.yaml'
const report = (out: string, ...more: readonly string[]) => runCommand(['report', opening, '--jurisdiction', 'us-xa-101-2400000', '--as-of', '2026-03-01', '--out', join(folder, out), ...more])

describe('the command "report"', () => {
  test('writes a page, and ends with 1 when a mandatory rule is not met', async () => {
    expect(await report('a.html')).toEqual({ text: `${join(folder, 'a.html')}: Milldam Yard, stair window 2, fail\n`, exitCode: 1 })
    const page = readFileSync(join(folder, 'a.html'), 'utf8')
    expect(page).toContain('data-kind="elevation"')
    expect(page).not.toContain('size:a4')
    expect(await complaintsAbout(page)).toEqual([])
  })

  test('takes the sheet that is named', async () => {
    await report('b.html', '--paper', 'A4')
    expect(readFileSync(join(folder, 'b.html'), 'utf8')).toContain('@page{size:a4;')
    expect(await report('c.html', '--paper', 'napkin')).toEqual({ text: '--paper must be one of: a4, letter\n', exitCode: 2 })
  })

  test.each([['without a file to write', []], ['with a file of another kind', ['--out', 'x.doc']]] as const)('%s says what it needs', async (_, more) => {
    expect(await runCommand(['report', opening, '--edition', 'irc-2021', ...more])).toEqual({ text: '--out must name a file that ends with .html or .pdf\n', exitCode: 2 })
  })

  test('says how to have a PDF where there is no browser, or a wrong one', async () => {
    vi.stubEnv('CHROMIUM', undefined)
    const [absent, wrong] = [await report('d.pdf'), (vi.stubEnv('CHROMIUM', join(folder, 'none')), await report('d.pdf'))]
    expect(absent).toMatchObject({ exitCode: 2, text: expect.stringContaining('Set CHROMIUM to the path') as string })
    expect(wrong).toMatchObject({ exitCode: 2, text: expect.stringContaining('printed nothing') as string })
    expect(existsSync(join(folder, 'd.pdf'))).toBe(false)
  })

  // The npm package has a browser for this platform only.
  test.runIf(process.platform === 'linux' && process.arch === 'x64')('prints a PDF by the browser that is named, on the sheet of the papers', async () => {
    const { executablePath, env } = unpacked(folder)
    for (const [name, value] of Object.entries({ CHROMIUM: executablePath, ...env, TMPDIR: folder })) vi.stubEnv(name, value)
    for (const [paper, height] of [['a4', 842], ['letter', 792]] as const) {
      expect(await report(`${paper}.pdf`, '--paper', paper)).toMatchObject({ exitCode: 1 })
      const pdf = readFileSync(join(folder, `${paper}.pdf`), 'latin1')
      expect(pdf.startsWith('%PDF-')).toBe(true)
      expect(Math.round(Number(/\/MediaBox \[0 0 [\d.]+ ([\d.]+)\]/.exec(pdf)?.[1]))).toBe(height)
    }
  }, 90_000)
})
