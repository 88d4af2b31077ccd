import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { filesIn } from '../../src/store/catalog-files.ts'
import { loadCatalog } from '../../src/store/load-catalog.ts'
import { prepareCatalog, preparedCatalog } from '../../src/store/prepared-catalog.ts'
import { workingCatalog } from '../../src/store/working-catalog.ts'
import { catalogFolder } from '../catalog/real-catalog.ts'

const small = join(import.meta.dirname, '../fixtures/small-catalog')
const spacing = 'rules/weep/spacing.yaml'
let place: string
let folder: string
let prepared: string

beforeEach(async () => {
  place = await mkdtemp(join(tmpdir(), 'prepared-'))
  folder = join(place, 'catalog')
  prepared = join(place, 'catalog.prepared.json')
  await cp(small, folder, { recursive: true })
  prepareCatalog(filesIn(folder), await proved(folder), prepared)
})
afterEach(async () => { await rm(place, { recursive: true }) })

async function proved(of: string): Promise<Catalog> {
  const loaded = await loadCatalog(of)
  if (!loaded.ok) throw new Error('the catalog is refused')
  return loaded.catalog
}

function taken(): Catalog | undefined {
  return preparedCatalog(filesIn(folder), prepared)
}

test('what was prepared is the catalog itself, in every part', async () => {
  expect(taken()).toStrictEqual(await proved(folder))
})

test('the catalog that is delivered comes back the same, to the order of its keys', async () => {
  const catalog = await proved(catalogFolder)
  prepareCatalog(filesIn(catalogFolder), catalog, prepared)
  const back = preparedCatalog(filesIn(catalogFolder), prepared)
  expect(back).toStrictEqual(catalog)
  expect([...(back?.rules.values() ?? [])].map((rule) => JSON.stringify(rule))).toEqual([...catalog.rules.values()].map((rule) => JSON.stringify(rule)))
})

test('a folder elsewhere with the same files has the same catalog', () => {
  expect(preparedCatalog(filesIn(small), prepared)).toBeDefined()
})

describe('it is not taken when', () => {
  test('any byte of any file is another', async () => {
    for (const { path, bytes } of filesIn(folder).filter((file) => 'bytes' in file)) {
      const changed = Buffer.from(bytes)
      changed[bytes.length - 1] = (changed[bytes.length - 1] ?? 0) ^ 1
      await writeFile(join(folder, path), changed)
      expect(taken(), path).toBeUndefined()
      await writeFile(join(folder, path), bytes)
      expect(taken(), path).toBeDefined()
    }
  })

  test('a file was added', async () => {
    await writeFile(join(folder, 'empty.yaml'), '')
    expect(taken()).toBeUndefined()
  })

  test('a file was removed', async () => {
    await rm(join(folder, spacing))
    expect(taken()).toBeUndefined()
  })

  test('a file has another name', async () => {
    await cp(join(folder, spacing), join(folder, 'rules/weep/other.yaml'))
    await rm(join(folder, spacing))
    expect(taken()).toBeUndefined()
  })

  test('a file cannot be read', () => {
    const files = filesIn(folder).map((file) => (file.path === spacing ? { code: 'unreadableFile' as const, path: spacing, pointer: '', detail: 'no permission' } : file))
    expect(preparedCatalog(files, prepared)).toBeUndefined()
  })

  test('the folder is not there', () => {
    expect(preparedCatalog(filesIn(join(place, 'none')), prepared)).toBeUndefined()
  })

  test('nothing was prepared', () => {
    expect(preparedCatalog(filesIn(folder), join(place, 'none.json'))).toBeUndefined()
  })

  test('it is damaged in itself, wherever that is', async () => {
    const whole = await readFile(prepared)
    const step = Math.ceil(whole.length / 200)
    for (let at = 0; at < whole.length; at += step) {
      const damaged = Buffer.from(whole)
      damaged[at] = (damaged[at] ?? 0) ^ 1
      await writeFile(prepared, damaged)
      expect(taken(), `byte ${at}`).toBeUndefined()
    }
    for (const length of [0, 1, 64, 65, whole.length - 1]) {
      await writeFile(prepared, whole.subarray(0, length))
      expect(taken(), `${length} bytes`).toBeUndefined()
    }
  })

  test('the code that judges catalogs is not that which proved it', async () => {
    const other = join(place, 'code')
    await cp(join(import.meta.dirname, '../../src'), other, { recursive: true })
    const { preparedCatalog: there } = await import(join(other, 'store/prepared-catalog.ts')) as { preparedCatalog: typeof preparedCatalog }
    expect(there(filesIn(folder), prepared)).toBeDefined()
    await writeFile(join(other, 'catalog/checks/rules.ts'), '\n', { flag: 'a' })
    expect(there(filesIn(folder), prepared)).toBeUndefined()
  })
})

describe('the working catalog', () => {
  test('is the prepared one where nothing changed, without being proved again', async () => {
    prepareCatalog(filesIn(folder), { ...(await proved(folder)), release: '2000.1.0' }, prepared)
    expect(await workingCatalog(folder, prepared)).toMatchObject({ ok: true, catalog: { release: '2000.1.0' } })
  })

  test('is proved anew where a file changed, and refused in the same words', async () => {
    const text = await readFile(join(folder, spacing), 'utf8')
    await writeFile(join(folder, spacing), text.replace('rule: weep.spacing', 'rule: weep.spacings'))
    await writeFile(join(folder, 'broken.yaml'), 'a: [')
    const answer = await workingCatalog(folder, prepared)
    expect(answer.ok).toBe(false)
    expect(answer).toEqual(await loadCatalog(folder))
  })

  test('takes in what was changed and holds', async () => {
    await writeFile(join(folder, 'release.yaml'), 'release: 2031.7.3\n')
    expect(await workingCatalog(folder, prepared)).toMatchObject({ ok: true, catalog: { release: '2031.7.3' } })
  })

  test('is told in the order of its files, whether they cannot be read or cannot be parsed', async () => {
    const files = filesIn(folder).map((file) => (file.path === spacing ? { code: 'unreadableFile' as const, path: spacing, pointer: '', detail: 'no permission' } : file))
    const { parseCatalogFiles } = await import('../../src/store/catalog-files.ts')
    const { problems } = await parseCatalogFiles([{ path: 'a.yaml', bytes: Buffer.from('a: [') }, ...files, { path: 'z.yaml', bytes: Buffer.from('a: [') }])
    expect(problems.map(({ path }) => path)).toEqual(['a.yaml', spacing, 'z.yaml'])
  })
})
