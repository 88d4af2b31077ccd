import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll } from 'vitest'
import { sha256Of } from '../../src/store/release-files.ts'

/** A copy of the small catalog in a folder of its own, with one building whose window is judged differently in town and by the model code. */
export async function catalogCopy(): Promise<CatalogCopy> {
  const folder = await mkdtemp(join(tmpdir(), 'releases-'))
  afterAll(() => rm(folder, { recursive: true, force: true }))
  await cp(join(import.meta.dirname, '../fixtures/small-catalog'), folder, { recursive: true })
  await mkdir(join(folder, 'buildings'))
  await writeFile(join(folder, 'buildings/mill-lane-3.yaml'), building)
  return new CatalogCopy(folder)
}

const building = `building: mill-lane-3
title: 3 Mill Lane
note: Invented for the tests.
jurisdiction: aa-open-01
publication: irc
asOf: 2024-06-01
openings:
  - story: five inches of bearing, which the town does not allow
    opening: { reference: W-1, lengthUnit: in, opening: { kind: window, width: 48, height: 60 }, head: { support: { kind: looseSteelAngle, bearing: 5 }, flashing: { present: true }, weeps: { spacing: 30 } } }
  - story: nothing known of it
    opening: { lengthUnit: in, opening: { kind: louver, width: 14, height: 10 } }
`

export class CatalogCopy {
  readonly folder: string

  constructor(folder: string) {
    this.folder = folder
  }

  read(path: string): Promise<string> {
    return readFile(join(this.folder, path), 'utf8')
  }

  /** Replaces text in a file; a text that is not in it fails the test. */
  async edit(path: string, before: string, after: string): Promise<void> {
    const text = await this.read(path)
    if (!text.includes(before)) throw new Error(`${path} has no "${before}"`)
    await this.write(path, text.replace(before, after))
  }

  async write(path: string, text: string | Buffer): Promise<void> {
    const file = join(this.folder, path)
    await mkdir(dirname(file), { recursive: true })
    await writeFile(file, text)
  }

  /** What somebody would do who alters a release and covers it up in the index. */
  async relock(release: string): Promise<void> {
    const digestOf = async (name: string) => sha256Of(await readFile(join(this.folder, 'releases', release, name)))
    const index = JSON.parse(await this.read('releases/index.json')) as Record<string, unknown>
    await this.write('releases/index.json', JSON.stringify({ ...index, [release]: { catalog: await digestOf('catalog.json'), manifest: await digestOf('manifest.json') } }))
  }
}
