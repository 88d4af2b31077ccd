import { findUnit } from './dimension.ts'
import { plainCharacters, readNumber, timesToNearest, type Rational } from './number-text.ts'

/** The unit a bare number takes: the document's `lengthUnit`. */
export type LengthUnit = 'in' | 'mm'

export type LengthReading =
  | { readonly ok: true; readonly nanometres: number }
  | { readonly ok: false; readonly reason: 'unreadable' | 'unitMissing' | 'ambiguous' | 'decimalComma' | 'outOfRange' }

const largest_nm = 1_000_000_000_000 // one kilometre; far beyond any wall, well inside exact integers

/**
 * Reads a length as people write it: `3 7/8 in`, `3-7/8"`, `4'-6 1/2"`, `98 mm`, `3⅞"`, `4 ft 6 in`.
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
  const whole = readNumber(text)
  if (whole) return unit === undefined ? { ok: false, reason: 'unitMissing' } : withUnit(whole, unit)
  if (/^\d+ ?[-–] ?\d+$/.test(text)) return { ok: false, reason: 'ambiguous' }
  return readFeetAndInches(text) ?? readOneUnit(text) ?? { ok: false, reason: 'unreadable' }
}

/** `4'-6 1/2"`, `4' 6"`, `4'6`, `4 ft 6 1/2 in`; the inches part may lack its mark after a foot mark. */
function readFeetAndInches(text: string): LengthReading | undefined {
  const match = /^([\d./ -]+?) ?(?:'|ft\.?|feet) ?-? ?([\d./ -]+?) ?(?:"|in\.?|inches)?$/.exec(text)
  if (!match) return undefined
  const feet = readNumber(match[1] ?? '')
  const inches = readNumber(match[2] ?? '')
  if (!feet || !inches) return undefined
  return { ok: true, nanometres: timesToNearest(feet, 304_800_000) + timesToNearest(inches, 25_400_000) }
}

function readOneUnit(text: string): LengthReading | undefined {
  const match = /^([\d./ -]+?) ?([a-zµ"'[][^\d]*)$/.exec(text)
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
    ambiguous: `could mean feet and inches or a range. Write 3'-4" for feet and inches, or the single value with its unit`,
    decimalComma: 'has a comma in the number. Write a decimal point: 12.5 mm',
    outOfRange: 'is longer than one kilometre',
  } as const
  return advice[reading.reason]
}
