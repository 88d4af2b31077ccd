import type { HourlyRow } from './hourly-row.ts'

/** An hour by the calendar; `hour` begins so many hours after midnight. */
export type Hour = Pick<HourlyRow, 'year' | 'month' | 'day' | 'hour'>

const hour_ms = 60 * 60 * 1e3

export function hoursInYear(year: number): number {
  return (Date.UTC(year + 1, 0) - Date.UTC(year, 0)) / hour_ms
}

/** Whether the calendar has such an hour. */
export function isHour({ year, month, day, hour }: Hour): boolean {
  if (!Number.isInteger(year) || !Number.isInteger(month) || !Number.isInteger(day) || !Number.isInteger(hour)) return false
  return year > 0 && month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month) && hour >= 0 && hour < 24
}

function daysIn(year: number, month: number): number {
  return (Date.UTC(year, month) - Date.UTC(year, month - 1)) / (24 * hour_ms)
}

/** Hours since 1970, in the time that the file keeps. */
export function hoursSince1970({ year, month, day, hour }: Hour): number {
  return Date.UTC(year, month - 1, day, hour) / hour_ms
}

/** True for a typical year, put together of months of several years: the month goes on by one, the year leaps. */
export function isTypicalYear(rows: readonly Hour[]): boolean {
  return rows.some((row, index) => {
    const before = rows[index - 1]
    return before !== undefined && row.month === before.month + 1 && row.year !== before.year
  })
}

/** The hours of a typical year as if all were of the year of its first month. */
export function asOneYear(rows: readonly HourlyRow[]): readonly HourlyRow[] {
  const year = rows[0]?.year ?? 1
  return rows.map((row) => ({ ...row, year, time: hoursSince1970({ ...row, year }) }))
}
