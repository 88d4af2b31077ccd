import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { checkCatalogFolder } from '../../src/cli/check-catalog.ts'
import { catalogFolder, realCatalog } from '../catalog/real-catalog.ts'

const folder = await mkdtemp(join(tmpdir(), 'checked-'))
afterAll(() => rm(folder, { recursive: true }))

test('a sound catalog is told by its release and what it holds', async () => {
  const { text, exitCode } = await checkCatalogFolder(catalogFolder)
  const { release, digest, rules, publications, jurisdictions, amendments } = await realCatalog()
  expect(exitCode).toBe(0)
  expect(text).toContain(`Release ${release}, ${digest}\n`)
  const limits = [...rules.values()].flatMap((rule) => rule.limits)
  const [, count, primary, secondary, memory] = /rules with (\d+) limits \((\d+) primary, (\d+) secondary, (\d+) memory\)/.exec(text) ?? []
  expect(text).toContain(`${rules.size} rules with ${limits.length} limits`)
  expect(Number(primary) + Number(secondary) + Number(memory)).toBe(Number(count))
  expect(text).toContain(`${publications.size} publications, ${jurisdictions.size} jurisdictions, ${amendments.length} amendments`)
})

test('a faulty one is told by every fault, with its file and place, and ends with 1', async () => {
  await mkdir(join(folder, 'rules'))
  await writeFile(join(folder, 'release.yaml'), 'release: next')
  await writeFile(join(folder, 'rules', 'odd.yaml'), 'odd: 1')
  const { text, exitCode } = await checkCatalogFolder(folder)
  expect(exitCode).toBe(1)
  expect(text).toMatch(/^release\.yaml#\/release\n {2}shape: .+\nrules\/odd\.yaml\n {2}unknownDocument: .+\n2 problems\. The catalog is not put to use\.\n$/s)
})

test('one that is not there is told so', async () => {
  const { text, exitCode } = await checkCatalogFolder(join(folder, 'none'))
  expect(exitCode).toBe(1)
  expect(text).toContain('no such file or directory')
  expect(text).toContain('1 problem. The catalog is not put to use.')
})
