import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parse } from 'yaml'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { digestOf } from '../../src/catalog/digest.ts'
import { readAmendment } from '../../src/catalog/read-amendment.ts'
import { openActiveCatalog } from '../../src/store/open-active-catalog.ts'
import { openRecords, type RecordsPlace } from '../../src/store/open-records.ts'
import { embedmentOrdinance } from '../api/jurisdiction.ts'
import { realCatalog } from '../catalog/real-catalog.ts'
import { until } from './contract.ts'
import { startPostgres, type PostgresServer } from './postgres-server.ts'

let server: PostgresServer
const folder = mkdtempSync(join(tmpdir(), 'wythe-replicas-'))
beforeAll(async () => { server = await startPostgres() }, 60_000)
afterAll(async () => {
  await server.end()
  rmSync(folder, { recursive: true, force: true })
})

const places: readonly (readonly [string, () => Promise<RecordsPlace>])[] = [
  ['SQLite', async () => ({ dataDir: folder })],
  ['PostgreSQL', async () => ({ databaseUrl: await server.freshDatabase(), dataDir: folder })],
]

describe.each(places)('two replicas on one %s', (_, placeOf) => {
  test('the second sees an adoption within a second, and one that starts later comes to the same digest', async () => {
    const place = await placeOf()
    const [first, second] = [await replica(place), await replica(place)]
    const before = second.active.state.catalog
    const read = readAmendment(parse(embedmentOrdinance('us-xa-101')))
    if (!read.ok) throw new Error('the ordinance cannot be read')
    const adopted = await first.records.adopt({ amendment: read.value, digest: digestOf(read.value), adoptedAt: '2026-03-01T12:00:00.000Z', adoptedBy: 'clerk' }, null, 0)
    expect(adopted).toMatchObject({ ok: true })
    await until(() => second.active.state.sequence === 1, 1_000)
    await first.active.refresh()
    const third = await replica(place)
    expect(second.active.state.catalog.digest).toBe(first.active.state.catalog.digest)
    expect(third.active.state).toMatchObject({ sequence: 1, catalog: { digest: first.active.state.catalog.digest } })
    expect(before.digest).not.toBe(first.active.state.catalog.digest)
    expect((await third.active.catalogsOf(before.release, 0)).map(({ digest }) => digest)).toContain(before.digest)
    expect([first, second, third].flatMap(({ faults }) => faults)).toEqual([])
    await Promise.all([first, second, third].map(({ records }) => records.close()))
  })

  test('adoptions that no longer fit leave the last good catalog in force, and are told', async () => {
    const place = await placeOf()
    const one = await replica(place)
    const sequence = one.active.state.sequence
    const digest = one.active.state.catalog.digest
    const read = readAmendment(parse(embedmentOrdinance('us-xa-101', 'ord-misfit').replace('1 1/2 [in_i]" }', '7 [in_i]" }')))
    if (!read.ok) throw new Error('the ordinance cannot be read')
    await one.records.adopt({ amendment: read.value, digest: digestOf(read.value), adoptedAt: '2026-03-01T12:00:00.000Z', adoptedBy: 'another version' }, null, sequence)
    await until(() => one.faults.length > 0, 2_000)
    expect(one.active.state).toMatchObject({ sequence, catalog: { digest } })
    expect(JSON.stringify(one.faults[0])).toContain('staleAmendment')
    await one.records.close()
  })
})

async function replica(place: RecordsPlace) {
  const records = await openRecords(place)
  const faults: unknown[] = []
  const opened = await openActiveCatalog({ base: await realCatalog(), folder: 'catalog', trusted: null, records, onFault: (fault) => faults.push(fault) })
  if (!opened.ok) throw new Error('the catalog is refused')
  return { records, active: opened.active, faults }
}
