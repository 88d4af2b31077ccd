import { describe, expect, test } from 'vitest'
import { delays, nextAttempt } from '../../src/webhooks/schedule.ts'

const now = new Date('2026-03-02T09:00:00.000Z')
const after = (attempts: number, random = 0, retryAfter: string | null = null) => {
  const next = nextAttempt({ attempts, retryAfter, now, random })
  return next && (next.getTime() - now.getTime()) / 1_000
}

test('the schedule is the example of Standard Webhooks 1.0.0, up to 75 h 35 min 5 s', () => {
  // spec/standard-webhooks.md, "Deliverability and reliability": the column "Time since start"
  const stated = ['00:00:05', '00:05:05', '00:35:05', '02:35:05', '07:35:05', '17:35:05', '31:35:05', '51:35:05', '75:35:05']
  let since = 0
  const times = delays.map((delay) => {
    since += delay / 1_000
    return [Math.floor(since / 3_600), Math.floor((since % 3_600) / 60), since % 60].map((part) => String(part).padStart(2, '0')).join(':')
  })
  expect(times).toEqual(stated)
})

test('there is an end after ten attempts', () => {
  expect(after(9)).toBe(86_400)
  expect(after(10)).toBeUndefined()
})

test('a retry is scattered by up to a tenth, never sooner', () => {
  expect([after(2, 0), after(2, 0.5), after(2, 0.999_999)]).toEqual([300, 315, 329.999])
})

describe('a receiver that names a time', () => {
  test.each([
    ['in seconds', '7200', 7_200],
    ['as a date', 'Mon, 02 Mar 2026 11:00:00 GMT', 7_200],
    ['sooner than it would be', '3', 300],
    ['that is past', 'Mon, 02 Mar 2026 01:00:00 GMT', 300],
    ['in a way that cannot be read', 'soon', 300],
    ['years away', '999999999', 86_400],
  ])('%s', (_, retryAfter, seconds) => expect(after(2, 0, retryAfter)).toBe(seconds))
})
