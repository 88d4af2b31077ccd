import type { Inputs } from '../inputs.ts'
import type { Source } from '../source.ts'
import { hourlyFigures, type HourlyFigures } from './hourly-figures.ts'
import { qualityOf, type QualityFinding } from './hourly-quality.ts'
import type { HourlyFile, HourlyReading, HourlyRow, Malformed } from './hourly-row.ts'
import { recordOf, type HourlyRecord, type RainYear } from './hourly-years.ts'
import { readEnergyPlus } from './read-energyplus.ts'
import { readTable, type TableLayout } from './read-table.ts'
import { wallAt, type Wall } from './wall-index.ts'
import { sumsOf, wetHoursOf, type RainSums } from './wet-hours.ts'

export interface HourlyRainRequest {
  readonly text: string
  readonly format: { readonly kind: 'energyPlus' } | { readonly kind: 'table'; readonly layout: TableLayout }
  /** Where walls face, degrees from north; the eight directions when left out. */
  readonly azimuths?: readonly number[]
}

/** What the file holds, whatever may be computed from it. */
export interface HourlyFileSummary {
  readonly hours: number
  readonly expectedHours: number
  readonly missingHours: number
  readonly from: string
  readonly to: string
  readonly isTypicalYear: boolean
  readonly ofOtherStations: number
  readonly malformed: { readonly count: number; readonly first: readonly Malformed[] }
}

export interface HourlyRainAnalysis {
  readonly status: 'computed' | 'notDetermined'
  /** Why there is no index; null where there is one. */
  readonly why: string | null
  /** Null where the file could not be read at all. */
  readonly file: HourlyFileSummary | null
  readonly findings: readonly QualityFinding[]
  /** Rain in mm; null where the file is not fit to tell. */
  readonly rain: (RainSums & { readonly years: readonly RainYear[] }) | null
  readonly walls: readonly Wall[]
  readonly notes: readonly string[]
  readonly sources: readonly Source[]
}

const notes: readonly string[] = [
  'In the free wind at the station, before any factor of the wall, the ground or what stands around it.',
  'The yearly index goes with how wet absorbent brick stays, the spell with whether rain gets through; both understate the worst.',
]

/** Driving rain by direction out of an hourly weather file. Nothing is computed from a file whose rain is missing or mis-scaled. */
export function analyseHourlyRain({ text, format, azimuths = eightDirections }: HourlyRainRequest, catalog: Pick<Inputs, 'parameter' | 'table'>): HourlyRainAnalysis {
  const found = hourlyFigures.find({ ...catalog, fact: nothing, limit: nothing, quantity: nothing })
  if (!found.known) throw new Error(`the catalog lacks ${found.missing.join(', ')}`)
  const figures = found.value
  const reading = readText(text, format, figures)
  if (!reading.ok) return { status: 'notDetermined', why: reading.why, file: null, findings: [], rain: null, walls: [], notes: [], sources: found.sources }
  return { ...analysisOf(reading.file, azimuths, figures), sources: found.sources }
}

const eightDirections: readonly number[] = Array.from({ length: 8 }, (_, index) => (index * 2 * 180) / 8)

const nothing = () => undefined

function readText(text: string, format: HourlyRainRequest['format'], { energyPlusFields, yearsGreatest }: HourlyFigures): HourlyReading {
  return format.kind === 'energyPlus' ? readEnergyPlus(text, energyPlusFields, yearsGreatest) : readTable(text, format.layout, yearsGreatest)
}

function analysisOf(file: HourlyFile, azimuths: readonly number[], figures: HourlyFigures): Omit<HourlyRainAnalysis, 'sources'> {
  const record = recordOf(file, figures.missingShare)
  const findings = qualityOf(file, record, figures)
  const summary = summaryOf(file, record)
  const deciding = findings.filter(({ decides }) => decides)
  if (deciding.length > 0) return { status: 'notDetermined', why: deciding.map(({ text }) => text).join(' '), file: summary, findings, rain: null, walls: [], notes: [] }
  const hours = wetHoursOf(record)
  const knowsSnow = !findings.some(({ code }) => code === 'temperatureMissing')
  return {
    status: 'computed',
    why: null,
    file: summary,
    findings,
    rain: { ...sumsOf(hours, figures.snowBelow), years: record.years },
    walls: azimuths.map((azimuth) => wallAt(azimuth, hours, record.years, figures, knowsSnow)),
    notes,
  }
}

function summaryOf({ malformed, ofOtherStations }: HourlyFile, { rows, expectedHours, missingHours, isTypicalYear }: HourlyRecord): HourlyFileSummary {
  const [first, last] = [rows[0], rows.at(-1)]
  return { hours: rows.length, expectedHours, missingHours, from: timeText(first), to: timeText(last), isTypicalYear, ofOtherStations, malformed }
}

/** "2013-06-10T14", the hour that begins then. */
function timeText(row: HourlyRow | undefined): string {
  if (!row) return ''
  const two = (part: number) => String(part).padStart(2, '0')
  return `${row.year}-${two(row.month)}-${two(row.day)}T${two(row.hour)}`
}
