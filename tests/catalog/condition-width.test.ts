import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Condition } from '../../src/catalog/condition.ts'
import { appliesAsWidely } from '../../src/catalog/condition-width.ts'
import { truthOf } from '../../src/evaluation/condition.ts'
import { openingWith } from '../evaluation/subject.ts'

const present: Condition = { fact: 'head.flashing.present', is: true }
const steel: Condition = { fact: 'head.support.kind', is: 'looseSteelAngle' }
const angles: Condition = { fact: 'head.support.kind', oneOf: ['looseSteelAngle', 'shelfAngle'] }
const width = (comparator: 'moreThan' | 'notLessThan' | 'lessThan' | 'notMoreThan', quantity: string): Condition => ({ fact: 'opening.width', comparator, quantity })

test.each<readonly [string, Condition | undefined, Condition | undefined, boolean]>([
  ['no condition is the widest', undefined, steel, true],
  ['and nothing else is as wide as that', steel, undefined, false],
  ['a condition is as wide as itself', { all: [steel, present] }, { all: [steel, present] }, true],
  ['one member less is wider', steel, { all: [present, steel] }, true],
  ['one member more is not', { all: [present, steel] }, steel, false],
  ['one alternative more is wider', { any: [present, steel] }, steel, true],
  ['one alternative less is not', steel, { any: [present, steel] }, false],
  ['another order is as wide', { all: [present, steel] }, { all: [steel, present] }, true],
  ['a longer list is wider', angles, steel, true],
  ['a shorter list is not', steel, angles, false],
  ['the opposite of a narrower one is wider', { not: steel }, { not: angles }, true],
  ['the opposite of a wider one is not', { not: angles }, { not: steel }, false],
  ['a lower threshold is wider', width('moreThan', '16 in'), width('moreThan', '24 in'), true],
  ['a higher one is not', width('moreThan', '24 in'), width('moreThan', '16 in'), false],
  ['the threshold itself included is wider', width('notLessThan', '16 in'), width('moreThan', '16 in'), true],
  ['the threshold itself left out is not', width('moreThan', '16 in'), width('notLessThan', '16 in'), false],
  ['a higher ceiling is wider', width('notMoreThan', '25 in'), width('lessThan', '24 in'), true],
  ['a floor is no ceiling', width('notLessThan', '1 in'), width('notMoreThan', '24 in'), false],
  ['other facts cannot be compared', present, steel, false],
  ['nor a list with a threshold', width('moreThan', '1 in'), { fact: 'opening.width', is: 'wide' }, false],
])('%s', (_, next, than, answer) => expect(appliesAsWidely(next, than)).toBe(answer))

const leaf = fc.constantFrom<Condition>(present, steel, angles, { fact: 'head.flashing.present', is: false }, width('moreThan', '48 in'), width('notLessThan', '48 in'), width('lessThan', '60 in'))
const { condition } = fc.letrec<{ condition: Condition }>((tie) => ({
  condition: fc.oneof(
    { maxDepth: 3 },
    leaf,
    fc.record({ all: fc.array(tie('condition'), { minLength: 1, maxLength: 3 }) }),
    fc.record({ any: fc.array(tie('condition'), { minLength: 1, maxLength: 3 }) }),
    fc.record({ not: tie('condition') }),
  ),
}))
const openings = [true, false, undefined].flatMap((flashed) => ['looseSteelAngle', 'shelfAngle', 'masonryArch', undefined].flatMap((kind) => ['47 in', '48 in', '72 in'].map((wide) => openingWith({ 'head.flashing.present': flashed, 'head.support.kind': kind, 'opening.width': wide }))))

test('whenever it is told, no opening shows otherwise: unknown may become true, and nothing true becomes less', () => {
  let told = 0
  const rank = (one: Condition, index: number) => ({ false: 0, undefined: 1, true: 2 })[String(truthOf(one, openings[index] ?? openingWith({})).is) as 'true']
  fc.assert(fc.property(condition, condition, (next, than) => {
    if (!appliesAsWidely(next, than)) return
    told += 1
    for (const index of openings.keys()) expect(rank(next, index)).toBeGreaterThanOrEqual(rank(than, index))
  }), { numRuns: 2_000 })
  expect(told).toBeGreaterThan(50)
})

test('conditions built to be compared for ever are not told, and soon', () => {
  const tower = (depth: number): Condition => (depth === 0 ? present : { any: [{ all: Array.from({ length: 6 }, () => tower(depth - 1)) }] })
  const other = (depth: number): Condition => (depth === 0 ? steel : { all: Array.from({ length: 6 }, () => ({ any: [other(depth - 1)] })) })
  const start = performance.now()
  expect(appliesAsWidely(tower(4), other(4))).toBe(false)
  expect(performance.now() - start).toBeLessThan(500)
})
