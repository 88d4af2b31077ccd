import fc from 'fast-check'
import { expect, test } from 'vitest'
import { areaOf, metres, millimetres, nanometresOf } from '../../src/units/length.ts'

test('16 in by 24 in is 2 2/3 sq ft', () => {
  // 1 ft2 = 92 903.04 mm2, NIST SP 811 (2008), appendix B.8
  expect(areaOf(406_400_000, 609_600_000)).toBeCloseTo((8 / 3) * 92_903.04, 6)
})

test('nanometres in millimetres and metres', () => {
  expect(millimetres(98_425_000)).toBe(98.425)
  expect(metres(1_016_000_000)).toBe(1.016)
  expect(nanometresOf(0.0254)).toBe(25_400_000)
})

test('metres go back to the same nanometre, anywhere within a kilometre', () => {
  fc.assert(fc.property(fc.integer({ min: -1_000_000_000_000, max: 1_000_000_000_000 }), (nanometres) => nanometresOf(metres(nanometres)) === nanometres))
})
