import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readSection } from '../../src/opening/section-text.ts'

describe('angles as schedules write them', () => {
  test.each([
    ['L5x3-1/2x5/16', 'L5x3-1/2x5/16'],
    ['L4x3½x5/16 LLV', 'L4x3-1/2x5/16'],
    ['L4x3½x5/16LLV', 'L4x3-1/2x5/16'],
    ['L4x3½x5/16, LLH', 'L4x3-1/2x5/16'],
    ['L4 x 3.5 x 0.3125', 'L4x3-1/2x5/16'],
    ['l4X3-1/2X5/16', 'L4x3-1/2x5/16'],
    ['L 4" × 3 1/2" × 5/16"', 'L4x3-1/2x5/16'],
    ['∠4x3-1/2x5/16', 'L4x3-1/2x5/16'],
    ['angle 4 x 3-1/2 x 5/16', 'L4x3-1/2x5/16'],
    ['5 x 3 1/2 x 5/16', 'L5x3-1/2x5/16'],
    ['3-1/2x3-1/2x1/4', 'L3-1/2x3-1/2x1/4'],
    ['2-1/2x2-1/2x1/4', 'L2-1/2x2-1/2x1/4'], // one angle of 2 1/2 in, not a pair
    ['2 1/2 x 2 1/2 x 1/4', 'L2-1/2x2-1/2x1/4'],
    ['3x3x1/4', 'L3x3x1/4'],
    ['L3.50x3.50x0.250', 'L3-1/2x3-1/2x1/4'],
    ['L127x89x7.9', 'L127x89x7.9'],
    ['127 x 89 x 7.9', 'L127x89x7.9'],
    ['L102X89X7.9', 'L102x89x7.9'],
  ])('%s', (text, section) => expect(readSection(text)).toBe(section))

  test.each([
    ['2L6x3-1/2x5/16', '2L6x3-1/2x5/16'],
    ['(2) L6x3.5x5/16', '2L6x3-1/2x5/16'],
    ['(2)L6x3½x5/16 LLBB', '2L6x3-1/2x5/16'],
    ['2 L6x3-1/2x5/16', '2L6x3-1/2x5/16'],
    ['2-L6x3-1/2x5/16', '2L6x3-1/2x5/16'],
    ['(3) 4x3-1/2x5/16', '3L4x3-1/2x5/16'],
    ['(1) L4x3-1/2x5/16', 'L4x3-1/2x5/16'],
  ])('%s is a pair or more', (text, section) => expect(readSection(text)).toBe(section))

  test.each([
    '', 'LLV', 'L', 'W8x10', 'C8x11.5', 'L5x5/16', 'L5x3-1/2x5/16x2', 'PL 5/16x8', 'L0x3x1/4', 'L5x3x0', 'L-5x3x1/4', 'L5x3-1/2x5-16', '(0) L5x3-1/2x5/16', 'two L5x3-1/2x5/16', '2-6x3-1/2x5/16', 'Lxx', '5', 'NTS',
  ])('%j is not an angle', (text) => expect(readSection(text)).toBeUndefined())

  test('a decimal comma is refused, not dropped: 7,9 is not 79', () => expect(readSection('L127x89x7,9')).toBeUndefined())

  test('sizes in another order than leg, leg, thickness are refused', () => {
    expect(readSection('5/16x5x3-1/2')).toBeUndefined()
    expect(readSection('L5x5/16x3-1/2')).toBeUndefined()
  })
})

describe('any angle', () => {
  const leg = fc.integer({ min: 16, max: 128 }).map((eighths) => eighths / 8)
  const thickness = fc.integer({ min: 2, max: 20 }).map((sixteenths) => sixteenths / 16)
  const separator = fc.constantFrom('x', 'X', ' x ', '×')

  test('decimals, fractions and the one spelling come to the same section', () => {
    const fraction = (size: number) => [Math.floor(size) || '', size % 1 === 0 ? '' : `${(size % 1) * 16}/16`].filter((word) => word !== '').join('-')
    fc.assert(
      fc.property(leg.filter((size) => size <= 12), leg.filter((size) => size <= 12), thickness, separator, (a, b, t, by) => {
        const section = readSection(`L${[a, b, t].join(by)}`)
        expect(section).toMatch(/^L[\d/-]+x[\d/-]+x[\d/-]+$/)
        expect(readSection([a, b, t].map(fraction).join(by))).toBe(section)
        expect(readSection(section ?? '')).toBe(section)
        expect(readSection(`(2) ${section}`)).toBe(`2${section}`)
      }),
    )
  })

  test('any text is a section that reads the same again, or none; never an exception', () => {
    const tradeText = fc.string({ unit: fc.constantFrom(...Array.from('L25 x3-1/6.½×()"LV')), maxLength: 24 })
    fc.assert(
      fc.property(fc.oneof(fc.string(), tradeText), (text) => {
        const section = readSection(text)
        expect(section === undefined || readSection(section) === section).toBe(true)
      }),
      { numRuns: 3000 },
    )
  })
})
