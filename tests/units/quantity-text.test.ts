import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { baseUnits, type Dimension } from '../../src/units/dimension.ts'
import { readLength } from '../../src/units/length-text.ts'
import { readQuantity } from '../../src/units/quantity.ts'
import { exactLengthText, feetInchesText, inchText, millimetreText, quantityText } from '../../src/units/quantity-text.ts'
import { tapeLength, tapeNanometres } from './spellings.ts'

const anyLength = fc.integer({ min: -1_000_000_000_000, max: 1_000_000_000_000 })
const read = (text: string) => {
  const reading = readLength(text)
  return reading.ok ? reading.nanometres : reading.reason
}

describe('lengths as text', () => {
  test.each([
    [98_425_000, '3 7/8 in', '98.425 mm', `0'-3 7/8"`],
    [1_384_300_000, '54 1/2 in', '1384.3 mm', `4'-6 1/2"`],
    [12_700_000, '1/2 in', '12.7 mm', `0'-1/2"`],
    [-12_700_000, '-1/2 in', '-12.7 mm', `-0'-1/2"`],
    [396_875, '1/64 in', '0.396875 mm', `0'-1/64"`],
    [25_400_000, '1 in', '25.4 mm', `0'-1"`],
    [100_000_000, '3.937 in', '100 mm', `0'-3.937"`],
    [0, '0 in', '0 mm', `0'-0"`],
    [-1, '0 in', '-0.000001 mm', `-0'-0"`],
    [1_219_199_999, '48 in', '1219.199999 mm', `4'-0"`],
  ])('%d nm', (nanometres, inches, millimetres, feetAndInches) => {
    expect([inchText(nanometres), millimetreText(nanometres), feetInchesText(nanometres)]).toEqual([inches, millimetres, feetAndInches])
  })

  test('a measurement reads back to the same nanometre', () => {
    fc.assert(fc.property(anyLength, (nanometres) => read(exactLengthText(nanometres)) === nanometres), { numRuns: 2000 })
  })

  test('what a tape shows is written in inches, whole feet never as twelve inches', () => {
    fc.assert(
      fc.property(tapeLength, (length) => {
        const nanometres = tapeNanometres(length)
        expect(exactLengthText(nanometres)).toMatch(/ in$/)
        expect(read(inchText(nanometres))).toBe(nanometres)
        expect(read(feetInchesText(nanometres))).toBe(nanometres)
      }),
    )
  })

  test('feet and inches of any length read back to within half a thousandth of an inch', () => {
    fc.assert(fc.property(fc.integer({ min: -999_000_000_000, max: 999_000_000_000 }), (nanometres) => Math.abs(Number(read(feetInchesText(nanometres))) - nanometres) <= 12_700), { numRuns: 2000 })
  })

  test('fractions are in lowest terms', () => {
    expect([8, 16, 32, 48, 56, 60, 62, 63].map((n) => inchText(n * 396_875))).toEqual(['1/8 in', '1/4 in', '1/2 in', '3/4 in', '7/8 in', '15/16 in', '31/32 in', '63/64 in'])
  })
})

describe('other quantities as text', () => {
  test.each([
    ['arealLoad', 1915.21, '40 psf', '1.915 kPa'],
    ['area', 247_741.44, '2.667 ft2', '0.2477 m2'],
    ['speed', 51.4096, '115 mph', '51.41 m/s'],
    ['angle', 14.036243, '14.04 deg', '14.04 deg'],
    ['stress', 151_684_659, '22000 psi', '151.7 MPa'],
    ['count', 3, '3', '3'],
    ['ratio', 0.98765, '0.9877', '0.9877'],
    ['force', 0, '0 lbf', '0 N'],
  ] as const)('%s', (dimension, amount, inchPound, si) => {
    expect([quantityText({ dimension, amount }, 'inchPound'), quantityText({ dimension, amount }, 'si')]).toEqual([inchPound, si])
  })

  const others = (Object.keys(baseUnits) as Dimension[]).filter((dimension) => dimension !== 'length')

  test('what is shown can be written back, to the four figures shown', () => {
    const size = fc.double({ min: 1e-4, max: 1e9, noNaN: true })
    fc.assert(
      fc.property(fc.constantFrom(...others), size, fc.boolean(), fc.constantFrom('inchPound' as const, 'si' as const), (dimension, positive, negative, system) => {
        const amount = negative ? -positive : positive
        const back = readQuantity(quantityText({ dimension, amount }, system))
        expect(back?.dimension).toBe(dimension === 'ratio' ? 'count' : dimension)
        expect(Math.abs((back?.amount ?? NaN) / amount - 1)).toBeLessThanOrEqual(0.00051)
      }),
      { numRuns: 1000 },
    )
  })

  test('never an exception, however small or large', () => {
    fc.assert(fc.property(fc.constantFrom(...others), fc.double(), (dimension, amount) => quantityText({ dimension, amount }, 'si').length > 0))
  })
})
