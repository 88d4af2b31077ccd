import { expect, test } from 'vitest'
import type { Comparator, Limit } from '../../src/catalog/limit.ts'
import { isAtLeastAsStrict } from '../../src/catalog/strictness.ts'

interface Required {
  readonly limit: Limit
  readonly comparator: Comparator
}
type Row = readonly [string, Required, Required]

const citation = { publication: 'irc', editions: ['2021'], locator: 'R703', evidence: 'memory' as const, lastReviewed: '2026-11-25' }

function required(comparator: Comparator, what: string | boolean | readonly string[]): Required {
  if (typeof what === 'boolean') return { comparator, limit: { ...citation, value: what } }
  if (typeof what !== 'string') return { comparator, limit: { ...citation, values: [...what] } }
  return { comparator, limit: { ...citation, governing: 'inchPound', inchPound: what, si: what } }
}

const stricter: readonly Row[] = [
  ['a floor that rises', required('notLessThan', '6 in'), required('notLessThan', '4 in')],
  ['a floor that stays', required('notLessThan', '4 in'), required('notLessThan', '4 in')],
  ['a floor that no longer may be touched', required('moreThan', '4 in'), required('notLessThan', '4 in')],
  ['a floor that may be touched but is higher', required('notLessThan', '5 in'), required('moreThan', '4 in')],
  ['a floor in millimeters that is a little higher', required('notLessThan', '102 mm'), required('notLessThan', '4 in')],
  ['a ceiling that falls', required('notMoreThan', '24 in'), required('notMoreThan', '33 in')],
  ['a ceiling that no longer may be touched', required('lessThan', '33 in'), required('notMoreThan', '33 in')],
  ['fewer values allowed', required('oneOf', ['a']), required('oneOf', ['a', 'b'])],
  ['one value where several were allowed', required('equalTo', ['a']), required('oneOf', ['a', 'b'])],
  ['more values barred', required('noneOf', ['none', 'rope']), required('noneOf', ['none'])],
  ['the same yes', required('equalTo', true), required('equalTo', true)],
]

const notStricter: readonly Row[] = [
  ['a floor that falls', required('notLessThan', '3 in'), required('notLessThan', '4 in')],
  ['a floor that may be touched now', required('notLessThan', '4 in'), required('moreThan', '4 in')],
  ['a floor in millimeters that is a little lower', required('notLessThan', '101 mm'), required('notLessThan', '4 in')],
  ['a ceiling that rises', required('notMoreThan', '36 in'), required('notMoreThan', '33 in')],
  ['a ceiling that may be touched now', required('notMoreThan', '33 in'), required('lessThan', '33 in')],
  ['a floor that becomes a ceiling', required('notMoreThan', '6 in'), required('notLessThan', '4 in')],
  ['a ceiling that becomes a floor', required('notLessThan', '24 in'), required('notMoreThan', '33 in')],
  ['an angle for a length', required('notLessThan', '60 deg'), required('notLessThan', '4 in')],
  ['more values allowed', required('oneOf', ['a', 'b']), required('oneOf', ['a'])],
  ['fewer values barred', required('noneOf', ['none']), required('noneOf', ['none', 'rope'])],
  ['what was barred is allowed', required('oneOf', ['rope']), required('noneOf', ['rope'])],
  ['the opposite', required('equalTo', false), required('equalTo', true)],
  ['a word for an amount', required('oneOf', ['plenty']), required('notLessThan', '4 in')],
  ['an amount for a word', required('notLessThan', '4 in'), required('oneOf', ['plenty'])],
]

test.each(stricter)('%s is at least as strict', (_, next, than) => {
  expect(isAtLeastAsStrict(next, than)).toBe(true)
})

test.each(notStricter)('%s is not shown to be as strict', (_, next, than) => {
  expect(isAtLeastAsStrict(next, than)).toBe(false)
})

test('a part of a fact and a table are never shown to be as strict, not even as themselves', () => {
  const part: Required = { comparator: 'notLessThan', limit: { ...citation, proportion: '1/3', of: 'wall.veneer.thickness' } }
  const table: Required = { comparator: 'notMoreThan', limit: { ...citation, table: 'lintel.angle-spans' } }
  expect([isAtLeastAsStrict(part, part), isAtLeastAsStrict(table, table)]).toEqual([false, false])
})
