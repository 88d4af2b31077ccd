import { findUnit } from './dimension.ts'
import { plainCharacters, readNumber, timesToNearest, type Rational } from './number-text.ts'

/** The unit a bare number takes: the document's `lengthUnit`. */
export type LengthUnit = 'in' | 'mm'

export type LengthReading =
  | { readonly ok: true; readonly nanometres: number }
  | { readonly ok: false; readonly reason: 'unreadable' | 'unitMissing' | 'ambiguous' | 'decimalComma' | 'outOfRange' }

const largest_nm = 1_000_000_000_000 // one kilometre; far beyond any wall, well inside exact integers

/** Below the line on a tape, on a folding rule, or in brick coursing (2 2/3 in, 3 1/5 in). */
export const denominators: readonly number[] = [2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64]

/**
 * Reads a length as people write it: `3 7/8 in`, `3-7/8"`, `4'-6 1/2"`, `98 mm`, `3⅞"`, `4 FT 6 IN`.
 * A text without a unit takes `unit`; without that it is refused, never guessed.
 */
export function readLength(text: string, unit?: LengthUnit): LengthReading {
  const plain = plainCharacters(text)
  const negative = plain.startsWith('-')
  const reading = readUnsigned(negative ? plain.slice(1).trimStart() : plain, unit)
  if (!reading.ok) return reading
  if (reading.nanometres > largest_nm) return { ok: false, reason: 'outOfRange' }
  return negative && reading.nanometres !== 0 ? { ok: true, nanometres: -reading.nanometres } : reading
}

function readUnsigned(text: string, unit: LengthUnit | undefined): LengthReading {
  if (/\d,\d/.test(text)) return { ok: false, reason: 'decimalComma' }
  if (hasOddFraction(text) || isRange(text)) return { ok: false, reason: 'ambiguous' }
  const whole = readNumber(text)
  if (whole) return unit === undefined ? { ok: false, reason: 'unitMissing' } : withUnit(whole, unit)
  return readFeetAndInches(text) ?? readOneUnit(text) ?? { ok: false, reason: 'unreadable' }
}

/** `16/24` or `32/16` on a schedule are two spacings, not a fraction of an inch. */
function hasOddFraction(text: string): boolean {
  if (!text.includes('/')) return false
  return [...text.matchAll(/(?<!\d)(\d+)\/([1-9]\d*)/g)].some(([, over, under]) => Number(over) >= Number(under) || !denominators.includes(Number(under)))
}

/** `3-4` and `7/8-1 3/8"`, but not `3-7/8"`, which is one number. */
function isRange(text: string): boolean {
  if (!text.includes('-')) return false
  const [, number = '', low = '', high = ''] = /^(([\d./ ]+)-([\d./ ]+)) ?(?:["'a-z].*)?$/i.exec(text) ?? []
  return readNumber(number.trim()) === undefined && readNumber(low.trim()) !== undefined && readNumber(high.trim()) !== undefined
}

/** `4'-6 1/2"`, `4' 6"`, `4'6`, `4 ft 6 1/2 in`, but not `4 ft2`; the inches may lack their mark and are less than a foot. */
function readFeetAndInches(text: string): LengthReading | undefined {
  if (!/['f]/i.test(text)) return undefined
  const match = /^(\d+) ?(?:'|(?:ft\.?|feet|foot)(?![234]$)) ?-? ?([\d./ -]+?) ?(?:"|in\.?|inch|inches)?$/i.exec(text)
  const feet = readNumber(match?.[1] ?? '')
  const inches = readNumber(match?.[2] ?? '')
  if (!feet || !inches) return undefined
  if (inches.numerator >= 12n * inches.denominator) return { ok: false, reason: 'ambiguous' }
  return { ok: true, nanometres: timesToNearest(feet, 304_800_000) + timesToNearest(inches, 25_400_000) }
}

function readOneUnit(text: string): LengthReading | undefined {
  const match = /^([\d./ -]+?) ?([a-zµμ"'[][^\d]*)$/i.exec(text)
  const number = readNumber((match?.[1] ?? '').trim())
  return number && match ? withUnit(number, match[2] ?? '') : undefined
}

function withUnit(number: Rational, code: string): LengthReading {
  const unit = findUnit(code)
  if (unit?.dimension !== 'length') return { ok: false, reason: 'unreadable' }
  return { ok: true, nanometres: timesToNearest(number, unit.factor) }
}

/** What to tell the person whose length could not be read. */
export function lengthAdvice(reading: Extract<LengthReading, { ok: false }>): string {
  const advice = {
    unreadable: `is not a length. Write it like 3 7/8 in, 3-7/8", 4'-6 1/2" or 98 mm (units: in, ft, mm, cm, m)`,
    unitMissing: 'has no unit. Write the unit, or set "lengthUnit" to "in" or "mm" for the whole document',
    ambiguous: `can be read in more than one way: feet and inches, a range or two spacings. Write one length: 3'-4", 3 3/4 in or 16 in`,
    decimalComma: 'has a comma in the number. Write a decimal point, 12.5 mm, and thousands without a mark, 1016 mm',
    outOfRange: 'is longer than one kilometer',
  } as const
  return advice[reading.reason]
}
