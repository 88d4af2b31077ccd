import { cellText, type Table } from '../../catalog/reference.ts'
import { cellAmount, rowOf } from '../rain-table.ts'
import { hoursSince1970, isHour } from './hourly-time.ts'
import type { HourlyReading, LineReading } from './hourly-row.ts'
import { readLines } from './read-lines.ts'

/** Eight header lines; the last tells how many readings there are in an hour. */
const headerLines = 8

interface Field {
  readonly position: number
  readonly missing: number | null
}

/** Reads an EnergyPlus weather file: eight header lines, then an hour on each line. */
export function readEnergyPlus(text: string, fields: Table, mostYears: number): HourlyReading {
  const lines = text.split(/\r?\n/)
  const periods = lines[headerLines - 1]?.split(',') ?? []
  if (!lines[0]?.startsWith('LOCATION,') || periods[0]?.trim().toUpperCase() !== 'DATA PERIODS') return { ok: false, why: 'The file does not begin with the eight header lines of an EnergyPlus weather file.' }
  if (Number(periods[2]) !== 1) return { ok: false, why: `The file holds ${periods[2] ?? 'no'} readings in an hour; one is needed.` }
  const read = lineReader(fields)
  return readLines(lines, { firstLine: headerLines + 1, read, dryHoursLeftOut: false, mostYears })
}

function lineReader(fields: Table): (text: string, line: number) => LineReading {
  const fieldOf = (name: string): Field => {
    const row = rowOf(fields, 'field', name)
    return { position: cellAmount(fields, row, 'position'), missing: row['missing'] === null ? null : Number(cellText(row['missing'])) }
  }
  const names = ['year', 'month', 'day', 'hour', 'temperature', 'direction', 'wind', 'rain', 'rainHours'] as const
  const all = names.map((name) => [name, fieldOf(name)] as const)
  return (text, line) => {
    const cells = text.split(',')
    const values = all.map(([name, field]) => [name, valueIn(cells, field)] as const)
    const unreadable = values.find(([, value]) => value === undefined)
    if (unreadable) return { why: `${unreadable[0]} is not a number` }
    return rowFrom(Object.fromEntries(values) as Record<(typeof names)[number], number | null>, line)
  }
}

/** The number in a field; null where the file marks it missing or leaves it out, undefined where it is no number. */
function valueIn(cells: readonly string[], { position, missing }: Field): number | null | undefined {
  const text = cells[position - 1]?.trim() ?? ''
  if (text === '') return missing === null ? undefined : null
  const value = Number(text)
  if (Number.isNaN(value)) return undefined
  return missing !== null && value >= missing ? null : value
}

type Values = Readonly<Record<'year' | 'month' | 'day' | 'hour' | 'temperature' | 'direction' | 'wind' | 'rain' | 'rainHours', number | null>>

/** Hour 1 runs from midnight to one. */
function rowFrom(values: Values, line: number): LineReading {
  const { temperature, direction, wind, rain, rainHours } = values
  const [year = 0, month = 0, day = 0, ending = 0] = [values.year, values.month, values.day, values.hour].map(Number)
  const at = { year, month, day, hour: ending - 1 }
  if (!isHour(at)) return { why: `${year}-${month}-${day}, hour ${ending} is no hour` }
  const ofSeveralHours = rain !== null && rain > 0 && rainHours !== null && rainHours > 1
  return { line, ...at, time: hoursSince1970(at), rain: ofSeveralHours ? null : rain, rainAsWritten: rain, wind, direction, temperature, ofSeveralHours }
}
