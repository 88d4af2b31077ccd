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
  const match = /^(-)?([\d./ -]*\d) ?([^\d\s].*)?$/.exec(text)
  const number = readNumber(match?.[2] ?? '')
  if (!match || !number) return undefined
  const unit = findUnit(match[3] ?? '1')
  if (!unit || unit.dimension === 'length') return undefined
  const amount = toNumber(number) * unit.factor
  return { dimension: unit.dimension, amount: match[1] && amount !== 0 ? -amount : amount }
}

/** A fall over a run, "3:12", "3 in 12" or "1/4 in per ft", as an angle in degrees. */
function readSlope(text: string): Quantity | undefined {
  if (!/:| in |per |\/ ?f/i.test(text)) return undefined
  const ratio = /^(-)?([\d./ -]+?) ?(?::| in ) ?([\d./ -]+)$/i.exec(text)
  if (ratio) return slopeOf(readNumber(ratio[2] ?? ''), readNumber(ratio[3] ?? ''), ratio[1] !== undefined)
  const perFoot = /^(-)?([\d./ -]+?) ?(?:"|in\.?|inch) ?(?:per |\/ ?)(?:ft\.?|foot)$/i.exec(text)
  if (perFoot) return slopeOf(readNumber(perFoot[2] ?? ''), readNumber('12'), perFoot[1] !== undefined)
  return undefined
}

function slopeOf(fall: ReturnType<typeof readNumber>, run: ReturnType<typeof readNumber>, negative: boolean): Quantity | undefined {
  if (!fall || !run || run.numerator === 0n) return undefined
  const degrees = (Math.atan(toNumber(fall) / toNumber(run)) * 180) / Math.PI
  return { dimension: 'angle', amount: negative && degrees !== 0 ? -degrees : degrees }
}

/** How to write an amount, for the person whose text could not be read. */
export const quantityExamples: Readonly<Record<Dimension, string>> = {
  length: '3 7/8 in or 98 mm',
  angle: '15 deg, or as a slope 3:12',
  area: '2.67 sq ft or 0.25 m2',
  sectionModulus: '1.03 in3 or 16.9 cm3',
  momentOfInertia: '2.91 in4 or 121 cm4',
  arealLoad: '40 psf or 1.9 kPa',
  stress: '22000 psi or 152 MPa',
  force: '500 lbf or 2.2 kN',
  lineLoad: '300 lbf/ft or 4.4 kN/m',
  moment: '900 lbf ft or 1220 N.m',
  linearMass: '8.7 lb/ft or 12.9 kg/m',
  speed: '115 mph or 51 m/s',
  mass: '62 [lb_av] or 28 kg',
  volume: '6.6 ft3 or 0.19 m3',
  duration: '2.5 h',
  temperatureDifference: '100 °F or 55 K',
  thermalExpansion: '0.000004 /°F or 0.0000072 /K',
  rainRate: '2 in/h or 50 mm/h',
  rainDepth: '550 L/m2',
  flow: '8 mL/min or 0.5 L/h',
  openArea: '1.7 in2/ft or 3600 mm2/m',
  unitsPerArea: '6.75 /[ft_i]2 or 72.7 /m2',
  count: '3',
  ratio: '25 % or 12.5 %',
}
