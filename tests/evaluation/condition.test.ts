import { describe, expect, test } from 'vitest'
import type { Condition } from '../../src/catalog/condition.ts'
import { factsIn, truthOf } from '../../src/evaluation/condition.ts'
import { openingWith } from './subject.ts'

type Value = true | false | undefined

const p = 'head.flashing.present'
const q = 'sill.flashing.present'
const isTrue = (fact: string): Condition => ({ fact, is: true })
const openingOf = (first: Value, second: Value) => openingWith({ [p]: first, [q]: second })

/** Kleene's strong tables: the first two columns are given, then "both", "either" and "not the first". */
const table: readonly (readonly [Value, Value, Value, Value, Value])[] = [
  [true, true, true, true, false],
  [true, false, false, true, false],
  [true, undefined, undefined, true, false],
  [false, true, false, true, true],
  [false, false, false, false, true],
  [false, undefined, false, undefined, true],
  [undefined, true, undefined, true, undefined],
  [undefined, false, false, undefined, undefined],
  [undefined, undefined, undefined, undefined, undefined],
]

describe.each(table)('with one fact %s and another %s', (first, second, both, either, notFirst) => {
  const opening = openingOf(first, second)

  test(`both is ${both}, either is ${either}, not the first is ${notFirst}`, () => {
    expect(truthOf({ all: [isTrue(p), isTrue(q)] }, opening).is).toBe(both)
    expect(truthOf({ any: [isTrue(p), isTrue(q)] }, opening).is).toBe(either)
    expect(truthOf({ not: isTrue(p) }, opening).is).toBe(notFirst)
  })

  test('the laws of De Morgan and of double negation hold', () => {
    const truth = (condition: Condition) => truthOf(condition, opening).is
    const [one, other] = [isTrue(p), isTrue(q)]
    expect(truth({ not: { all: [one, other] } })).toBe(truth({ any: [{ not: one }, { not: other }] }))
    expect(truth({ not: { any: [one, other] } })).toBe(truth({ all: [{ not: one }, { not: other }] }))
    expect(truth({ not: { not: one } })).toBe(truth(one))
  })
})

describe('what a condition says about itself', () => {
  test('when it is false, the facts that made it so', () => {
    expect(truthOf({ all: [isTrue(p), isTrue(q)] }, openingOf(undefined, false))).toEqual({ is: false, decidedBy: [q] })
    expect(truthOf({ any: [isTrue(p), isTrue(q)] }, openingOf(false, false))).toEqual({ is: false, decidedBy: [p, q] })
    expect(truthOf({ not: isTrue(p) }, openingOf(true, undefined))).toEqual({ is: false, decidedBy: [p] })
  })

  test('when it is unknown, every fact that is missing, once', () => {
    expect(truthOf({ all: [isTrue(p), { any: [isTrue(q), isTrue(p)] }] }, openingOf(undefined, undefined))).toEqual({ is: undefined, missing: [p, q], conflicting: [] })
    expect(truthOf({ not: isTrue(p) }, openingOf(undefined, true))).toEqual({ is: undefined, missing: [p], conflicting: [] })
  })

  test('which facts it may ask for', () => {
    expect(factsIn({ all: [isTrue(p), { not: { any: [isTrue(q), { fact: 'opening.width', comparator: 'moreThan', quantity: '16 in' }] } }] })).toEqual([p, q, 'opening.width'])
  })
})

describe('a fact', () => {
  const width = (comparator: 'notLessThan' | 'notMoreThan' | 'lessThan' | 'moreThan', quantity: string): Condition => ({ fact: 'opening.width', comparator, quantity })

  test('that is an amount is compared exactly, in whichever unit', () => {
    const opening = openingWith({ 'opening.width': '16 in' })
    const truths = (['notLessThan', 'notMoreThan', 'lessThan', 'moreThan'] as const).map((comparator) => truthOf(width(comparator, '406.4 mm'), opening).is)
    expect(truths).toEqual([true, true, false, false])
    expect(truthOf(width('moreThan', '406 mm'), opening).is).toBe(true)
  })

  test('that is a choice is one of those listed or is not', () => {
    const oneOf = (...values: string[]): Condition => ({ fact: 'head.support.kind', oneOf: values })
    const opening = openingWith({ 'head.support.kind': 'shelfAngle' })
    expect(truthOf(oneOf('looseSteelAngle', 'shelfAngle'), opening).is).toBe(true)
    expect(truthOf(oneOf('looseSteelAngle'), opening)).toEqual({ is: false, decidedBy: ['head.support.kind'] })
    expect(truthOf(oneOf('looseSteelAngle'), openingWith({}))).toEqual({ is: undefined, missing: ['head.support.kind'], conflicting: [] })
  })

  test.each([
    ['either end has it', [false, true], true],
    ['one end has it and the other is not known', [null, true], true],
    ['neither end has it', [false, false], false],
    ['one end has it not and the other is not known', [false, null], undefined],
    ['neither end is known', [null, null], undefined],
  ])('with two ends is so when %s: %j gives %s', (_, ends, is) => {
    expect(truthOf(isTrue('head.flashing.endDamPresent'), openingWith({ 'head.flashing.endDamPresent': ends })).is).toBe(is)
  })
})

describe('a reading that others contradict', () => {
  const [dams, flashed]: readonly [Condition, Condition] = [isTrue('head.flashing.endDamPresent'), isTrue(p)]
  const opening = (more: Readonly<Record<string, unknown>> = {}) => openingWith({ 'head.flashing.endDamPresent': true, 'head.flashing.endDamHeight': '0 in', ...more })
  const unknown = { is: undefined, missing: [], conflicting: ['head.flashing.endDamPresent'] }

  test('is neither so nor not so', () => {
    expect(truthOf(dams, opening())).toEqual(unknown)
    expect(truthOf({ not: dams }, opening())).toEqual(unknown)
    expect(truthOf({ fact: 'head.flashing.endDamPresent', is: false }, opening())).toEqual(unknown)
  })

  test('does not matter where something else decides', () => {
    expect(truthOf({ any: [dams, flashed] }, opening({ [p]: true }))).toEqual({ is: true })
    expect(truthOf({ all: [dams, flashed] }, opening({ [p]: false }))).toEqual({ is: false, decidedBy: [p] })
    expect(truthOf({ all: [dams, flashed] }, opening({ [p]: true }))).toEqual(unknown)
    expect(truthOf({ any: [dams, flashed] }, opening())).toEqual({ ...unknown, missing: [p] })
  })
})
