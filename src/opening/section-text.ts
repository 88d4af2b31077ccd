import { plainCharacters, readNumber, toNumber } from '../units/number-text.ts'

/**
 * The one spelling of an angle section: "L5x3-1/2x5/16", "2L6x3-1/2x5/16", "L127x89x7.9".
 * Reads what schedules say: "L4x3½x5/16 LLV", "(2) L6x3.5x5/16", "5 x 3 1/2 x 5/16". Undefined when it is not an angle.
 */
export function readSection(text: string): string | undefined {
  const plain = plainCharacters(text.replace(/(\d)([½¼¾⅛⅜⅝⅞])/g, '$1 $2')).toUpperCase().replace(/\b(LLV|LLH|ANGLES?)\b|[",]/g, '').replace(/×/g, 'X').trim()
  const match = /^(?:\((\d)\) ?|(\d) ?(?=L)|(2)- ?(?=\d))?L? ?([\d./ -]+?) ?X ?([\d./ -]+?) ?X ?([\d./ -]+)$/.exec(plain)
  if (!match) return undefined
  const sizes = match.slice(4).map((part) => readNumber((part ?? '').trim()))
  if (sizes.some((size) => size === undefined || size.numerator === 0n)) return undefined
  const count = match[1] ?? match[2] ?? match[3] ?? '1'
  const metric = sizes.some((size) => size !== undefined && toNumber(size) > 12)
  const words = sizes.map((size) => (size ? sizeText(toNumber(size), metric) : ''))
  return `${count === '1' ? '' : count}L${words.join('x')}`
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
