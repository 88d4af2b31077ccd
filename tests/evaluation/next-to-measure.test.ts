import { expect, test } from 'vitest'
import type { Finding } from '../../src/evaluation/document.ts'
import { nextToMeasure } from '../../src/evaluation/next-to-measure.ts'
import { amount, judged, resolvedRule } from './subject.ts'

/** Hidden by the first course on it. */
const upstand = 'head.flashing.upstand'
/** Hidden earlier, by the head flashing. */
const bearing = 'head.support.bearing'
/** Never hidden, and seen from the same hold point on as the next. */
const weeps = 'head.weeps.kind'
const spacing = 'head.weeps.spacing'

const finding = judged(resolvedRule({ check: { fact: upstand, comparator: 'notLessThan' } }, amount('8 [in_i]')), {})

function open(rule: string, ...missing: readonly string[]): Finding {
  return { ...finding, rule, missing: [...missing] }
}

const recommended = (one: Finding): Finding => ({ ...one, force: 'recommended' })
const order = (findings: readonly Finding[], holdPoint: Parameters<typeof nextToMeasure>[1] = null) => nextToMeasure(findings, holdPoint).map(({ fact }) => fact)

test('the fact that alone settles the most mandatory rules comes first', () => {
  expect(order([open('a', bearing), open('b', upstand), open('c', upstand)])).toEqual([upstand, bearing])
})

test('recommended rules count only between facts that settle as many mandatory ones', () => {
  expect(order([open('a', bearing), recommended(open('b', upstand)), recommended(open('c', upstand))])).toEqual([bearing, upstand])
  expect(order([open('a', bearing), open('b', upstand), recommended(open('c', upstand))])).toEqual([upstand, bearing])
})

test('of equals, the one that is hidden soonest comes first, and what is never hidden comes last', () => {
  expect(order([open('a', weeps), open('b', upstand), open('c', bearing)])).toEqual([bearing, upstand, weeps])
})

test('of those that are never hidden, the one that can be seen first, and then the alphabet', () => {
  expect(order([open('a', spacing), open('b', weeps), open('c', 'wall.storiesAbove')])).toEqual(['wall.storiesAbove', weeps, spacing])
})

test('a rule that needs several facts is named as one to which each contributes', () => {
  expect(nextToMeasure([open('a', weeps, spacing), open('b', spacing)], null)).toMatchObject([
    { fact: spacing, decides: ['b'], contributesTo: ['a'], holdPoint: 'headFirstCourse', hiddenBy: null },
    { fact: weeps, decides: [], contributesTo: ['a'] },
  ])
})

test('what can no longer be seen is left out from the point that hides it', () => {
  const findings = [open('a', bearing), open('b', upstand), open('c', weeps)]
  expect(order(findings, 'lintelSet')).toEqual([bearing, upstand, weeps])
  expect(order(findings, 'headFlashing')).toEqual([upstand, weeps])
  expect(order(findings, 'headFirstCourse')).toEqual([weeps])
  expect(order([{ ...open('a', bearing), reason: 'covered' }])).toEqual([])
})

test('decided findings and ones that lack no fact ask for nothing', () => {
  expect(order([{ ...open('a', bearing), outcome: 'fail' }, { ...open('b', upstand), outcome: 'notApplicable' }, { ...open('c'), reason: 'outsidePrescriptive' }])).toEqual([])
})
