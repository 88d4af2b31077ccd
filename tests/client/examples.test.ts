import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { parse } from 'yaml'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { clientTypes } from '../../src/cli/client-types.ts'
import { embedmentOrdinance } from '../api/jurisdiction.ts'
import { served, type Served } from '../api/served.ts'
import { runCompiled } from '../cli/run-compiled.ts'
import { root } from '../read-sources.ts'

const run = promisify(execFile)
const dataDir = mkdtempSync(join(tmpdir(), 'wythe-client-'))
const page = readFileSync(join(root, 'src/client/README.md'), 'utf8')
let service: Served
let address = ''

beforeAll(async () => {
  service = await served({ DATA_DIR: dataDir })
  address = service.address
}, 60_000)
afterAll(async () => {
  await service.stop()
  rmSync(dataDir, { recursive: true, force: true })
})

test('the types of the client are those of the contract; else run npm run generate', async () => {
  expect(readFileSync(join(root, 'src/client/schema.d.ts'), 'utf8')).toBe(await clientTypes(readFileSync(join(root, 'openapi/openapi.json'), 'utf8')))
})

describe('with the typed client', () => {
  test('construction-management software takes a schedule in and reads the building', async () => {
    const { imported, building } = await example('construction-management', ['--record'])
    expect(imported).toMatchObject({ rows: expect.anything() as unknown })
    expect(JSON.stringify(building)).toContain('"W-2"')
  })

  test("an inspector's app asks for a form and sends it filled", async () => {
    const { form, answered } = await example('inspector', ['--record'], JSON.stringify({ lastChance: { head_support_bearing_left: '6 1/8 in', head_support_bearing_right: '5 1/2 in' } }))
    expect(form).toMatchObject({ schema: { type: 'object' } })
    expect(JSON.stringify(form)).toContain('head_support_bearing_left')
    expect(answered).toMatchObject({ results: [{ outcome: 'recorded' }, { outcome: 'recorded' }] })
  })

  test('a jurisdiction drafts, previews and adopts', async () => {
    const file = join(dataDir, 'amendment.json')
    writeFileSync(file, JSON.stringify(parse(embedmentOrdinance('us-xa-101'))))
    const { preview, adopted } = await example('jurisdiction', ['--amend', 'us-xa-101'], file)
    expect(preview).toMatchObject({ rules: expect.anything() as unknown })
    expect(adopted).toMatchObject({ amendment: 'us-xa-101/ord-2026-01', effectiveFrom: '2026-03-01' })
    expect(await (await fetch(`${address}/v1/amendments`)).text()).toContain('us-xa-101/ord-2026-01')
  })

  test('what is refused is told with its reason', async () => {
    const { code, stderr } = await runCompiled('client/examples/inspector.js', [address, 'no-token'])
    expect(code).toBe(1)
    expect(stderr).toContain('answered 401')
  })
})

describe('the calls of its page', async () => {
  const [curl, python] = await Promise.all(['curl', 'python3'].map((program) => run(program, ['--version']).then(() => true, () => false)))

  test.skipIf(!curl)(curl ? 'curl' : 'curl (skipped: it is not on this machine)', async () => {
    const { stdout } = await run('sh', ['-c', blockOf('sh').replaceAll('http://127.0.0.1:8080', address)])
    expect(JSON.parse(stdout)).toMatchObject({ summary: { verdict: 'incomplete' } })
  })

  test.skipIf(!python)(python ? 'Python' : 'Python (skipped: python3 is not on this machine)', async () => {
    const { stdout } = await run('python3', ['-c', blockOf('python').replaceAll('http://127.0.0.1:8080', address)])
    expect(stdout).toMatch(/^incomplete \['[\w.]+', /)
  })
})

async function example(name: string, scopes: readonly string[], ...given: readonly string[]): Promise<Readonly<Record<string, unknown>>> {
  const token = await runCompiled('cli/wythe.js', ['create-token', name, ...scopes], { DATA_DIR: dataDir })
  const { code, stdout, stderr } = await runCompiled(`client/examples/${name}.js`, [address, token.stdout.trim(), ...given])
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
  return JSON.parse(stdout) as Readonly<Record<string, unknown>>
}

function blockOf(language: string): string {
  const block = new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``).exec(page)?.[1]
  if (block === undefined) throw new Error(`the page has no ${language}`)
  return block
}
