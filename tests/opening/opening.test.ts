import { expect, test } from 'vitest'
import { valueOf } from '../../src/opening/opening.ts'
import { described, windowWith } from './openings.ts'

test('the value of a fact, and none where nothing is known', () => {
  const opening = described(windowWith({ head: { support: { bearing: [null, '4 in'] } } }))
  expect(valueOf(opening, 'opening.kind')).toBe('window')
  expect(valueOf(opening, 'head.support.kind')).toBeUndefined()
  expect(valueOf(opening, 'head.support.bearing')).toBeUndefined()
  expect(valueOf(opening, 'no.such.fact')).toBeUndefined()
})
