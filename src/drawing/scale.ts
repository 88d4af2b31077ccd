import type { UnitSystem } from '../units/dimension.ts'

/** One over how much, and how the trade writes it. */
export interface Scale {
  readonly ratio: number
  readonly text: string
}

/** The scales of an architect's rule, then what is left for very long walls. */
const inchScales: readonly (readonly [ratio: number, inches: string])[] = [
  [4, '3"'], [8, '1 1/2"'], [12, '1"'], [16, '3/4"'], [24, '1/2"'], [32, '3/8"'], [48, '1/4"'], [64, '3/16"'], [96, '1/8"'], [192, '1/16"'], [384, '1/32"'],
]
const metricScales: readonly number[] = [5, 10, 20, 25, 50, 100, 200, 500]
const smallest = 1000

/** The largest usual scale at which `size` millimeters of wall fit on `paper` millimeters, in both directions. */
export function scaleFor(system: UnitSystem, sizes: readonly (readonly [size: number, paper: number])[]): Scale {
  const fits = (ratio: number) => sizes.every(([size, paper]) => size / ratio <= paper)
  const least = Math.max(...sizes.map(([size, paper]) => size / paper))
  if (system === 'inchPound') {
    const [ratio, inches] = inchScales.find(([one]) => fits(one)) ?? []
    return ratio === undefined ? { ratio: rest(least), text: `1:${rest(least)}` } : { ratio, text: `${inches ?? ''} = 1'-0" (1:${ratio})` }
  }
  const ratio = metricScales.find(fits) ?? rest(least)
  return { ratio, text: `1:${ratio}` }
}

function rest(least: number): number {
  return Math.ceil(least / smallest) * smallest
}
