import type { UnitSystem } from '../units/dimension.ts'
import { nanometresOf } from '../units/length.ts'
import { feetInchesText, inchText } from '../units/quantity-text.ts'

const foot = 304.8

/** A length of so many millimeters as it stands on a drawing: 4'-6 1/2", 3 5/8", or bare millimeters. */
export function dimensionText(millimeters: number, system: UnitSystem): string {
  if (system === 'si') return String(Number(millimeters.toFixed(1)))
  const nanometers = nanometresOf(millimeters / 1000)
  return Math.abs(millimeters) < foot ? inchText(nanometers).replace(' in', '"') : feetInchesText(nanometers)
}
