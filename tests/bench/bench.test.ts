import { expect, test } from 'vitest'
import { contest, disagreements, ground } from './cases.ts'

const on = await ground(40)
const { rules, subjects, facts, ours, interpreted, compiled } = contest(on)

test('most rules can be put to a general rule engine', () => {
  expect(rules.length).toBeGreaterThan(on.ruleSet.rules.length / 2)
})

// Otherwise the engines would not do the same work, and a comparison of their speed would say nothing
test.each(on.windows.map(({ name }, index) => [name, index] as const))('general rule engines decide %s as we do', async (_, index) => {
  const [subject, plain] = [subjects[index], facts[index]]
  if (!subject || !plain) throw new Error('a window without facts')
  const outcomes = ours(subject)
  expect(disagreements(rules, outcomes, compiled(plain))).toEqual([])
  expect(disagreements(rules, outcomes, await interpreted(plain))).toEqual([])
})

test('the windows of the contest meet rules, miss rules and are beyond some', () => {
  expect(new Set(subjects.flatMap((subject) => [...ours(subject).values()]))).toEqual(new Set(['pass', 'fail', 'notApplicable']))
})

test('another answer would be told', () => {
  const [subject] = subjects
  if (!subject) throw new Error('no window')
  const outcomes = new Map(ours(subject))
  const [first = ''] = outcomes.keys()
  expect(disagreements(rules, outcomes, new Map([...outcomes, [first, 'fail']]))).toHaveLength(outcomes.get(first) === 'fail' ? 0 : 1)
})
