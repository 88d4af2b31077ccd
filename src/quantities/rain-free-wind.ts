import type { Table } from '../catalog/reference.ts'
import { combined, parameter, table, type Need } from './need.ts'
import { cellAmount } from './rain-table.ts'

/** Rain (mm/h) and wind (m/s) of one hour, and how much of the wind blows straight onto the wall, from 0 to 1. */
export interface RainHour {
  readonly rain: number
  readonly wind: number
  readonly onto: number
}

/** The share of the wind that blows onto a wall; 0 along it and behind it. */
export function shareOnto(degrees: number): number {
  const quarterTurn = 180 / 2
  const off = Math.abs(((degrees % (2 * 180)) + 3 * 180) % (2 * 180) - 180)
  return off >= quarterTurn ? 0 : Math.cos((off * Math.PI) / 180)
}

/** Coefficient and power of the hourly relation, for m/s and mm/h. */
export interface HourlyRelation {
  readonly coefficient: number
  readonly exponent: number
}

export const hourlyRelation: Need<HourlyRelation> = combined({ coefficient: parameter('rain.hourly-coefficient'), exponent: parameter('rain.hourly-exponent') }, (relation) => relation)

/** Driving rain in mm/h by the hourly relation of the standard: coefficient × wind × rain to a power. */
export function hourlyRain({ coefficient, exponent }: HourlyRelation, { rain, wind, onto }: RainHour): number {
  return coefficient * wind * rain ** exponent * onto
}

/** Driving rain in mm/h, in proportion to rain and wind. */
export function linearRain(coefficient: number, { rain, wind, onto }: RainHour): number {
  return coefficient * wind * rain * onto
}

/** How large raindrops are and how fast they fall. */
export interface Drops {
  readonly coefficient: number
  readonly exponent: number
  readonly spread: number
  readonly fallSpeed: Table
  readonly fastest: number
}

export const drops: Need<Drops> = combined(
  {
    coefficient: parameter('rain.drop-size-coefficient'),
    exponent: parameter('rain.drop-size-exponent'),
    spread: parameter('rain.drop-size-spread'),
    fallSpeed: table('rain.fall-speed'),
    fastest: parameter('rain.fall-speed-greatest'),
  },
  (given) => given,
)

/** The diameter in mm below which half of the water falls: in 1 - F = exp(-(x/a)ⁿ) where F is a half. */
export function medianDrop({ coefficient, exponent, spread }: Drops, rain: number): number {
  return coefficient * rain ** exponent * Math.LN2 ** (1 / spread)
}

/** How fast a drop of so many mm falls, in m/s. */
export function fallSpeedOf({ fallSpeed, fastest }: Drops, diameter: number): number {
  const speed = fallSpeed.rows.reduce((sum, row) => sum + cellAmount(fallSpeed, row, 'coefficient') * diameter ** cellAmount(fallSpeed, row, 'power'), 0)
  return Math.min(speed, fastest)
}

/** Driving rain in mm/h from the fall of the median drop; undefined for a drizzle finer than the fit of fall speeds. */
export function rainOfDrops(sizes: Drops, hour: RainHour): number | undefined {
  const speed = fallSpeedOf(sizes, medianDrop(sizes, hour.rain))
  return speed > 0 ? linearRain(1 / speed, hour) : undefined
}
