import { expect, test } from 'vitest'
import { findUnit } from '../../src/units/dimension.ts'
import { weightOf } from '../../src/units/weight.ts'

test('a pound weighs a pound-force', () => {
  // 1 lb = 4.5359237E-01 kg exactly, 1 lbf = 4.448222 N; NIST SP 811 (2008), appendix B.8
  expect(weightOf(0.45359237)).toBeCloseTo(4.448222, 6)
  expect(weightOf(findUnit('[lb_av]/[ft_i]')?.factor ?? NaN)).toBeCloseTo(findUnit('[lbf_av]/[ft_i]')?.factor ?? NaN, 9)
})
