import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plainCharacters, plainDigits, readNumber, timesToNearest, toNumber } from '../../src/units/number-text.ts'

describe('characters a phone or a word processor puts in', () => {
  test.each([
    { typed: '3⅞"', plain: '3 7/8"' },
    { typed: '½ in', plain: '1/2 in' },
    { typed: '7⁄8', plain: '7/8' },
    { typed: '4′-6″', plain: '4\'-6"' },
    { typed: '4’ 6”', plain: '4\' 6"' },
    { typed: `4'-6''`, plain: '4\'-6"' },
    { typed: '4′-6′′', plain: '4\'-6"' },
    { typed: '−1/2 in', plain: '-1/2 in' },
    { typed: '3–4', plain: '3-4' },
    { typed: ' 98\u00a0 mm\n', plain: '98 mm' },
  ])('$typed', ({ typed, plain }) => expect(plainCharacters(typed)).toBe(plain))

  test('what is plain already stays as it is', () => {
    fc.assert(fc.property(fc.string(), (text) => plainCharacters(plainCharacters(text)) === plainCharacters(text)))
  })
})

describe('numbers', () => {
  test.each([
    ['3', 3], ['3.875', 3.875], ['.5', 0.5], ['7/8', 0.875], ['3 7/8', 3.875], ['3-7/8', 3.875], ['3 - 7/8', 3.875], ['1-1/2', 1.5], ['007', 7],
  ])('%s', (text, value) => expect(toNumber(readNumber(text) ?? { numerator: 0n, denominator: 1n })).toBe(value))

  test.each(['', ' ', '.', '3.', '3-4', '1e3', '0x10', '1/0', '1/2/3', '-3', '+3', '3,5', 'NaN', 'Infinity', '٣'])('%j is none', (text) => {
    expect(readNumber(text)).toBeUndefined()
  })

  test('keeps every digit that was written', () => {
    expect(readNumber('0.30000000000000004')).toEqual({ numerator: 30000000000000004n, denominator: 10n ** 17n })
  })

  test('halves go away from zero, and less than a half goes down', () => {
    expect(timesToNearest({ numerator: 1n, denominator: 2n }, 1)).toBe(1)
    expect(timesToNearest({ numerator: 5n, denominator: 2n }, 1)).toBe(3)
    expect(timesToNearest({ numerator: 49n, denominator: 100n }, 1)).toBe(0)
    expect(timesToNearest({ numerator: 1n, denominator: 3n }, 25_400_000)).toBe(8_466_667)
  })
})

describe('numbers of other programs', () => {
  test.each([
    [1e-7, '0.0000001'], [1e21, '1000000000000000000000'], [0.1 + 0.2, '0.30000000000000004'], [48, '48'], [-0, '0'],
  ])('%d as %s', (value, text) => expect(plainDigits(value)).toBe(text))

  test('read back, whatever their size', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e24, noNaN: true }), (value) => {
        const read = readNumber(plainDigits(value))
        expect(read).toBeDefined()
        if (read) expect(Math.abs(toNumber(read) - value)).toBeLessThanOrEqual(Math.max(1e-20, value * 1e-15))
      }),
    )
  })
})
