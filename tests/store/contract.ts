import { afterEach, describe, expect, test } from 'vitest'
import { openRecords, type RecordsPlace } from '../../src/store/open-records.ts'
import type { Page, Records } from '../../src/store/records.ts'
import { adoptInTurn, adoption, draft, evaluation, token } from './samples.ts'

/** What every store has to keep. */
export function keepsTheContract(freshPlace: () => Promise<RecordsPlace>): void {
  const opened: Records[] = []
  const open = async (): Promise<Records> => {
    const records = await openRecords(await freshPlace())
    opened.push(records)
    return records
  }
  afterEach(async () => { await Promise.all(opened.splice(0).map((records) => records.close())) })

  describe('a draft', () => {
    test('comes back as it went in', async () => {
      const records = await open()
      const document = JSON.parse('{"z":1,"a":{"10":"b","2":"a"},"__proto__":{"x":1},"text":"3½″ “lap” \\u0000\\ud800","list":[null,true,0.1,1e21]}') as unknown
      await records.createDraft(draft('d', { document }))
      const read = await records.readDraft('d')
      expect(read).toStrictEqual(draft('d', { document }))
      expect(JSON.stringify(read?.document)).toBe(JSON.stringify(document))
    })

    test('that nobody made is not there', async () => expect(await (await open()).readDraft('none')).toBeUndefined())

    test('cannot take the id of another', async () => {
      const records = await open()
      await records.createDraft(draft('d'))
      await expect(records.createDraft(draft('d', { jurisdiction: 'us-xb' }))).rejects.toThrow()
      expect(await records.readDraft('d')).toEqual(draft('d'))
    })

    test('is changed by whoever has seen its version', async () => {
      const records = await open()
      await records.createDraft(draft('d'))
      const next = draft('d', { jurisdiction: 'us-xb', document: { says: 'more' }, version: 'sha256:more', changedAt: '2026-03-02T08:00:00.000Z' })
      expect(await records.changeDraft('d', 'sha256:d', { ...next, createdAt: '1999-01-01T00:00:00.000Z' })).toEqual({ ok: true, draft: next })
      expect(await records.readDraft('d')).toEqual(next)
      expect(await records.changeDraft('d', 'sha256:d', draft('d'))).toEqual({ ok: false, reason: 'stale' })
      expect(await records.changeDraft('e', 'sha256:d', draft('e'))).toEqual({ ok: false, reason: 'absent' })
      expect(await records.readDraft('d')).toEqual(next)
    })

    test('takes one of several changes that come together', async () => {
      const records = await open()
      await records.createDraft(draft('d'))
      const changes = Array.from({ length: 10 }, (_, index) => records.changeDraft('d', 'sha256:d', draft('d', { version: `sha256:${index}` })))
      const answers = await Promise.all(changes)
      expect(answers.filter(({ ok }) => ok)).toHaveLength(1)
      expect(answers.filter((answer) => !answer.ok && answer.reason === 'stale')).toHaveLength(9)
    })

    test('is deleted by whoever has seen its version', async () => {
      const records = await open()
      await records.createDraft(draft('d'))
      expect(await records.deleteDraft('d', 'sha256:old')).toEqual({ ok: false, reason: 'stale' })
      expect(await records.deleteDraft('d', 'sha256:d')).toEqual({ ok: true, draft: draft('d') })
      expect(await records.deleteDraft('d', 'sha256:d')).toEqual({ ok: false, reason: 'absent' })
      expect(await records.readDraft('d')).toBeUndefined()
    })
  })

  describe('a list of drafts', () => {
    test('comes a page at a time, in the byte order of the ids', async () => {
      const records = await open()
      for (const id of ['b', 'a', 'é', 'B', '-', 'a-1', 'a1']) await records.createDraft(draft(id))
      const pages = await pagesOf((after) => records.listDrafts(null, after, 3))
      expect(pages.map(({ items }) => items.map(({ id }) => id))).toEqual([['-', 'B', 'a'], ['a-1', 'a1', 'b'], ['é']])
    })

    test('has no empty page at its end', async () => {
      const records = await open()
      for (const id of ['a', 'b']) await records.createDraft(draft(id))
      expect(await records.listDrafts(null, null, 2)).toEqual({ items: [draft('a'), draft('b')], next: null })
      expect(await records.listDrafts(null, null, 1)).toEqual({ items: [draft('a')], next: 'a' })
      expect(await records.listDrafts(null, 'b', 1)).toEqual({ items: [], next: null })
    })

    test('keeps to the jurisdictions asked for, however many', async () => {
      const records = await open()
      await records.createDraft(draft('a', { jurisdiction: 'us-xa' }))
      await records.createDraft(draft('b', { jurisdiction: 'us-xb' }))
      await records.createDraft(draft('c', { jurisdiction: 'us-xc' }))
      const many = Array.from({ length: 70_000 }, (_, index) => `us-xa-${index}`)
      const idsIn = async (jurisdictions: readonly string[]): Promise<readonly string[]> => (await records.listDrafts(jurisdictions, null, 9)).items.map(({ id }) => id)
      expect(await idsIn(['us-xc', 'us-xa'])).toEqual(['a', 'c'])
      expect(await idsIn([...many, 'us-xb'])).toEqual(['b'])
      expect(await idsIn(['us', '{us-xa}', '"us-xa"'])).toEqual([])
      expect(await idsIn([])).toEqual([])
    })
  })

  describe('an adoption', () => {
    test('takes the next sequence and removes its draft', async () => {
      const records = await open()
      await records.createDraft(draft('d'))
      await records.createDraft(draft('e'))
      expect(await records.adoptionsAfter(0)).toEqual([])
      expect(await records.adopt(adoption('one'), draft('d'), 0)).toEqual({ ok: true, adopted: { sequence: 1, ...adoption('one') } })
      expect(await records.adopt(adoption('two'), null, 1)).toEqual({ ok: true, adopted: { sequence: 2, ...adoption('two') } })
      expect((await records.listDrafts(null, null, 9)).items).toEqual([draft('e')])
      const all = await records.adoptionsAfter(0)
      expect(all).toStrictEqual([{ sequence: 1, ...adoption('one') }, { sequence: 2, ...adoption('two') }])
      expect(JSON.stringify(all[0]?.amendment)).toBe(JSON.stringify(adoption('one').amendment))
      expect(await records.adoptionsAfter(1)).toEqual(all.slice(1))
      expect(await records.adoptionsAfter(2)).toEqual([])
    })

    test.each([
      ['exists', 'one', 1],
      ['exists', 'one', 0],
      ['behind', 'two', 0],
      ['behind', 'two', 2],
    ] as const)('is refused, with nothing done: %s (%s after %d)', async (reason, name, seen) => {
      const records = await open()
      await adoptInTurn(records, 'one')
      await records.createDraft(draft('d'))
      expect(await records.adopt(adoption(name), draft('d'), seen)).toEqual({ ok: false, reason })
      expect(await records.adoptionsAfter(0)).toHaveLength(1)
      expect(await records.readDraft('d')).toEqual(draft('d'))
    })

    test('of a draft that was changed since, or thrown away, is refused with nothing done', async () => {
      const records = await open()
      await records.createDraft(draft('d'))
      expect(await records.adopt(adoption('one'), draft('d', { version: 'sha256:earlier' }), 0)).toEqual({ ok: false, reason: 'stale' })
      expect(await records.adopt(adoption('one'), draft('gone'), 0)).toEqual({ ok: false, reason: 'stale' })
      expect(await records.adoptionsAfter(0)).toEqual([])
      expect(await records.readDraft('d')).toEqual(draft('d'))
      expect(await records.adopt(adoption('one'), draft('d'), 0)).toMatchObject({ ok: true, adopted: { sequence: 1 } })
    })

    test('waits its turn among others, and none is skipped', async () => {
      const records = await open()
      const names = Array.from({ length: 20 }, (_, index) => `n${index}`)
      await Promise.all(names.map((name) => adoptInTurn(records, name)))
      const all = await records.adoptionsAfter(0)
      expect(all.map(({ sequence }) => sequence)).toEqual(names.map((_, index) => index + 1))
      expect(new Set(all.map(({ amendment }) => amendment.amendment)).size).toBe(20)
    })

    test('happens once when it is asked for several times together', async () => {
      const records = await open()
      const answers = await Promise.all(Array.from({ length: 10 }, () => records.adopt(adoption('one'), null, 0)))
      expect(answers.filter(({ ok }) => ok)).toHaveLength(1)
      expect(answers.filter((answer) => !answer.ok && answer.reason === 'exists')).toHaveLength(9)
    })
  })

  describe('a kept evaluation', () => {
    test('comes back as it went in, and cannot be kept twice', async () => {
      const records = await open()
      const request = { z: '48″', a: [1, null, { 2: 'two', 1: 'one' }] }
      await records.keepEvaluation(evaluation('e', { jurisdiction: null, request, answer: [request, 'word for word'] }))
      expect(await records.readEvaluation('e')).toStrictEqual(evaluation('e', { jurisdiction: null, request, answer: [request, 'word for word'] }))
      expect(JSON.stringify((await records.readEvaluation('e'))?.request)).toBe(JSON.stringify(request))
      await expect(records.keepEvaluation(evaluation('e'))).rejects.toThrow()
      expect(await records.readEvaluation('f')).toBeUndefined()
    })

    test('is listed under its jurisdiction, in the order of the ids', async () => {
      const records = await open()
      const places = ['us-xa', 'us-xb', null, 'us-xa', 'us-xa', 'us-xb']
      for (const [index, jurisdiction] of places.entries()) await records.keepEvaluation(evaluation(`e${9 - index}`, { jurisdiction }))
      const pages = await pagesOf((after) => records.listEvaluations(['us-xa', 'us-xb'], after, 2))
      expect(pages.map(({ items }) => items.map(({ id }) => id))).toEqual([['e4', 'e5'], ['e6', 'e8'], ['e9']])
      expect((await records.listEvaluations(['us-xb'], 'e4', 9)).items).toEqual([evaluation('e8', { jurisdiction: 'us-xb' })])
      expect(await records.listEvaluations([], null, 9)).toEqual({ items: [], next: null })
    })
  })

  describe('a token', () => {
    test('is found by the hash of its secret', async () => {
      const records = await open()
      await records.createToken(token('b', { expiresAt: '2027-01-01T00:00:00.000Z' }))
      await records.createToken(token('a'))
      expect(await records.findToken('hash of b')).toStrictEqual(token('b', { expiresAt: '2027-01-01T00:00:00.000Z' }))
      expect(await records.findToken('hash of c')).toBeUndefined()
      expect((await records.listTokens()).map(({ id }) => id)).toEqual(['a', 'b'])
    })

    test('shares neither its id nor its secret', async () => {
      const records = await open()
      await records.createToken(token('a'))
      await expect(records.createToken(token('a', { secretHash: 'other' }))).rejects.toThrow()
      await expect(records.createToken(token('b', { secretHash: 'hash of a' }))).rejects.toThrow()
      expect(await records.listTokens()).toEqual([token('a')])
    })

    test('stays revoked since the first time', async () => {
      const records = await open()
      await records.createToken(token('a'))
      await records.createToken(token('b'))
      expect(await records.revokeToken('a', '2026-05-01T00:00:00.000Z')).toBe(true)
      expect(await records.revokeToken('a', '2026-06-01T00:00:00.000Z')).toBe(true)
      expect(await records.revokeToken('c', '2026-06-01T00:00:00.000Z')).toBe(false)
      expect(await records.listTokens()).toEqual([token('a', { revokedAt: '2026-05-01T00:00:00.000Z' }), token('b')])
    })
  })

  describe('a listener', () => {
    test('is called once for an adoption, and not for a refusal', async () => {
      const records = await open()
      const calls = countCalls(records)
      await adoptInTurn(records, 'one')
      await until(() => calls.count > 0)
      await records.adopt(adoption('one'), null, 1)
      await records.createDraft(draft('d'))
      await later(400)
      expect(calls.count).toBe(1)
    })

    test('that has left is not called', async () => {
      const records = await open()
      const [stays, leaves] = [countCalls(records), countCalls(records)]
      leaves.stop()
      leaves.stop()
      await adoptInTurn(records, 'one')
      await until(() => stays.count > 0)
      expect(leaves.count).toBe(0)
    })
  })

  test('the store answers until it is closed', async () => {
    const records = await openRecords(await freshPlace())
    await records.check()
    await records.close()
    await expect(records.check()).rejects.toThrow()
    await records.close()
  })
}

async function pagesOf<T>(read: (after: string | null) => Promise<Page<T>>): Promise<readonly Page<T>[]> {
  const pages = [await read(null)]
  for (let next = pages[0]?.next; next; next = pages.at(-1)?.next) pages.push(await read(next))
  return pages
}

/** Counts how often a listener is called. */
export function countCalls(records: Records): { readonly count: number; readonly stop: () => void } {
  const calls = { count: 0, stop: records.onAdoption(() => { calls.count += 1 }) }
  return calls
}

/** Waits for something to be so; fails after some seconds. */
export async function until(holds: () => boolean, milliseconds = 5_000): Promise<void> {
  const end = Date.now() + milliseconds
  while (!holds()) {
    if (Date.now() > end) throw new Error(`not so after ${milliseconds} ms`)
    await later(5)
  }
}

export function later(milliseconds: number): Promise<void> {
  return new Promise((resolve) => { setTimeout(resolve, milliseconds) })
}
