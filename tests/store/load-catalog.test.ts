import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { loadCatalog } from '../../src/store/load-catalog.ts'
import { catalogFolder } from '../catalog/real-catalog.ts'
import { loadPatched } from '../catalog/small-catalog.ts'

test('the catalog that is delivered loads, the same each time', async () => {
  const [one, two] = await Promise.all([loadCatalog(catalogFolder), loadCatalog(catalogFolder)])
  expect(one).toEqual(two)
  expect(one).toMatchObject({ ok: true, catalog: { release: expect.stringMatching(/^\d{4}\.\d+\.\d+$/) as string, digest: expect.stringMatching(/^sha256:[0-9a-f]{64}$/) as string } })
})

describe('a catalog that would find nothing wrong is refused', () => {
  test('an empty folder', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'empty-catalog-'))
    const loaded = await loadCatalog(folder)
    await rm(folder, { recursive: true })
    expect(loaded).toEqual({
      ok: false,
      problems: [
        { code: 'unreadableFile', path: 'release.yaml', pointer: '', detail: 'The file that names the release is missing.' },
        { code: 'unreadableFile', path: 'rules', pointer: '', detail: 'There is no rule in this folder.' },
      ],
    })
  })

  test('one that is not there', async () => {
    expect(await loadCatalog(join(tmpdir(), 'no-such-catalog'))).toMatchObject({ ok: false, problems: [{ code: 'unreadableFile' }] })
  })

  test('one that does not name its release', async () => {
    const loaded = await loadPatched({ move: { 'release.yaml': 'release.txt' } })
    expect(loaded).toMatchObject({ ok: false, problems: [{ path: 'release.yaml' }] })
  })
})

test('a file that cannot be read is told beside what is wrong in the others', async () => {
  const loaded = await loadPatched({ text: { 'broken.yaml': 'a: [', 'odd.yaml': 'odd: 1' } })
  expect(loaded.ok ? [] : loaded.problems.map(({ code, path }) => `${code} ${path}`)).toEqual(['unreadableFile broken.yaml', 'unknownDocument odd.yaml'])
})
