import { describe, expect, test } from 'vitest'
import { describeOpening } from '../../src/opening/describe.ts'
import { recent } from '../../src/opening/recent.ts'
import { documentOf, windowWith, withFact } from './openings.ts'

describe('what is recent', () => {
  const [one, two] = [{}, {}]

  test('is worked out twice for the same parts and never again, and anew for others, in another order, or more of them', () => {
    const recall = recent<number>()
    let times = 0
    const next = () => { times += 1; return times }
    const asked = [[one, 1], [one, 1], [one, 1], [two, 1], [1, one], [one, 1, undefined], [one], [one, 1]]
    expect(asked.map((parts) => recall(parts, next))).toEqual([1, 2, 2, 3, 4, 5, 6, 2])
  })

  test('tells parts apart by identity, not by what they hold', () => {
    const recall = recent<string>()
    expect(['first', 'second', 'third'].map((word) => recall([{}], () => word))).toEqual(['first', 'second', 'third'])
  })

  test('gives way to what came later, the oldest first', () => {
    const recall = recent<number>({ most: 2 })
    for (const part of [1, 1, 2, 2, 3, 3]) recall([part], () => part)
    expect([2, 3].map((part) => recall([part], () => -part))).toEqual([2, 3])
    expect(recall([1], () => -1)).toBe(-1)
  })

  test('is not what comes once only, however often others come between', () => {
    const recall = recent<number>({ most: 2 })
    for (const part of [1, 2, 3, 1]) recall([part], () => part)
    expect(recall([2], () => -2)).toBe(-2)
    for (const part of [5, 6, 5, 6]) recall([part], () => part)
    expect([5, 6].map((part) => recall([part], () => -part))).toEqual([5, 6])
  })

  test('is told of when it is wanted again, once', () => {
    const told: number[] = []
    const recall = recent<number>({ again: (value) => told.push(value) })
    recall([1], () => 1)
    expect(told).toEqual([])
    for (const part of [1, 1, 2, 2, 2]) recall([part], () => part)
    expect(told).toEqual([1, 2])
  })

  test('is not what failed', () => {
    const recall = recent<number>()
    expect(() => recall([1], () => { throw new Error('a fault') })).toThrow('a fault')
    expect(recall([1], () => 7)).toBe(7)
  })
})

describe('readings', () => {
  const derivable = () => ({ ...documentOf('baseline-window.yaml'), ties: { horizontalSpacing: '16 in', verticalSpacing: '18 in' } })
  const factsOf = (change: Record<string, unknown>) => {
    const opening = describeOpening(windowWith(change))
    if (!opening.ok) throw new Error(opening.problems.map(({ detail }) => detail).join())
    return opening.value.facts
  }

  test('are the same object where the words are the same, given and derived ones', () => {
    const [, , , some, others] = Array.from({ length: 5 }, () => factsOf(derivable()))
    if (!some || !others) throw new Error('nothing was read')
    expect([...others.keys()]).toEqual([...some.keys()])
    expect([...others].filter(([path, readings]) => some.get(path) !== readings)).toEqual([])
    expect([...some.values()].flat().some((reading) => reading?.derivedFrom)).toBe(true)
  })

  test('are others where the same figure is in another unit, or the tape tells more', () => {
    const width = (change: Record<string, unknown>) => factsOf({ opening: { kind: 'window', width: 40, height: 50 }, ...change }).get('opening.width')
    expect(width({ lengthUnit: 'in' })?.[0]?.value).toEqual({ dimension: 'length', amount: 1_016_000_000 })
    expect(width({ lengthUnit: 'in', lengthResolution: '1/16 in' })?.[0]?.resolution).toBe(1_587_500)
    expect(width({ lengthUnit: 'in' })?.[0]?.resolution).toBeUndefined()
  })

  test('of a text are not those of a list that looks the same', () => {
    const bearing = (wire: unknown) => describeOpening(withFact('head.support.bearing', wire))
    expect(bearing(['4 in', '3 in']).ok).toBe(true)
    expect(bearing(JSON.stringify(['4 in', '3 in'])).ok).toBe(false)
  })

  test('of thousands of different widths are each right', () => {
    for (let millimetres = 400; millimetres < 2_000; millimetres += 1) {
      const [reading] = factsOf({ opening: { width: `${millimetres} mm` } }).get('opening.width') ?? []
      expect(reading?.value).toEqual({ dimension: 'length', amount: millimetres * 1_000_000 })
    }
  })
})
