import { expect, test } from 'vitest'
import { exportedBuilding, mostOpenings } from '../../src/operations/exported-building.ts'
import type { RecordDependencies } from '../../src/operations/operation.ts'
import type { Entry, Project } from '../../src/store/journal.ts'
import { realCatalog } from '../catalog/real-catalog.ts'

const project: Project = { id: 'p', title: 'Many', jurisdiction: 'us-xa-101', asOf: '2026-03-01', edition: null, publication: null, version: '', createdAt: '', changedAt: '' }
const entries = Array.from({ length: mostOpenings + 1 }, (_, index) => ({ opening: `o-${String(index).padStart(3, '0')}`, sequence: index + 1 }) as Entry)

test('more openings than go into one document are refused before anything is evaluated, with a way to ask for fewer', async () => {
  const records = { readEntries: async (_: string, __: null, after: number, first: number) => entries.slice(after, after + first) }
  const deps = { catalog: await realCatalog(), now: () => new Date(0), records } as unknown as RecordDependencies
  const refused = await exportedBuilding(deps, project, { scope: 'all', startsWith: '' })
  expect(refused).toMatchObject({ ok: false, code: 'invalidInput', problems: [{ code: 'outOfRange', pointer: '/startsWith', detail: expect.stringContaining('201 openings; at most 200') as string }] })
  await expect(exportedBuilding(deps, project, { scope: 'all', startsWith: 'none' })).resolves.toMatchObject({ ok: true, value: { openings: [] } })
})
