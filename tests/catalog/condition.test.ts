import { describe, expect, test } from 'vitest'
import { condition, type Condition } from '../../src/catalog/condition.ts'
import { shapeProblems } from '../../src/opening/shape-problems.ts'

const leaf: Condition = { fact: 'head.flashing.present', is: true }
const nested = (depth: number, wrap: (inner: Condition) => Condition): Condition => (depth === 0 ? leaf : wrap(nested(depth - 1, wrap)))
const wraps = { all: (inner: Condition): Condition => ({ all: [inner] }), any: (inner: Condition): Condition => ({ any: [inner] }), not: (inner: Condition): Condition => ({ not: inner }) }

function problemsIn(content: unknown): readonly string[] {
  const parsed = condition.safeParse(content, { reportInput: true })
  return parsed.success ? [] : shapeProblems(condition, parsed.error).map(({ pointer, detail }) => `${pointer} ${detail}`)
}

describe.each(Object.entries(wraps))('conditions within one another by "%s"', (key, wrap) => {
  test('go eight deep', () => expect(problemsIn(nested(8, wrap))).toEqual([]))

  test('go no deeper, which is told once', () => {
    const problems = problemsIn(nested(9, wrap))
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatch(new RegExp(`/${key} must be a comparison of one fact, since conditions go at most 8 deep$`))
  })

  test('are refused soon, however deep they go', () => {
    const start = performance.now()
    expect(problemsIn(nested(1_000, wrap))).toHaveLength(1)
    expect(performance.now() - start).toBeLessThan(500)
  })
})
