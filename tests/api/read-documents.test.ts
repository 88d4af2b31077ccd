import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { readDocuments } from '../../src/api/graphql/read-documents.ts'
import { digestOfText } from '../../src/catalog/digest.ts'

const made: string[] = []
afterAll(() => Promise.all(made.map((folder) => rm(folder, { recursive: true }))))

async function folderWith(files: Readonly<Record<string, string>>): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'documents-'))
  made.push(folder)
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text)
  return folder
}

describe('the GraphQL documents of a folder', () => {
  test('are known by the digest of their text', async () => {
    const text = 'query Points { holdPoints { items { id title } } }\n'
    expect([...(await readDocuments(await folderWith({ 'points.graphql': text, 'notes.txt': 'not one' })))]).toEqual([[digestOfText(text), text]])
  })

  test('are refused together, each that is not valid by its name', async () => {
    const folder = await folderWith({ 'a.graphql': '{ nothing }', 'b.graphql': '{', 'c.graphql': '{ holdPoints { items { id } } }' })
    await expect(readDocuments(folder)).rejects.toThrow(/cannot be used:\n {2}a\.graphql: Cannot query field "nothing" .*\n {2}b\.graphql: Syntax Error/)
  })
})
