import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, describe, expect, test } from 'vitest'
import { readCatalogFiles } from '../../src/store/catalog-files.ts'

const folders: string[] = []
afterEach(async () => { for (const folder of folders.splice(0)) await rm(folder, { recursive: true }) })

async function folderOf(files: Readonly<Record<string, string>>): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'catalog-files-'))
  folders.push(folder)
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true })
    await writeFile(join(folder, path), text)
  }
  return folder
}

test('every YAML and JSON file is read, however deep, by its path below the folder', async () => {
  const folder = await folderOf({ 'b.yaml': 'b: 1', 'a/deep/er.yml': 'a: [x, 2]', 'c.json': '{"c": null}', 'README.md': '# not read', 'a/notes.txt': 'nor this', 'd.yaml.orig': 'd: 1' })
  expect(await readCatalogFiles(folder)).toEqual({
    documents: [{ path: 'a/deep/er.yml', content: { a: ['x', 2] } }, { path: 'b.yaml', content: { b: 1 } }, { path: 'c.json', content: { c: null } }],
    problems: [],
  })
})

test('a folder that is called like a file is not read as one', async () => {
  const folder = await folderOf({ 'odd.yaml/inner.yaml': 'x: 1' })
  expect((await readCatalogFiles(folder)).documents.map(({ path }) => path)).toEqual(['odd.yaml/inner.yaml'])
})

describe('what cannot be read is reported by its path, and the rest is still read', () => {
  test.each([
    ['broken YAML', 'a: [1, 2', 'Flow sequence'],
    ['a key given twice', 'a: 1\na: 2', 'Map keys must be unique'],
    ['an alias, which could be a thousand', 'a: &x [1]\nb: *x', 'alias'],
    ['two documents in one file', 'a: 1\n---\nb: 2', 'multiple documents'],
    ['tabs', 'a:\n\tb: 1', 'Tabs'],
  ])('%s', async (_, text, advice) => {
    const { documents, problems } = await readCatalogFiles(await folderOf({ 'bad.yaml': text, 'good.yaml': 'good: true' }))
    expect(documents).toEqual([{ path: 'good.yaml', content: { good: true } }])
    expect(problems).toEqual([{ code: 'unreadableFile', path: 'bad.yaml', pointer: '', detail: expect.stringMatching(new RegExp(advice, 'i')) as string }])
  })

  test('a folder that is not there', async () => {
    const folder = join(tmpdir(), 'no-such-catalog')
    expect(await readCatalogFiles(folder)).toEqual({ documents: [], problems: [{ code: 'unreadableFile', path: folder, pointer: '', detail: expect.stringContaining('ENOENT') as string }] })
  })

  test('a file in place of a folder', async () => {
    const folder = await folderOf({ 'file.yaml': 'a: 1' })
    expect((await readCatalogFiles(join(folder, 'file.yaml'))).problems).toMatchObject([{ code: 'unreadableFile' }])
  })

  test('a link to another place is not followed', async () => {
    const outside = await folderOf({ 'secret.yaml': 'secret: 1' })
    const folder = await folderOf({ 'good.yaml': 'good: true' })
    await symlink(join(outside, 'secret.yaml'), join(folder, 'link.yaml'))
    expect((await readCatalogFiles(folder)).documents.map(({ path }) => path)).toEqual(['good.yaml'])
  })
})
