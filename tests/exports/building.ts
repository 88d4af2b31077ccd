import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { evaluate, method } from '../../src/evaluation/evaluate.ts'
import type { ExportedBuilding, ExportedOpening } from '../../src/exports/exported-building.ts'
import { missesOver, type Look } from '../../src/record/finding-history.ts'
import { openingBy, openingRecordOf, type RecordedEntry } from '../../src/record/opening-record.ts'
import { realCatalog, resolved } from '../catalog/real-catalog.ts'

const catalog = await realCatalog()
const ruleSet = resolved(catalog, { jurisdiction: 'us-xa-101', asOf: '2026-03-01' })

/** What is said of one opening in one posting; an entry as it is sent, without its id. */
export interface Posting {
  readonly receivedAt: string
  readonly entries: readonly Readonly<Record<string, unknown>>[]
}

export function designOf(name: string): object {
  return parse(readFileSync(join(import.meta.dirname, '../fixtures/openings', `${name}.yaml`), 'utf8')) as object
}

export function entryId(number: number): string {
  return `0199a000-0000-7000-8000-${String(number).padStart(12, '0')}`
}

/** One opening by what was posted of it, looked at after each posting. Entries are numbered from a number on. */
export function opening(id: string, first: number, postings: readonly Posting[]): ExportedOpening {
  let number = first
  const batches = postings.map(({ receivedAt, entries }) => entries.map((body): RecordedEntry => {
    const own = entryId(number)
    number += 1
    const kind = ['design', 'observation', 'correction', 'signOff', 'waiver', 'remedy', 'verification'].find((one) => one in body) ?? ''
    return { id: own, sequence: number - first, opening: id, kind, receivedAt, judged: null, body: { by: 'inspector', at: receivedAt, ...body, id: own, opening: id } }
  }))
  const looks = batches.flatMap((batch, index): Look[] => {
    const assessment = assessmentOf(id, batches.slice(0, index + 1).flat())
    return assessment.ok ? [{ at: batch.at(-1)?.receivedAt ?? '', findings: assessment.value.findings }] : []
  })
  const entries = batches.flat()
  const now = assessmentOf(id, entries)
  return {
    opening: id, record: openingRecordOf(id, entries), entries,
    ...(now.ok ? { assessment: now.value, missing: [] } : { assessment: null, missing: now.problems.map(({ pointer }) => pointer.slice(1)) }),
    before: looks.at(-2)?.findings ?? null, misses: missesOver(id, looks),
  }
}

function assessmentOf(id: string, entries: readonly RecordedEntry[]) {
  const record = openingRecordOf(id, entries)
  const described = openingBy('asBuiltOverDesign', record)
  return described.ok ? { ok: true as const, value: evaluate(described.value, ruleSet, catalog, record.holdPoint) } : described
}

export function building(openings: readonly ExportedOpening[], change: Partial<ExportedBuilding> = {}): ExportedBuilding {
  return {
    project: { id: '0199a000-0000-7000-8000-00000000ffff', title: '12 Quarry Walk', jurisdiction: 'us-xa-101', asOf: '2026-03-01', edition: null, publication: null, createdAt: '2026-03-01T12:00:00.000Z' },
    catalog, method, rules: ruleSet.rules, openings, scope: 'all', at: '2026-03-09T12:00:00.000Z', publicUrl: 'https://wythe.example', ...change,
  }
}

export const evidence = { link: 'https://pictures.example/left end|[1].jpg', sha256: 'ab'.repeat(32), takenAt: '2026-03-03T10:00:00-05:00' }

const bearing = (member: 'left' | 'right', value: string, more: object = {}) => ({ ...more, observation: { fact: 'head.support.bearing', member, value, method: 'examine', holdPoint: 'lintelSet' } })

/**
 * Three openings: one drawn, its left bearing read twice and then short, waived and signed off; one that was only drawn and is
 * short at both ends; one of which nothing is known but a sill.
 */
export const quarryWalk: readonly ExportedOpening[] = [
  opening('bay-3', 100, [
    { receivedAt: '2026-03-02T13:00:00.000Z', entries: [{ by: 'drafting', design: { description: designOf('missed-end-dam') } }] },
    { receivedAt: '2026-03-03T15:00:00.000Z', entries: [bearing('left', '8 in'), bearing('right', '8 in')] },
    { receivedAt: '2026-03-04T15:00:00.000Z', entries: [bearing('left', '3 1/2 in', { at: '2026-03-04T10:00:00-05:00', note: 'Tape held at the toe.', evidence: [evidence] })] },
    {
      receivedAt: '2026-03-05T15:00:00.000Z',
      entries: [
        { by: 'building official', waiver: { rule: 'lintel.bearing-length', kind: 'modification', instrument: { kind: 'notice', number: '2026-7', adopted: '2026-03-05' }, grantedBy: 'Quarry County building department', expires: '2026-12-31', conditions: 'Grout the seat.' } },
        { signOff: { holdPoint: 'lintelSet', reason: 'modification granted' } },
        { remedy: { rule: 'flashing.end-dam-present', member: 'right', work: 'Fold up a dam and seal its corner.', due: '2026-03-12' } },
        { verification: { rule: 'flashing.end-dam-present', member: 'right', result: 'notMended', holdPoint: 'headFlashing' } },
        { correction: { entry: entryId(102), reason: 'read at another window' } },
      ],
    },
  ]),
  opening('gable', 200, [{ receivedAt: '2026-03-02T13:00:00.000Z', entries: [{ by: 'drafting', design: { description: designOf('louver') } }] }]),
  opening('unknown', 300, [{ receivedAt: '2026-03-02T14:00:00.000Z', entries: [{ observation: { fact: 'sill.slope', value: '10 deg', method: 'test', holdPoint: 'jambRise' } }] }]),
]
