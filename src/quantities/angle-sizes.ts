import { readLength } from '../units/length-text.ts'

/** An angle, or several side by side: the first leg stands. Lengths are of one, in nm; mass in kg/m, inertia in mm⁴ and modulus in mm³ of all. */
export interface Angle {
  readonly section: string
  readonly count: number
  readonly verticalLeg: number
  readonly horizontalLeg: number
  readonly thickness: number
  readonly mass: number
  readonly momentOfInertia: number
  readonly sectionModulus: number
}

/** How many angles a spelling has side by side: "2L6x4x3/8" is two. */
export function countOf(section: string): number {
  return Number(/^(\d)L/.exec(section)?.[1] ?? 1)
}

/** What a spelling says of an angle, in nm. */
export interface Sizes {
  readonly verticalLeg: number
  readonly horizontalLeg: number
  readonly thickness: number
}

/** Reads the legs and thickness out of the one spelling that descriptions are settled into; undefined for any other. */
export function sizesOf(section: string): Sizes | undefined {
  const sizes = /^\d?L(.*)$/.exec(section)?.[1]?.split('x') ?? []
  const unit = sizes.some((size) => Number(size) > longestInchLeg) ? 'mm' : 'in'
  const [verticalLeg, horizontalLeg, thickness] = sizes.map((size) => readLength(size, unit))
  if (!verticalLeg?.ok || !horizontalLeg?.ok || !thickness?.ok) return undefined
  return { verticalLeg: verticalLeg.nanometres, horizontalLeg: horizontalLeg.nanometres, thickness: thickness.nanometres }
}

/** No angle has a leg of more inches; a greater number is in millimeters. */
const longestInchLeg = 12
