import { expect, test } from 'vitest'
import type { Finding } from '../../src/evaluation/document.ts'
import { summarise } from '../../src/evaluation/summary.ts'
import { amount, judged, resolvedRule } from './subject.ts'

const finding = judged(resolvedRule({ check: { fact: 'head.weeps.spacing', comparator: 'notMoreThan' } }, amount('33 [in_i]')), {})

function findings(...told: readonly string[]): readonly Finding[] {
  return told.map((words) => {
    const [force, outcome] = words.split(' ')
    return { ...finding, force, outcome } as Finding
  })
}

test.each([
  ['fail', ['mandatory fail', 'mandatory notDetermined', 'recommended fail']],
  ['incomplete', ['mandatory notDetermined', 'mandatory pass', 'recommended fail']],
  ['attention', ['mandatory pass', 'recommended fail', 'recommended notDetermined']],
  ['pass', ['mandatory pass', 'mandatory notApplicable', 'recommended pass', 'recommended notDetermined']],
  ['pass', ['mandatory pass', 'informative fail', 'informative notDetermined']],
  ['pass', []],
])('the verdict is %s with %j', (verdict, told) => {
  expect(summarise(findings(...told), false).verdict).toBe(verdict)
})

test('every finding is counted under its outcome, and mandatory ones again', () => {
  expect(summarise(findings('mandatory fail', 'recommended fail', 'mandatory notDetermined', 'recommended notDetermined', 'mandatory pass', 'mandatory notApplicable'), false)).toMatchObject({
    pass: 1, fail: 2, notDetermined: 2, notApplicable: 1, mandatoryFailures: 1, mandatoryNotDetermined: 1,
  })
})

test('figures from memory are counted where they decided something', () => {
  const [pass, open] = findings('mandatory pass', 'mandatory notDetermined')
  const read = { ...finding, outcome: 'fail', evidence: 'primary' } as const
  expect(summarise([pass, pass, open, read].flatMap((one) => one ?? []), false).fromMemory).toBe(2)
})

test.each([
  ['passes', ['mandatory pass'], 'incomplete'],
  ['misses a recommendation', ['mandatory pass', 'recommended fail'], 'incomplete'],
  ['fails a mandatory rule', ['mandatory fail'], 'fail'],
] as const)('by a code that is held only in part, an opening that %s is no better than incomplete', (_, told, verdict) => {
  expect(summarise(findings(...told), true).verdict).toBe(verdict)
})
