import { afterEach, expect, test } from 'vitest'
import type { RequestClaim } from '../../src/store/kept-answers.ts'
import { openRecords, type RecordsPlace } from '../../src/store/open-records.ts'
import type { Records } from '../../src/store/records.ts'

const limits = { expired: '2026-02-28T12:00:00.000Z', abandoned: '2026-03-01T11:50:00.000Z' }
const claim = (over: Partial<RequestClaim> = {}): RequestClaim => ({ id: 'caller and key', fingerprint: 'what was asked', startedAt: '2026-03-01T12:00:00.000Z', ...over })

/** What every store has to keep of answers that are given again. */
export function keepsAnswers(freshPlace: () => Promise<RecordsPlace>): void {
  const opened: Records[] = []
  const open = async (place: RecordsPlace): Promise<Records> => {
    const records = await openRecords(place)
    opened.push(records)
    return records
  }
  afterEach(async () => { await Promise.all(opened.splice(0).map((records) => records.close())) })

  test('of many at the same time, over two openings of the store, one is claimed', async () => {
    const place = await freshPlace()
    const [one, other] = [await open(place), await open(place)]
    const claimed = await Promise.all(Array.from({ length: 12 }, (_, index) => (index % 2 === 0 ? one : other).claimRequest(claim(), limits)))
    expect(claimed.map(({ state }) => state).toSorted()).toEqual(['claimed', ...Array.from({ length: 11 }, () => 'running')])
  })

  test('an answer that was kept is told to whoever asks, at another opening too', async () => {
    const place = await freshPlace()
    const [one, other] = [await open(place), await open(place)]
    await one.claimRequest(claim(), limits)
    await one.keepAnswer(claim(), 'sealed')
    expect(await other.claimRequest(claim({ fingerprint: 'something else', startedAt: '2026-03-01T13:00:00.000Z' }), limits)).toEqual({ state: 'answered', fingerprint: 'what was asked', sealed: 'sealed' })
    await other.releaseRequest(claim())
    await other.keepAnswer(claim(), 'another')
    expect(await one.claimRequest(claim(), limits)).toMatchObject({ state: 'answered', sealed: 'sealed' })
  })

  test('a claim that was given back is free; only its holder gives it back', async () => {
    const records = await open(await freshPlace())
    await records.claimRequest(claim(), limits)
    await records.releaseRequest(claim({ startedAt: '2026-03-01T12:00:01.000Z' }))
    expect(await records.claimRequest(claim(), limits)).toEqual({ state: 'running', fingerprint: 'what was asked' })
    await records.releaseRequest(claim())
    expect(await records.claimRequest(claim(), limits)).toEqual({ state: 'claimed' })
  })

  test('what has expired is forgotten, and what was abandoned is free', async () => {
    const records = await open(await freshPlace())
    const old = claim({ startedAt: '2026-02-28T11:59:59.999Z' })
    await records.claimRequest(old, { expired: '', abandoned: '' })
    await records.keepAnswer(old, 'sealed')
    const dead = claim({ id: 'died', startedAt: '2026-03-01T11:49:59.999Z' })
    await records.claimRequest(dead, { expired: '', abandoned: '' })
    expect((await records.claimRequest(claim({ id: 'any other' }), limits)).state).toBe('claimed')
    expect((await records.claimRequest(claim(), limits)).state).toBe('claimed')
    expect((await records.claimRequest(claim({ id: 'died' }), limits)).state).toBe('claimed')
  })
}
