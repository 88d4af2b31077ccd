import { expect, test } from 'vitest'
import { holds, marginOf } from '../../src/evaluation/compare.ts'

const limit = 101_600_000

/** What holds a nanometre below the limit, on it, and a nanometre above it. */
const rows = [
  ['notLessThan', [false, true, true], [-1, 0, 1]],
  ['moreThan', [false, false, true], [-1, 0, 1]],
  ['notMoreThan', [true, true, false], [1, 0, -1]],
  ['lessThan', [true, false, false], [1, 0, -1]],
  ['equalTo', [false, true, false], [-1, 0, -1]],
] as const

test.each(rows)('%s holds %j around its limit, without any tolerance', (comparator, outcomes) => {
  expect([limit - 1, limit, limit + 1].map((measured) => holds(comparator, measured, limit))).toEqual(outcomes)
})

test.each(rows)('the margin of %s is spare when positive and short when negative', (comparator, _, margins) => {
  expect([limit - 1, limit, limit + 1].map((measured) => marginOf(comparator, measured, limit))).toEqual(margins)
})
