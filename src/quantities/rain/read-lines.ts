import type { HourlyReading, HourlyRow, LineReading, Malformed } from './hourly-row.ts'
import { hoursInYear } from './hourly-time.ts'

/** So many malformed lines are told by their number; the rest is counted. */
const toldLines = 24

interface Reader {
  readonly firstLine: number
  readonly read: (cells: string, line: number) => LineReading
  readonly dryHoursLeftOut: boolean
  readonly mostYears: number
}

/** Reads the lines of a weather file from its first hour on; a file of more years than are taken is refused. */
export function readLines(lines: readonly string[], { firstLine, read, dryHoursLeftOut, mostYears }: Reader): HourlyReading {
  const rows: HourlyRow[] = []
  const malformed = { count: 0, first: [] as Malformed[] }
  let ofOtherStations = 0
  let most = 1
  for (const [index, text] of lines.slice(firstLine - 1).entries()) {
    if (text.trim() === '') continue
    const reading = possible(read(text, firstLine + index))
    if (!reading) ofOtherStations += 1
    else if ('why' in reading) {
      malformed.count += 1
      if (malformed.count <= toldLines) malformed.first.push({ line: firstLine + index, why: reading.why })
    } else rows.push(reading)
    if (rows.length === 1) most = mostHours(rows, mostYears)
    if (rows.length > most) return { ok: false, why: `The file holds more than ${mostYears} years of hours.` }
  }
  if (rows.length === 0) return { ok: false, why: 'The file holds no hour that can be read.' }
  return { ok: true, file: { rows, malformed, ofOtherStations, dryHoursLeftOut } }
}

/** An hour as it was read, unless it tells of something that cannot be: a code for "missing" that nobody named, for one. */
function possible(reading: LineReading): LineReading {
  if (!reading || 'why' in reading) return reading
  if ((reading.rainAsWritten ?? 0) < 0) return { why: `${reading.rainAsWritten ?? ''} is no depth of rain` }
  if ((reading.wind ?? 0) < 0) return { why: `${reading.wind ?? ''} is no wind speed` }
  const turn = 2 * 180
  const direction = reading.direction ?? 0
  return direction < 0 || direction > turn ? { why: `${direction} is no direction from north` } : reading
}

/** Leap years and all. */
function mostHours([first]: readonly HourlyRow[], years: number): number {
  return years * (hoursInYear(first?.year ?? 1) + 24)
}
