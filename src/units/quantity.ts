import { findUnit, type Dimension } from './dimension.ts'
import { readLength } from './length-text.ts'
import { plainCharacters, readNumber, toNumber } from './number-text.ts'

/** A measured or required amount in the base unit of its dimension (`baseUnits`). Lengths are whole nanometres. */
export interface Quantity {
  readonly dimension: Dimension
  readonly amount: number
}

/** Reads "4 [in_i]", "3/16 in", "2.67 [ft_i]2", "15 deg", "40 psf", "3:12". Answers undefined when it is none of these. */
export function readQuantity(text: string): Quantity | undefined {
  const plain = plainCharacters(text)
  const slope = readSlope(plain)
  if (slope) return slope
  const length = readLength(plain)
  if (length.ok) return { dimension: 'length', amount: length.nanometres }
  return readOther(plain)
}

function readOther(text: string): Quantity | undefined {
  const match = /^(-)?([\d./ -]*\d) ?([^\d\s].*|1)?$/.exec(text)
  const number = readNumber(match?.[2] ?? '')
  if (!match || !number) return undefined
  const unit = findUnit(match[3] ?? '1')
  if (!unit || unit.dimension === 'length') return undefined
  const amount = toNumber(number) * unit.factor
  return { dimension: unit.dimension, amount: match[1] && amount !== 0 ? -amount : amount }
}

/** A fall over a run, "3:12" or "1/4 in per ft", as an angle in degrees. */
function readSlope(text: string): Quantity | undefined {
  const ratio = /^(-)?([\d./ ]+?) ?: ?([\d./ ]+)$/.exec(text)
  if (ratio) return slopeOf(readNumber(ratio[2] ?? ''), readNumber(ratio[3] ?? ''), ratio[1] !== undefined)
  const perFoot = /^(-)?([\d./ -]+?) ?(?:"|in\.?) (?:per|in) (?:ft|foot)$/.exec(text)
  if (perFoot) return slopeOf(readNumber(perFoot[2] ?? ''), readNumber('12'), perFoot[1] !== undefined)
  return undefined
}

function slopeOf(fall: ReturnType<typeof readNumber>, run: ReturnType<typeof readNumber>, negative: boolean): Quantity | undefined {
  if (!fall || !run || run.numerator === 0n) return undefined
  const degrees = (Math.atan(toNumber(fall) / toNumber(run)) * 180) / Math.PI
  return { dimension: 'angle', amount: negative ? -degrees : degrees }
}
