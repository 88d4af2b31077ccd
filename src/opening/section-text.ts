import { plainCharacters, readNumber, toNumber, type Rational } from '../units/number-text.ts'

/**
 * The one spelling of an angle section: "L5x3-1/2x5/16", "2L6x3-1/2x5/16", "L127x89x7.9".
 * Reads what schedules say: "L4x3½x5/16 LLV", "(2) L6x3.5x5/16", "5 x 3 1/2 x 5/16". Undefined when it is not an angle.
 */
export function readSection(text: string): string | undefined {
  const match = /^(?:\(([1-9])\) ?|([1-9])[ -]?(?=L))?L? ?([\d./ -]+?) ?X ?([\d./ -]+?) ?X ?([\d./ -]+)$/.exec(bareSection(text))
  const [leg, otherLeg, thickness] = (match ?? []).slice(3).map((part) => readNumber(part.trim()))
  if (!leg || !otherLeg || !thickness || !isAngle(leg, otherLeg, thickness)) return undefined
  const sizes = [leg, otherLeg, thickness].map(toNumber)
  const metric = sizes.some((size) => size > 12)
  const count = match?.[1] ?? match?.[2] ?? '1'
  return `${count === '1' ? '' : count}L${sizes.map((size) => sizeText(size, metric)).join('x')}`
}

/** Capitals without inch marks, the word "angle" or a note on the legs; a comma inside a number stays, so that 7,9 is not 79. */
function bareSection(text: string): string {
  return plainCharacters(text)
    .toUpperCase()
    .replace(/(LLV|LLH|LLBB|SLBB)\b|\bANGLES?\b|"|,(?!\d)/g, '')
    .replaceAll('×', 'X')
    .replaceAll('∠', 'L')
    .trim()
}

/** A plate is thinner than its legs are long; otherwise the three sizes are in another order. */
function isAngle(leg: Rational, otherLeg: Rational, thickness: Rational): boolean {
  return thickness.numerator > 0n && toNumber(thickness) < Math.min(toNumber(leg), toNumber(otherLeg))
}

/** Inch sizes as whole numbers and sixteenths; millimetre sizes as decimals. */
function sizeText(size: number, metric: boolean): string {
  const sixteenths = Math.round(size * 16)
  if (metric || Math.abs(size * 16 - sixteenths) > 0.02) return String(size)
  const whole = Math.floor(sixteenths / 16)
  const rest = sixteenths % 16
  if (rest === 0) return String(whole)
  const divisor = [8, 4, 2, 1].find((step) => rest % step === 0) ?? 1
  const fraction = `${rest / divisor}/${16 / divisor}`
  return whole === 0 ? fraction : `${whole}-${fraction}`
}
