/** An exact fraction: what a decimal or a mixed number on a tape measure says, before any rounding. */
export interface Rational {
  readonly numerator: bigint
  readonly denominator: bigint
}

const vulgarFractions: Readonly<Record<string, string>> = {
  '½': '1/2', '⅓': '1/3', '⅔': '2/3', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
}

/** Writes ⅞ as " 7/8", ″ and ” as ", ′ and ’ as ', and any run of spaces as one. */
export function plainCharacters(text: string): string {
  return unusual.test(text) ? written(text) : text
}

/** What is written otherwise; most texts have nothing of it. */
const unusual = /[^ -~]|''| {2}|^ | $/

function written(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgarFractions[sign] ?? sign}`)
    .replace(/⁄/g, '/')
    .replace(/[′’‘]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace(/[−–]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
}

/**
 * Reads "3", "3.875", "7/8", "3 7/8" or "3-7/8". Signs are the caller's business.
 * Answers undefined for anything else, so "3-4", "1e3" and "" are not numbers.
 */
export function readNumber(text: string): Rational | undefined {
  return readDecimal(text) ?? readFraction(text)
}

function readDecimal(text: string): Rational | undefined {
  const match = /^(\d{1,30})?(?:\.(\d{1,30}))?$/.exec(text)
  if (!match || (match[1] === undefined && match[2] === undefined)) return undefined
  const decimals = match[2] ?? ''
  return { numerator: BigInt(`${match[1] ?? '0'}${decimals}`), denominator: 10n ** BigInt(decimals.length) }
}

function readFraction(text: string): Rational | undefined {
  const match = /^(?:(\d{1,15})(?: ?- ?| ))?(\d{1,6})\/(\d{1,6})$/.exec(text)
  if (!match) return undefined
  const denominator = BigInt(match[3] ?? '0')
  if (denominator === 0n) return undefined
  return { numerator: BigInt(match[1] ?? '0') * denominator + BigInt(match[2] ?? '0'), denominator }
}

/** The whole number nearest to the fraction times a factor; halves go away from zero. */
export function timesToNearest({ numerator, denominator }: Rational, factor: number): number {
  const product = numerator * BigInt(factor)
  return Number((2n * product + denominator) / (2n * denominator))
}

/** A number in plain digits, never as 1e-7, so that it reads back. */
export function plainDigits(value: number): string {
  const text = String(value)
  return text.includes('e') ? value.toLocaleString('en-US', { useGrouping: false, maximumFractionDigits: 20 }) : text
}

export function toNumber({ numerator, denominator }: Rational): number {
  return Number(numerator) / Number(denominator)
}
