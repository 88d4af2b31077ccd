import { afterEach, describe, expect, test } from 'vitest'
import { digestOf, digestOfText } from '../../src/catalog/digest.ts'
import { brokenLink, chainStart, type Appended, type Entry, type NewEntry } from '../../src/store/journal.ts'
import { openRecords, type RecordsPlace } from '../../src/store/open-records.ts'
import type { Records } from '../../src/store/records.ts'
import { entry, project } from './samples.ts'

const received = { receivedAt: '2026-03-02T09:00:00.000Z', receivedBy: 'token-1', posting: 'posting-1' }

/** Entries that were judged against no record. */
async function append(records: Records, id: string, entries: readonly NewEntry[], change: Partial<typeof received> = {}): Promise<readonly Appended[]> {
  const answer = await records.appendEntries(id, entries, { ...received, ...change }, new Map())
  if (!answer.ok) throw new Error(answer.reason)
  return answer.appended
}

/** What every journal has to keep. */
export function keepsTheJournal(freshPlace: () => Promise<RecordsPlace>): void {
  const opened: Records[] = []
  const open = async (): Promise<Records> => {
    const records = await openRecords(await freshPlace())
    opened.push(records)
    return records
  }
  afterEach(async () => { await Promise.all(opened.splice(0).map((records) => records.close())) })

  describe('a project', () => {
    test('comes back as it went in, and its id is taken from then on', async () => {
      const records = await open()
      expect(await records.createProject(project('p', { edition: 'irc-2021', jurisdiction: null }))).toBe(true)
      expect(await records.createProject(project('p', { title: 'Another' }))).toBe(false)
      expect(await records.readProject('p')).toStrictEqual(project('p', { edition: 'irc-2021', jurisdiction: null }))
      expect(await records.readProject('q')).toBeUndefined()
    })

    test('is changed by whoever has seen its version', async () => {
      const records = await open()
      await records.createProject(project('p'))
      const next = project('p', { title: 'Renamed', asOf: '2026-04-01', version: 'sha256:next', changedAt: '2026-03-03T00:00:00.000Z' })
      expect(await records.changeProject('p', 'sha256:p', { ...next, createdAt: 'never' })).toEqual({ ok: true, project: next })
      expect(await records.changeProject('p', 'sha256:p', next)).toEqual({ ok: false, reason: 'stale' })
      expect(await records.changeProject('q', 'sha256:p', next)).toEqual({ ok: false, reason: 'absent' })
    })

    test('is listed in the byte order of the ids, a page at a time', async () => {
      const records = await open()
      for (const id of ['b', 'B', 'a']) await records.createProject(project(id))
      expect(await records.listProjects(null, null, 2)).toEqual({ items: [project('B'), project('a')], next: 'a' })
      expect(await records.listProjects(null, 'a', 2)).toEqual({ items: [project('b')], next: null })
      expect(await records.listProjects(['b', 'z'], null, 2)).toEqual({ items: [project('b')], next: null })
    })
  })

  describe('openings', () => {
    test('are listed once each, in the byte order of their ids, a page at a time', async () => {
      const records = await open()
      for (const id of ['p', 'q']) await records.createProject(project(id))
      const ids = ['b', 'a-10', 'B', 'a-2', 'b', 'a~']
      await append(records, 'p', ids.map((opening, index) => entry(`e-${index}`, { opening })))
      await append(records, 'q', [entry('other', { opening: 'z' })])
      expect(await records.listOpenings('p', null, 3)).toEqual({ items: ['B', 'a-10', 'a-2'], next: 'a-2' })
      expect(await records.listOpenings('p', 'a-2', 3)).toEqual({ items: ['a~', 'b'], next: null })
      expect(await records.listOpenings('none', null, 3)).toEqual({ items: [], next: null })
    })
  })

  describe('entries', () => {
    test('are numbered without a gap and chained, each to the one before', async () => {
      const records = await open()
      await records.createProject(project('p'))
      const first = await append(records, 'p', [entry('a'), entry('b', { opening: 'w-2', judged: { ready: true } })])
      const second = await append(records, 'p', [entry('c')], { receivedBy: 'token-2' })
      expect([first, second].flatMap((answers) => answers.map(({ outcome }) => outcome))).toEqual(['recorded', 'recorded', 'recorded'])
      const all = await records.readEntries('p', null, 0, 9)
      expect(all.map(({ id, sequence, receivedBy }) => [id, sequence, receivedBy])).toEqual([['a', 1, 'token-1'], ['b', 2, 'token-1'], ['c', 3, 'token-2']])
      expect(all.map(({ chain }) => chain)).toEqual(chained(all))
      expect(brokenLink(all, chainStart)).toBeUndefined()
      expect(brokenLink(all.slice(1), all[0]?.chain ?? '')).toBeUndefined()
      expect(brokenLink(all.map((one) => (one.id === 'b' ? { ...one, body: 'altered' } : one)), chainStart)).toBe(2)
      expect(brokenLink(all.filter(({ id }) => id !== 'b'), chainStart)).toBe(3)
      expect(brokenLink(all.map((one) => (one.id === 'b' ? { ...one, judged: null } : one)), chainStart)).toBe(2)
      expect(all[0]).toStrictEqual({ ...entry('a'), project: 'p', ...received, sequence: 1, chain: chained(all)[0] })
    })

    test('sent twice are there once; another under the same id is refused, and the rest is kept', async () => {
      const records = await open()
      await records.createProject(project('p'))
      await records.createProject(project('q'))
      const before = await append(records, 'p', [entry('a')])
      const again = await append(records, 'p', [entry('a'), entry('a', { digest: 'sha256:other' }), entry('b'), entry('b')], { receivedAt: 'later' })
      expect(again.map(({ outcome }) => outcome)).toEqual(['alreadyRecorded', 'idTaken', 'recorded', 'alreadyRecorded'])
      expect(again[0]).toEqual({ outcome: 'alreadyRecorded', entry: entryOf(before[0]) })
      expect((await append(records, 'q', [entry('a', { digest: 'sha256:in q' })])).map(({ outcome }) => outcome)).toEqual(['idTaken'])
      expect((await records.readEntries('p', null, 0, 9)).map(({ id }) => id)).toEqual(['a', 'b'])
      expect(await records.readEntries('q', null, 0, 9)).toEqual([])
    })

    test('of a project that is not there are not kept', async () => {
      const records = await open()
      expect(await records.appendEntries('nowhere', [entry('a')], received, new Map())).toEqual({ ok: false, reason: 'absent' })
      expect(await records.readEntries('nowhere', null, 0, 9)).toEqual([])
    })

    test('that were judged by a record that has grown are not kept, and of those that others added to only theirs', async () => {
      const records = await open()
      await records.createProject(project('p'))
      await append(records, 'p', [entry('a'), entry('b', { opening: 'w-2' })])
      const judgedBy = (seen: readonly (readonly [string, number])[]) => records.appendEntries('p', [entry('c')], received, new Map(seen))
      expect(await judgedBy([['w-1', 0]])).toEqual({ ok: false, reason: 'grown' })
      expect(await judgedBy([['w-1', 1], ['w-2', 1]])).toEqual({ ok: false, reason: 'grown' })
      expect((await records.readEntries('p', null, 0, 9)).map(({ id }) => id)).toEqual(['a', 'b'])
      expect(await judgedBy([['w-1', 1], ['w-3', 0]])).toMatchObject({ ok: true, appended: [{ outcome: 'recorded' }] })
    })

    test('of one opening are read by themselves, some at a time', async () => {
      const records = await open()
      await records.createProject(project('p'))
      await append(records, 'p', ['a', 'b', 'c', 'd', 'e'].map((id, index) => entry(id, { opening: index % 2 === 0 ? 'w-1' : 'w-2' })))
      expect((await records.readEntries('p', 'w-1', 0, 2)).map(({ id }) => id)).toEqual(['a', 'c'])
      expect((await records.readEntries('p', 'w-1', 3, 2)).map(({ id }) => id)).toEqual(['e'])
    })

    test('of several senders at once leave no gap, and none is lost or doubled', async () => {
      const records = await open()
      await records.createProject(project('p'))
      const batches = Array.from({ length: 12 }, (_, batch) => Array.from({ length: 10 }, (_, index) => entry(`${batch % 6}-${index}`)))
      await Promise.all(batches.map((batch) => append(records, 'p', batch)))
      const all = await records.readEntries('p', null, 0, 1000)
      expect(all.map(({ sequence }) => sequence)).toEqual(Array.from({ length: 60 }, (_, index) => index + 1))
      expect(new Set(all.map(({ id }) => id)).size).toBe(60)
      expect(all.map(({ chain }) => chain)).toEqual(chained(all))
    })

    test('come by the thousand in one go, and word for word', async () => {
      const records = await open()
      await records.createProject(project('p'))
      const body = { z: '3½″', a: [1, null, { 2: 'two', 1: 'one' }], text: '\\u0000' }
      const many = Array.from({ length: 2_000 }, (_, index) => entry(`e${index}`, { body }))
      expect((await append(records, 'p', many)).every(({ outcome }) => outcome === 'recorded')).toBe(true)
      const [first] = await records.readEntries('p', null, 1_999, 5)
      expect(JSON.stringify(first?.body)).toBe(JSON.stringify(body))
    })
  })
}

/** The chain worked out anew, by the words of its definition. */
function chained(entries: readonly Entry[]): readonly string[] {
  let chain = chainStart
  return entries.map(({ digest, body, judged }) => (chain = digestOfText(`${chain}\n${digest}\n${digestOf(body)}${judged === null ? '' : `\n${digestOf(judged)}`}`)))
}

function entryOf(appended: { readonly outcome: string; readonly entry?: Entry } | undefined): Entry | undefined {
  return appended?.entry
}
