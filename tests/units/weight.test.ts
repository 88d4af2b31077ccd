import { expect, test } from 'vitest'
import { findUnit } from '../../src/units/dimension.ts'
import { weightOf } from '../../src/units/weight.ts'

// NIST SP 811, appendix B: 1 lb is 0.45359237 kg, 1 lbf is 4.4482216152605 N
test('a pound weighs a pound-force', () => {
  expect(weightOf(0.45359237)).toBeCloseTo(findUnit('lbf')?.factor ?? NaN, 12)
})
