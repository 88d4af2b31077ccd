import type { HourlyRow } from './hourly-row.ts'
import type { HourlyRecord } from './hourly-years.ts'

/** An hour of rain with its wind; without wind or direction it counts for no wall and is lost. */
export interface WetHour {
  readonly year: number
  readonly time: number
  readonly rain: number
  readonly wind: number | null
  readonly direction: number | null
  readonly temperature: number | null
}

/** Rain of a record in mm: all of it, and the parts that no wall gets or that may be snow. */
export interface RainSums {
  readonly total: number
  readonly wetHours: number
  /** Fell in hours without a wind speed, or with wind from an unknown direction. */
  readonly lost: number
  /** Fell in hours without wind. */
  readonly calm: number
  /** Fell below the temperature of snow. */
  readonly snow: number
  /** Fell in hours without a temperature. */
  readonly ofUnknownTemperature: number
}

export function wetHoursOf({ rows }: Pick<HourlyRecord, 'rows'>): readonly WetHour[] {
  return rows.flatMap((row) => (isWet(row) ? [row] : []))
}

export function isLost({ wind, direction }: WetHour): boolean {
  return wind === null || (wind > 0 && direction === null)
}

export function isSnow({ temperature }: WetHour, snowBelow: number): boolean {
  return temperature !== null && temperature < snowBelow
}

export function sumsOf(hours: readonly WetHour[], snowBelow: number): RainSums {
  const depthOf = (chosen: (hour: WetHour) => boolean) => hours.reduce((sum, hour) => (chosen(hour) ? sum + hour.rain : sum), 0)
  return {
    total: depthOf(() => true),
    wetHours: hours.length,
    lost: depthOf(isLost),
    calm: depthOf(({ wind }) => wind === 0),
    snow: depthOf((hour) => isSnow(hour, snowBelow)),
    ofUnknownTemperature: depthOf(({ temperature }) => temperature === null),
  }
}

function isWet(row: HourlyRow): row is HourlyRow & WetHour {
  return row.rain !== null && row.rain > 0
}
