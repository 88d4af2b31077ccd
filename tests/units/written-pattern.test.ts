import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { baseUnits, spellingsOf, type Dimension } from '../../src/units/dimension.ts'
import { readLength, type LengthReading } from '../../src/units/length-text.ts'
import { quantityExamples, readQuantity } from '../../src/units/quantity.ts'
import { amountPattern, lengthPattern } from '../../src/units/written-pattern.ts'
import { tradeText } from './spellings.ts'

const compiled = (pattern: string) => new RegExp(pattern, 'u')
const [plain, signed, bare] = [compiled(lengthPattern({ signed: false })), compiled(lengthPattern({ signed: true })), compiled(lengthPattern({ signed: true, lengthUnit: 'in' }))]
const dimensions = (Object.keys(baseUnits) as Dimension[]).filter((one): one is Exclude<Dimension, 'length'> => one !== 'length' && one !== 'count')

/** As people write them: by hand, on drawings, in tables. */
const written = [
  '3 7/8 in', '3-7/8"', `4'-6 1/2"`, `4' 6"`, `4'6`, `4'-0"`, '4 ft 6 1/2 in', '4 FT 6 IN', '4 ft. 6 in.', '4 ft-6 in', '98 mm', '98.4mm', '98 MM', '0.5 ft', '3⅞"', '3-⅞ in', '½"', '⅜ in', '.5 in', '7/8 in', '2 2/3 in', '3 1/5 inches',
  '40 mil', '0.04 in.', '12 [in_i]', '5′-6″', '5’ 6 ½”', '  3   7/8   in  ', '3 – 7/8 in', '1 m', '12 cm', '0.2 km', '100 µm', `6''`, `4' 11 63/64"`, '7⁄8 in', '6 feet', '1 foot', `3'`,
]
const refused = ['', '3', '3 7/8', 'about 3 in', '3-4 in', '16/24 in', '7/16/2 in', '98,4 mm', '3 in 4 in', `4' 12"`, '4 ft2', '4 ft3', '1e3 mm', '3 7/7 in', 'in', '3 Mm', '3 lb', '3 in high', '--3 in', '3..5 in', '5. in', '9/8 in', '3 1/7 in']

describe('the pattern of a length', () => {
  test.each(written)('takes %j, as the reader does', (text) => {
    expect(readLength(text).ok).toBe(true)
    expect(plain.test(text)).toBe(true)
    expect(signed.test(`-${text.trim()}`)).toBe(true)
    expect(plain.test(`-${text.trim()}`)).toBe(false)
  })

  test.each(refused)('does not take %j, as the reader does not', (text) => {
    expect(readLength(text).ok).toBe(false)
    expect(signed.test(text)).toBe(false)
  })

  test('takes a bare number only where there is a unit for it', () => {
    for (const text of ['3', '3 7/8', '.5', '3⅞', '-2']) expect([readLength(text, 'in').ok, bare.test(text), signed.test(text)]).toEqual([true, true, false])
  })
})

describe('whatever a pattern takes, the reader reads', () => {
  test('of any text of the trade', () => {
    fc.assert(fc.property(tradeText, (text) => { if (signed.test(text)) expectRead(readLength(text), text) }), { numRuns: 20_000 })
    fc.assert(fc.property(tradeText, (text) => { if (bare.test(text)) expectRead(readLength(text, 'in'), text) }), { numRuns: 20_000 })
  })

  test('of any text made from the pattern', () => {
    fc.assert(fc.property(fc.stringMatching(signed), (text) => expectRead(readLength(text), text)), { numRuns: 3_000 })
    fc.assert(fc.property(fc.stringMatching(bare), (text) => expectRead(readLength(text, 'in'), text)), { numRuns: 3_000 })
  })

  test.each(dimensions)('of %s, with every unit that is known and every example', (dimension) => {
    const pattern = compiled(amountPattern(dimension, { signed: true }))
    fc.assert(fc.property(fc.stringMatching(pattern), (text) => {
      const read = readQuantity(text)
      expect(read?.dimension === dimension || (dimension === 'ratio' && read?.dimension === 'count'), text).toBe(true)
    }), { numRuns: 500 })
    for (const { text: unit } of spellingsOf(dimension)) expect(pattern.test(`2.5 ${unit}`), unit).toBe(true)
    for (const example of quantityExamples[dimension].split(/,? or (?:as a slope )?/)) expect([example, pattern.test(example)]).toEqual([example, true])
    expect(pattern.test('2.5 parsecs')).toBe(false)
    expect(pattern.test('two')).toBe(false)
  })
})

/** Whether a length is believable is a matter of its amount, which no pattern of a text can tell. */
function expectRead(read: LengthReading, text: string): void {
  expect(read.ok ? 'read' : read.reason, text).toMatch(/^(read|outOfRange)$/)
}
