import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lengthAdvice, readLength, type LengthReading } from '../../src/units/length-text.ts'
import { tapeLength, tapeNanometres, millimetreTextNanometres, tradeText } from './spellings.ts'

const inch = 25_400_000 // nm; 1 in = 2.54E-02 m exactly, NIST SP 811 (2008), appendix B.8
const foot = 304_800_000 // nm; 1 ft = 3.048E-01 m exactly, NIST SP 811 (2008), appendix B.8
const mil = 25_400 // nm; 1 mil = 0.001 in, NIST SP 811 (2008), appendix B.8
const millimetre = 1_000_000

const nanometres = (text: string, unit?: 'in' | 'mm') => {
  const reading = readLength(text, unit)
  return reading.ok ? reading.nanometres : reading.reason
}

describe('lengths with their unit', () => {
  test.each([
    [`3'-4"`, 40 * inch],
    [`3' 4`, 40 * inch],
    [`3'4`, 40 * inch],
    ['40"', 40 * inch],
    ['40 in', 40 * inch],
    ['40 in.', 40 * inch],
    ['40 inches', 40 * inch],
    ['40 [in_i]', 40 * inch],
    ['3⅞"', 3.875 * inch],
    ['3-7/8"', 3.875 * inch],
    ['3 7/8 in', 3.875 * inch],
    ['3.875 in', 3.875 * inch],
    ['½"', 0.5 * inch],
    ['2 2/3 in', 67_733_333], // the course of three in 8 in
    ['3 1/5 in', 81_280_000], // the course of five in 16 in
    [`4'-6 1/2"`, 54.5 * inch],
    [`4' - 6-1/2"`, 54.5 * inch],
    [`4′-6½″`, 54.5 * inch],
    [`4'-6''`, 54 * inch],
    ['4′-6′′', 54 * inch],
    [`1'-0 1/2"`, 12.5 * inch],
    [`1'-0-1/2"`, 12.5 * inch],
    [`0'-6"`, 6 * inch],
    ['4 ft 6 in', 54 * inch],
    ['4 ft. 6 in.', 54 * inch],
    ['4ft6in', 54 * inch],
    ['4 foot 6 inches', 54 * inch],
    ['4 feet', 4 * foot],
    ["4'", 4 * foot],
    ["1/2'", 6 * inch],
    ['0.5 ft', 6 * inch],
    ['4 [ft_i]', 4 * foot],
    ['40 mil', 40 * mil],
    ['40 mils', 40 * mil],
    ['40 [mil_i]', 40 * mil],
    ['98 mm', 98 * millimetre],
    ['98mm', 98 * millimetre],
    ['98.4 mm', 98_400_000],
    ['101.6 cm', 1016 * millimetre],
    ['1.016 m', 1016 * millimetre],
    ['1 km', 1_000_000 * millimetre],
    ['500 um', 500_000],
    ['500 µm', 500_000],
    ['500 μm', 500_000],
    ['0 in', 0],
    ['-0 in', 0],
    ['-1/2 in', -0.5 * inch],
    ['−2 1/2 in', -2.5 * inch],
    ['- 5 mm', -5 * millimetre],
    [`-1'-6"`, -18 * inch],
  ])('%s', (text, expected) => expect(nanometres(text)).toBe(expected))

  test.each([
    ['40 IN', 40 * inch],
    ['4 FT 6 IN', 54 * inch],
    [`4'-6 1/2 IN.`, 54.5 * inch],
    ['40 Inches', 40 * inch],
    ['98 MM', 98 * millimetre],
    ['40 MIL', 40 * mil],
  ])('%s, lettered as on a drawing', (text, expected) => expect(nanometres(text)).toBe(expected))
})

describe('lengths without a unit take that of the document', () => {
  test.each([
    ['1016', 'mm', 1016 * millimetre],
    ['3040', 'mm', 3040 * millimetre],
    ['3 7/8', 'in', 3.875 * inch],
    ['3-7/8', 'in', 3.875 * inch],
    ['3.875', 'in', 3.875 * inch],
    ['-1/4', 'in', -0.25 * inch],
    [`3'-4`, 'mm', 40 * inch],
    ['40"', 'mm', 40 * inch],
    ['98 mm', 'in', 98 * millimetre],
  ] as const)('%s in a document in %s', (text, unit, expected) => expect(nanometres(text, unit)).toBe(expected))

  test.each(['1016', '3040', '3 7/8', '3-7/8', '3.875', '0', '-4'])('%s without one is refused, not guessed', (text) => {
    expect(nanometres(text)).toBe('unitMissing')
  })
})

