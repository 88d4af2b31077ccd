import { findUnit } from '../../units/dimension.ts'
import { millimetres } from '../../units/length.ts'
import { celsius } from '../../units/temperature.ts'
import { cellsOf } from './cells.ts'
import { hoursSince1970, isHour, type Hour } from './hourly-time.ts'
import type { HourlyReading, LineReading } from './hourly-row.ts'
import { readLines } from './read-lines.ts'

interface Measured {
  readonly column: string
  /** As the trade writes it: "mm", "in", "m/s", "mph", "km/h", "Cel", "°F". */
  readonly unit: string
}

/** How a table of hours in text is laid out. Columns go by their names in the header line. */
export interface TableLayout {
  readonly separator?: ',' | ';' | '\t'
  /** Lines above the header line; none when left out. */
  readonly linesBeforeHeader?: number
  /** One column of time, "2013-06-10T14:00" or "2013-06-10 14:00", or a column for each part. The hour is the one that begins then. */
  readonly time: { readonly column: string } | { readonly year: string; readonly month: string; readonly day: string; readonly hour: string }
  /** In hourly depth; `times` is what a written number is multiplied by, 0.1 for tenths. */
  readonly rain: Measured & { readonly times?: number }
  readonly wind: Measured
  /** Where the wind comes from, degrees from north. */
  readonly direction: { readonly column: string }
  readonly temperature?: Measured
  /** Only the lines with this in that column; a file may hold several stations. */
  readonly station?: { readonly column: string; readonly is: string }
  /** What the file writes where it has no reading, beside an empty cell and NA. */
  readonly missing?: readonly string[]
  /** True where hours without rain have no line. */
  readonly dryHoursLeftOut?: boolean
}

const noReading: readonly string[] = ['', 'NA', 'NaN', 'null', 'NULL']

/** Reads a table of hours with a header line. */
export function readTable(text: string, layout: TableLayout, mostYears: number): HourlyReading {
  const lines = text.split(/\r?\n/)
  const before = layout.linesBeforeHeader ?? 0
  const header = cellsOf(lines[before] ?? '', layout.separator).map((name) => name.trim())
  const why = problemOf(header, layout)
  if (why !== undefined) return { ok: false, why }
  return readLines(lines, { firstLine: before + 2, read: lineReader(header, layout), dryHoursLeftOut: layout.dryHoursLeftOut ?? false, mostYears })
}

function problemOf(header: readonly string[], layout: TableLayout): string | undefined {
  const { rain, wind, direction, temperature, station, time } = layout
  const columns = [...Object.values(time as Record<string, string>), rain.column, wind.column, direction.column, ...(temperature ? [temperature.column] : []), ...(station ? [station.column] : [])]
  const absent = columns.find((column) => !header.includes(column))
  if (absent !== undefined) return `The header line has no column "${absent}".`
  if (findUnit(rain.unit)?.dimension !== 'length') return `"${rain.unit}" is no unit of rain; write mm or in.`
  if (rain.times !== undefined && !(rain.times > 0)) return 'What the rain is multiplied by has to be more than 0.'
  if (findUnit(wind.unit)?.dimension !== 'speed') return `"${wind.unit}" is no unit of wind speed; write m/s, km/h or mph.`
  if (temperature && celsius(0, temperature.unit) === undefined) return `"${temperature.unit}" is no unit of temperature; write Cel or °F.`
  return undefined
}

type Cell = (column: string) => string

/** What one written unit is: of rain in mm, of wind in m/s. Found once, not on every line. */
interface Scales {
  readonly rain: number
  readonly wind: number
}

function lineReader(header: readonly string[], layout: TableLayout): (text: string, line: number) => LineReading {
  const positions = new Map(header.map((name, index) => [name, index]))
  const missing = new Set([...noReading, ...(layout.missing ?? [])])
  const scales = { rain: millimetres(factorOf(layout.rain.unit)) * (layout.rain.times ?? 1), wind: factorOf(layout.wind.unit) }
  return (text, line) => {
    const cells = cellsOf(text, layout.separator)
    const cell: Cell = (column) => cells[positions.get(column) ?? -1]?.trim() ?? ''
    if (layout.station && cell(layout.station.column) !== layout.station.is) return undefined
    if (cells.length !== header.length) return { why: `${cells.length} cells under ${header.length} columns` }
    const at = timeOf(cell, layout)
    if (!at || !isHour(at)) return { why: 'the time cannot be read' }
    return rowFrom(line, at, measuredIn(cell, missing), layout, scales)
  }
}

/** The number in a column; null where there is no reading, undefined where it is no number. */
function measuredIn(cell: Cell, missing: ReadonlySet<string>): (column: string) => number | null | undefined {
  return (column) => {
    const text = cell(column)
    if (missing.has(text)) return null
    const value = Number(text)
    return Number.isFinite(value) ? value : undefined
  }
}

/** Written out field by field: a file has a quarter of a million lines, and objects put together by spreading are slow. */
function rowFrom(line: number, at: Hour, read: (column: string) => number | null | undefined, { rain, wind, direction, temperature }: TableLayout, scales: Scales): LineReading {
  const [written, speed, from, warmth] = [read(rain.column), read(wind.column), read(direction.column), temperature ? read(temperature.column) : null]
  if (written === undefined) return { why: 'the rain is not a number' }
  if (speed === undefined) return { why: 'the wind speed is not a number' }
  if (from === undefined) return { why: 'the wind direction is not a number' }
  if (warmth === undefined) return { why: 'the temperature is not a number' }
  return {
    line,
    year: at.year,
    month: at.month,
    day: at.day,
    hour: at.hour,
    time: hoursSince1970(at),
    rain: written === null ? null : written * scales.rain,
    rainAsWritten: written,
    wind: speed === null ? null : speed * scales.wind,
    direction: from,
    temperature: warmth === null || !temperature ? null : (celsius(warmth, temperature.unit) ?? null),
    ofSeveralHours: false,
  }
}

function factorOf(unit: string): number {
  const known = findUnit(unit)
  if (!known) throw new Error(`${unit} was found before and is gone`)
  return known.factor
}

function timeOf(cell: Cell, { time }: TableLayout): Hour | undefined {
  const parts = 'column' in time ? (/^(\d{4})-(\d\d)-(\d\d)[T ](\d\d)/.exec(cell(time.column))?.slice(1) ?? []) : [cell(time.year), cell(time.month), cell(time.day), cell(time.hour)]
  const [year, month, day, hour] = parts.map((part) => (part === '' ? NaN : Number(part)))
  return year === undefined || month === undefined || day === undefined || hour === undefined ? undefined : { year, month, day, hour }
}
