import { describe, expect, test } from 'vitest'
import { notExceeded, spellsOf } from '../../src/quantities/rain/wall-index.ts'

const at = (time: number, hourly: number, year = 2001) => ({ year, time, hourly })

// ISO 15927-3, from memory: 96 hours without driving rain on the wall end a spell
describe('spells of driving rain', () => {
  test('95 dry hours between two wet ones do not end a spell, 96 do', () => {
    expect(spellsOf([at(0, 1), at(96, 2)], 96)).toEqual([{ year: 2001, depth: 3 }])
    expect(spellsOf([at(0, 1), at(97, 2)], 96)).toEqual([{ year: 2001, depth: 1 }, { year: 2001, depth: 2 }])
  })

  test('over New Year belongs to the year in which it began', () => {
    expect(spellsOf([at(0, 1), at(1, 2, 2002)], 96)).toEqual([{ year: 2001, depth: 3 }])
  })

  test('there is none without driving rain', () => expect(spellsOf([], 96)).toEqual([]))
})

// ISO 15927-3, from memory: the spell that is not exceeded in 67 percent of the years
describe('the amount that a share of them does not exceed', () => {
  test.each([[[3, 1, 2], 0.67, 3], [[3, 1, 2, 4, 6, 5, 7, 8, 10, 9], 0.67, 7], [[5], 0.67, 5], [[1, 2, 3, 4], 0.5, 2]])('of %j at %d', (amounts, share, expected) => {
    expect(notExceeded(amounts, share)).toBe(expected)
  })

  test('of none is not known', () => expect(notExceeded([], 0.67)).toBeNull())
})
