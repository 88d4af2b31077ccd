import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { quantityExamples, readQuantity } from '../../src/units/quantity.ts'
import type { Dimension } from '../../src/units/dimension.ts'
import { tradeText } from './spellings.ts'

describe('amounts', () => {
  test.each([
    ['4 [in_i]', 'length', 101_600_000],
    ['3/16 in', 'length', 4_762_500],
    ['-1/2 in', 'length', -12_700_000],
    ['2.67 [ft_i]2', 'area', 2.67 * 92_903.04], // 1 ft2 = 9.290304E-02 m2, NIST SP 811
    ['100 ft2', 'area', 9_290_304],
    ['2 2/3 sq ft', 'area', (8 / 3) * 92_903.04],
    ['0.25 m²', 'area', 250_000],
    ['40 psf', 'arealLoad', 40 * 47.88026], // NIST SP 811
    ['40 PSF', 'arealLoad', 40 * 47.88026],
    ['1.9 kPa', 'arealLoad', 1900],
    ['22000 [psi]', 'stress', 22_000 * 6894.757], // NIST SP 811
    ['200 GPa', 'stress', 200e9],
    ['115 mph', 'speed', 115 * 0.44704], // NIST SP 811
    ['51 m/s', 'speed', 51],
    ['500 lbf', 'force', 500 * 4.448222], // NIST SP 811
    ['15 deg', 'angle', 15],
    ['15°', 'angle', 15],
    ['-15 degrees', 'angle', -15],
    ['0.0009', 'count', 0.0009],
    ['600', 'count', 600],
    ['0', 'count', 0],
    ['-0', 'count', 0],
  ] as const)('%s', (text, dimension, amount) => {
    const quantity = readQuantity(text)
    expect(quantity?.dimension).toBe(dimension)
    expect(Math.abs((quantity?.amount ?? NaN) - amount)).toBeLessThanOrEqual(Math.abs(amount) * 1e-7)
    expect(Object.is(quantity?.amount, -0)).toBe(false)
  })

  test.each(['', '?', 'N/A', '40 kgf', '12,5 psf', '3-4 psf', '1e3 psf', 'NaN psf', '4 1', '-', '5 __proto__', '3:0', '3:', ':12', '1/0 psf', '3 in x', '2 %%'])('%j is none', (text) => {
    expect(readQuantity(text)).toBeUndefined()
  })
})

describe('slopes', () => {
  const degrees = (radians: number) => (radians * 180) / Math.PI

  test.each([
    ['3:12', degrees(Math.atan2(3, 12))],
    ['3 : 12', degrees(Math.atan2(3, 12))],
    ['3 in 12', degrees(Math.atan2(3, 12))],
    ['1:4', degrees(Math.atan2(3, 12))],
    ['2 1/2:12', degrees(Math.atan2(2.5, 12))],
    ['2-1/2:12', degrees(Math.atan2(2.5, 12))],
    ['1/4 in per ft', degrees(Math.atan2(0.25, 12))],
    ['1/4" per ft', degrees(Math.atan2(0.25, 12))],
    ['1/4 in. per ft.', degrees(Math.atan2(0.25, 12))],
    ['1/4 inch per foot', degrees(Math.atan2(0.25, 12))],
    ['1/4"/ft', degrees(Math.atan2(0.25, 12))],
    ['-1:12', -degrees(Math.atan2(1, 12))],
    ['12:12', 45],
    ['0:12', 0],
    ['-0:12', 0],
  ])('%s', (text, expected) => {
    expect(readQuantity(text)?.dimension).toBe('angle')
    expect(readQuantity(text)?.amount).toBeCloseTo(expected, 10)
    expect(Object.is(readQuantity(text)?.amount, -0)).toBe(false)
  })

  test('3 in 12 is 14.04 degrees, less than 15', () => {
    const [slope, angle] = [readQuantity('3:12'), readQuantity('15 deg')]
    expect(slope?.amount).toBeCloseTo(14.036, 3)
    expect(slope?.amount).toBeLessThan(angle?.amount ?? 0)
  })

  test('a slope of one is 45 degrees, and steeper is more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 999 }), (fall, run) => {
        const angle = readQuantity(`${fall}:${run}`)?.amount ?? NaN
        expect(Math.sign(angle - 45)).toBe(Math.sign(fall - run))
        expect(angle + (readQuantity(`${run}:${fall}`)?.amount ?? NaN)).toBeCloseTo(90, 9)
      }),
    )
  })
})

describe('any text at all', () => {
  test('gives a finite amount or none; never an exception', () => {
    const anyText = fc.oneof(fc.string(), tradeText, tradeText.map((text) => `${text} psf`), fc.tuple(tradeText, tradeText).map(([a, b]) => `${a}:${b}`))
    fc.assert(
      fc.property(anyText, (text) => {
        const quantity = readQuantity(text)
        return quantity === undefined || Number.isFinite(quantity.amount)
      }),
      { numRuns: 3000 },
    )
  })

  test('long texts are refused quickly', () => {
    for (const piece of ['1', '1/', '1 ', '1:', ' in ', '- ', '.', '1 ft ']) expect(readQuantity(`${piece.repeat(50_000)}x`)).toBeUndefined()
  }, 2000)

  test('a negative amount is the same one below zero', () => {
    fc.assert(
      fc.property(fc.nat(30_000), fc.constantFrom('in', 'mm', 'psf', 'deg', 'sq ft', 'mph'), (number, unit) => {
        const positive = readQuantity(`${number} ${unit}`)?.amount ?? NaN
        expect(readQuantity(`-${number} ${unit}`)?.amount).toBe(positive === 0 ? 0 : -positive)
      }),
      { numRuns: 300 },
    )
  })
})

test('the examples shown to a person are read as what they are examples of', () => {
  for (const [dimension, text] of Object.entries(quantityExamples) as [Dimension, string][]) {
    const read = text.split(/ or |, or as a slope /).map((one) => readQuantity(one)?.dimension)
    expect([dimension, read]).toEqual([dimension, read.map(() => dimension)])
  }
})
