import { expect, test } from 'vitest'
import { added } from '../../src/quantities/added.ts'
import { amount } from './inputs.ts'

test('adds lengths and shows the addition', () => {
  expect(added(amount('8 in'), amount('48 1/2 in'), amount('8 in'))).toEqual({ value: amount('64 1/2 in'), steps: ['8 in + 48 1/2 in + 8 in = 64 1/2 in'] })
})

test('subtracts a length that is negative', () => {
  expect(added(amount('8 in'), amount('-1/4 in')).steps).toEqual(['8 in + -1/4 in = 7 3/4 in'])
})
