import type { HourlyFile, HourlyRow } from './hourly-row.ts'
import { asOneYear, hoursInYear, hoursSince1970, isTypicalYear } from './hourly-time.ts'

/** One year of a file: whether nearly all of it is there, and its rain in mm. */
export interface RainYear {
  readonly year: number
  readonly whole: boolean
  readonly rain: number
}

/** The hours of a file in order of time, and how complete they are. */
export interface HourlyRecord {
  readonly rows: readonly HourlyRow[]
  readonly isTypicalYear: boolean
  readonly wasInOrder: boolean
  readonly repeatedHours: number
  readonly expectedHours: number
  /** Hours of the record without a rain reading. */
  readonly missingHours: number
  readonly years: readonly RainYear[]
}

export function recordOf(file: HourlyFile, missingShare: number): HourlyRecord {
  const isTypical = isTypicalYear(file.rows)
  const asWritten = isTypical ? asOneYear(file.rows) : file.rows
  const wasInOrder = asWritten.every(({ time }, index) => time >= (asWritten[index - 1]?.time ?? time))
  const rows = wasInOrder ? asWritten : asWritten.toSorted((a, b) => a.time - b.time)
  const [from, to] = [rows[0]?.time ?? 0, rows.at(-1)?.time ?? 0]
  const expectedHours = to - from + 1
  const read = hoursRead(rows)
  const missingHours = file.dryHoursLeftOut ? rows.length - rows.filter(({ rain }) => rain !== null).length + file.malformed.count : expectedHours - read
  const span = { from, to, dryHoursLeftOut: file.dryHoursLeftOut, missingShare }
  const years = [...byYear(rows)].map(([year, ofYear]) => yearOf(year, ofYear, span))
  return { rows, isTypicalYear: isTypical, wasInOrder, repeatedHours: rows.length - distinct(rows), expectedHours, missingHours, years }
}

function byYear(rows: readonly HourlyRow[]): ReadonlyMap<number, readonly HourlyRow[]> {
  const years = new Map<number, HourlyRow[]>()
  for (const row of rows) {
    const ofYear = years.get(row.year)
    if (ofYear) ofYear.push(row)
    else years.set(row.year, [row])
  }
  return years
}

interface Span {
  readonly from: number
  readonly to: number
  readonly dryHoursLeftOut: boolean
  readonly missingShare: number
}

function yearOf(year: number, rows: readonly HourlyRow[], { from, to, dryHoursLeftOut, missingShare }: Span): RainYear {
  const hours = hoursInYear(year)
  const begins = hoursSince1970({ year, month: 1, day: 1, hour: 0 })
  const spanned = Math.min(begins + hours - 1, to) - Math.max(begins, from) + 1
  const unread = rows.filter(({ rain }) => rain === null).length
  const missing = dryHoursLeftOut ? hours - spanned + unread : hours - hoursRead(rows)
  return { year, whole: missing <= missingShare * hours, rain: rows.reduce((sum, { rain }) => sum + (rain ?? 0), 0) }
}

/** Hours with a rain reading, one that stands twice counted once. */
function hoursRead(rows: readonly HourlyRow[]): number {
  return distinct(rows.filter(({ rain }) => rain !== null))
}

function distinct(rows: readonly HourlyRow[]): number {
  return rows.filter(({ time }, index) => time !== rows[index - 1]?.time).length
}
