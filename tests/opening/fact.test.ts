import { expect, test } from 'vitest'
import { z } from 'zod'
import { choice, factRegistry, flag, lengthPerEnd, required } from '../../src/opening/fact.ts'

const seen = { help: 'Seen in a test.', from: 'detailReview' } as const

test('a fact may be left out or be null; a required one may not', () => {
  const optional = choice('Kind', ['a', 'b'], seen)
  const demanded = required(choice('Kind', ['a', 'b'], seen))
  expect([undefined, null, 'a', 'c'].map((wire) => optional.safeParse(wire).success)).toEqual([true, true, true, false])
  expect([undefined, null, 'a', 'c'].map((wire) => demanded.safeParse(wire).success)).toEqual([false, false, true, false])
  expect(factRegistry.get(demanded)).toEqual(factRegistry.get(optional))
})

test('only a fact can be required', () => expect(() => required(z.string().nullish())).toThrow('only a fact'))

test('two facts made alike keep their own titles', () => {
  const [left, right] = [flag('One', seen), flag('Other', seen)]
  expect([factRegistry.get(left)?.title, factRegistry.get(right)?.title]).toEqual(['One', 'Other'])
})

test('a fact with ends takes a value, one or two ends, and null for an end', () => {
  const bearing = lengthPerEnd('Bearing', { ...seen, between: ['0 in', '10 ft'] })
  expect(['4 in', 4, { value: 4, unit: 'in' }, ['4 in'], ['4 in', null], [null, null]].map((wire) => bearing.safeParse(wire).success)).not.toContain(false)
  expect([[], ['1 in', '2 in', '3 in'], [['1 in']], [true], { left: '4 in' }].map((wire) => bearing.safeParse(wire).success)).not.toContain(true)
})