describe('entries that are refused', () => {
  test.each(['3-4', '3 - 4', '3–4', '3-4"', '7/8-1 3/8', '7/8-1 3/8"', '1 1/2-2 in', '16/24', '32/16', '16/24 in', '9/8"', '3 16/16 in', `4'-12"`, `3'-66`])('%s can be read in two ways', (text) => {
    expect(nanometres(text, 'in')).toBe('ambiguous')
    expect(nanometres(text, 'mm')).toBe('ambiguous')
  })

  test.each(['12,5 mm', '12,5', '1,016 mm', `3'-4,5"`])('%s has a comma', (text) => expect(nanometres(text, 'mm')).toBe('decimalComma'))

  test.each([
    '~1"', '1" min', '1" +/- 1/8', 'NTS', 'typ.', 'V.I.F.', '2C', '3 courses = 8"', '16 oc', '22 ga', '26GA SS', 'L4x3½x5/16 LLV', 'LLV', '(2) L6x3.5x5/16',
    '32 x 24', '15°', '3:12', '1/4" per ft', 'N/A', '?', '', '   ', 'NaN', 'Infinity', '1e3', '1e3 mm', '0x10 in', '1/0 in', 'in', '"', '5 lbf', '5 m2', '4 ft2', '5 kg',
    '--5 in', '+5 in', '5- in', '3. in', '4.5\' 6"', '6"4\'', `3' 4'`, '4 in 6 ft', '5 Mm', '5 M', '__proto__', '5 __proto__', '5 constructor', '3 in\u0000',
  ])('%j is not a length', (text) => {
    expect(nanometres(text, 'in')).toBe('unreadable')
    expect(nanometres(text)).toBe('unreadable')
  })

  test('a kilometre is the longest', () => {
    expect(nanometres('1000 m')).toBe(1_000_000_000_000)
    expect(nanometres('-1000 m')).toBe(-1_000_000_000_000)
    expect(nanometres('1000.000000001 m')).toBe('outOfRange')
    expect(nanometres('-2 km')).toBe('outOfRange')
    expect(nanometres(`${'9'.repeat(30)} km`)).toBe('outOfRange')
  })

  test('each reason tells the person what to write instead', () => {
    const advice = (['unreadable', 'unitMissing', 'ambiguous', 'decimalComma', 'outOfRange'] as const).map((reason) => lengthAdvice({ ok: false, reason }))
    expect(new Set(advice).size).toBe(5)
    expect(lengthAdvice({ ok: false, reason: 'unreadable' })).toContain(`4'-6 1/2"`)
    expect(lengthAdvice({ ok: false, reason: 'unitMissing' })).toContain('lengthUnit')
    expect(lengthAdvice({ ok: false, reason: 'ambiguous' })).toContain(`3'-4"`)
    expect(lengthAdvice({ ok: false, reason: 'decimalComma' })).toContain('12.5 mm')
  })

  test('the lengths that the advice shows can be read', () => {
    for (const text of ['3 7/8 in', '3-7/8"', `4'-6 1/2"`, '98 mm', `3'-4"`, '3 3/4 in', '16 in', '12.5 mm']) expect(readLength(text).ok).toBe(true)
  })
})

describe('exactness', () => {
  test('feet, inches and sixty-fourths come to the same nanometre however they are written', () => {
    fc.assert(
      fc.property(tapeLength, (length) => {
        const { feet, inches, sixtyFourths } = length
        const allInches = feet * 12 + inches
        const spellings = [
          `${feet}'-${inches} ${sixtyFourths}/64"`,
          `${feet}' ${inches}-${sixtyFourths}/64`,
          `${feet} ft ${inches} ${sixtyFourths}/64 in`,
          `${allInches} ${sixtyFourths}/64 in`,
          `${allInches}-${sixtyFourths}/64"`,
          `${allInches}${(sixtyFourths / 64).toFixed(6).slice(1)} in`, // a sixty-fourth has six decimals
          `${feet}'-${inches}${(sixtyFourths / 64).toFixed(6).slice(1)}"`,
        ]
        for (const spelling of spellings) expect([spelling, nanometres(spelling)]).toEqual([spelling, tapeNanometres(length)])
      }),
    )
  })

  test('eighths as one character or as a fraction', () => {
    const signs = ['⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']
    signs.forEach((sign, index) => expect(nanometres(`5${sign} in`)).toBe(5 * inch + (index + 1) * 3_175_000))
  })

  test('millimetres to the sixth decimal, whole nanometres', () => {
    const digits = fc.tuple(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 0, max: 999_999 })).map(([whole, decimals]) => `${whole}.${String(decimals).padStart(6, '0')}`)
    fc.assert(fc.property(digits, (text) => {
      expect(nanometres(`${text} mm`)).toBe(millimetreTextNanometres(text))
    }))
  })

  test('metres, centimetres and millimetres agree', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 900_000 }), (mm) => {
        expect(nanometres(`${mm} mm`)).toBe(mm * millimetre)
        expect(nanometres(`${Math.floor(mm / 10)}.${mm % 10} cm`)).toBe(mm * millimetre)
        expect(nanometres(`${Math.floor(mm / 1000)}.${String(mm % 1000).padStart(3, '0')} m`)).toBe(mm * millimetre)
      }),
    )
  })
})

describe('any text at all', () => {
  const anyText = fc.oneof(fc.string(), fc.string({ unit: 'binary' }), tradeText)
  const unit = fc.constantFrom('in' as const, 'mm' as const, undefined)

  test('gives whole nanometres within a kilometre, or a reason; never an exception', () => {
    fc.assert(
      fc.property(anyText, unit, (text, documentUnit) => {
        const reading: LengthReading = readLength(text, documentUnit)
        if (!reading.ok) return lengthAdvice(reading).length > 20
        return Number.isSafeInteger(reading.nanometres) && Math.abs(reading.nanometres) <= 1e12 && !Object.is(reading.nanometres, -0)
      }),
      { numRuns: 3000 },
    )
  })

  test('a unit of the document matters only where the text has none', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom('in' as const, 'mm' as const), (text, documentUnit) => {
        const alone = readLength(text)
        const within = readLength(text, documentUnit)
        if (alone.ok || alone.reason !== 'unitMissing') expect(within).toEqual(alone)
        else expect(within).toEqual(readLength(`${text} ${documentUnit}`))
      }),
      { numRuns: 3000 },
    )
  })

  test('long texts are refused quickly', () => {
    for (const piece of ['1', '1/', ' 1/2', '1-', "'", '1 ', '½', '- ', '.']) expect(readLength(`${piece.repeat(50_000)}x`, 'in').ok).toBe(false)
  }, 2000)
})
