import { findUnit } from './dimension.ts'

const freezing_degF = 32

/** Degrees Celsius of a reading on a thermometer in the unit given; undefined where it is no unit of temperature. */
export function celsius(reading: number, unit: string): number | undefined {
  const known = findUnit(unit)
  if (known?.dimension !== 'temperatureDifference' || unit === 'K') return undefined
  return known.factor === 1 ? reading : (reading - freezing_degF) * known.factor
}
