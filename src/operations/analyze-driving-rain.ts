import { z } from 'zod'
import { evidence } from '../catalog/limit.ts'
import { quantityInputs } from '../evaluation/quantity-inputs.ts'
import { notice } from '../evaluation/notice.ts'
import { analyseHourlyRain } from '../quantities/rain/analyse-hourly-rain.ts'
import { defineOperation, failure } from './operation.ts'

const text = z.string()
const column = text.min(1).max(100)
const figure = z.number()

const measured = { column, unit: text.max(20) }

const layout = z
  .strictObject({
    separator: z.enum(['comma', 'semicolon', 'tab']).meta({ id: 'ColumnSeparator' }).nullish(),
    linesBeforeHeader: z.int().min(0).max(1_000).nullish().meta({ description: 'Lines above the line of column names.' }),
    time: z
      .strictObject({ column: column.nullish(), year: column.nullish(), month: column.nullish(), day: column.nullish(), hour: column.nullish() })
      .meta({ id: 'TimeColumnsInput', description: 'One column of times, "2013-06-10T14:00", or a column for each of year, month, day and hour. The hour is the one that begins then.' }),
    rain: z.strictObject({ ...measured, times: z.number().positive().nullish() }).meta({ id: 'RainColumnInput', description: 'Hourly depth in mm or in; `times` is what a written number is multiplied by, 0.1 for tenths.' }),
    wind: z.strictObject(measured).meta({ id: 'WindColumnInput' }),
    direction: z.strictObject({ column }).meta({ id: 'DirectionColumnInput', description: 'Where the wind comes from, degrees from north.' }),
    temperature: z.strictObject(measured).meta({ id: 'TemperatureColumnInput' }).nullish(),
    station: z.strictObject({ column, is: text.max(100) }).meta({ id: 'StationInput', description: 'Only the lines of this station.' }).nullish(),
    missing: z.array(text.max(20)).max(20).nullish().meta({ description: 'What the file writes where it has no reading.' }),
    dryHoursLeftOut: z.boolean().nullish(),
  })
  .meta({ id: 'HourlyTableInput' })

const wallYear = z.strictObject({ year: z.int(), whole: z.boolean(), hourly: figure, linear: figure, greatestSpell: figure }).meta({ id: 'WallYear' })
const indices = z
  .strictObject({ years: z.array(wallYear), meanHourly: figure.nullable(), meanLinear: figure.nullable(), spellIndex: figure.nullable().meta({ description: 'The greatest spell that two years in three do not exceed; null with too few whole years.' }) })
  .meta({ id: 'WallIndices', description: 'L/m2, in the free wind: by the hourly relation of the standard and by the linear one.' })

const analysis = z
  .strictObject({
    status: z.enum(['computed', 'notDetermined']).meta({ id: 'AnalysisStatus' }),
    why: text.nullable(),
    file: z
      .strictObject({
        hours: z.int(), expectedHours: z.int(), missingHours: z.int(), from: text, to: text, isTypicalYear: z.boolean(), ofOtherStations: z.int(),
        malformed: z.strictObject({ count: z.int(), first: z.array(z.strictObject({ line: z.int(), why: text }).meta({ id: 'MalformedLine' })) }).meta({ id: 'MalformedLines' }),
      })
      .meta({ id: 'HourlyFileSummary' })
      .nullable(),
    findings: z.array(z.strictObject({ code: text, decides: z.boolean().meta({ description: 'True where it keeps an index from being computed.' }), text }).meta({ id: 'QualityFinding' })),
    rain: z
      .strictObject({
        total: figure, wetHours: z.int(), lost: figure.meta({ description: 'Fell with wind from an unknown direction.' }), calm: figure, snow: figure, ofUnknownTemperature: figure,
        years: z.array(z.strictObject({ year: z.int(), whole: z.boolean(), rain: figure }).meta({ id: 'RainYear' })),
      })
      .meta({ id: 'RainSums', description: 'Millimeters.' })
      .nullable(),
    walls: z.array(z.strictObject({ azimuth: figure, all: indices, withoutSnow: indices.nullable() }).meta({ id: 'WallRain' })),
    notes: z.array(text),
    sources: z.array(z.strictObject({ title: text, locator: text, evidence, readIn: text.nullable() }).meta({ id: 'RainSource' })),
    notice: text,
  })
  .meta({ id: 'DrivingRainAnalysis' })

export const analyzeDrivingRain = defineOperation({
  name: 'analyzeDrivingRain',
  cost: { units: 100 },
  summary: 'Read driving rain out of an hourly weather file',
  description: 'Driving rain on walls by direction, by year and by spell. Nothing is computed from a file whose rain is missing or mis-scaled; the answer says why. The file is not kept.',
  input: z
    .strictObject({
      text: text.min(1).max(33_554_432).meta({ description: 'The file, word for word.' }),
      format: z.enum(['energyPlus', 'table']).meta({ id: 'HourlyFormat', description: 'An EnergyPlus weather file, or a table with a line of column names.' }),
      layout: layout.nullish().meta({ description: 'Where a table has what; not for EnergyPlus files.' }),
      azimuths: z.array(z.number().min(0).max(360)).min(1).max(36).nullish().meta({ description: 'Where walls face, degrees from north; the eight directions when left out.' }),
    })
    .meta({ id: 'DrivingRainRequest' }),
  output: analysis,
  answer: ({ catalog }, { text: file, format, layout: given, azimuths }) => {
    if (format === 'table' && !given) return failure('invalidInput', [{ code: 'missingKey', pointer: '/layout', detail: 'is required for a table' }])
    const read = format === 'table' && given ? tableOf(given) : ({ kind: 'energyPlus' } as const)
    if (!read) return failure('invalidInput', [{ code: 'notAllowed', pointer: '/layout/time', detail: 'must be one "column", or all of "year", "month", "day" and "hour"' }])
    const { parameter, table } = quantityInputs({ facts: new Map() }, { rules: [] }, catalog)
    const { sources, findings, walls, notes, rain, ...rest } = analyseHourlyRain({ text: file, format: read, ...(azimuths ? { azimuths } : {}) }, { parameter, table })
    return {
      ok: true,
      value: {
        ...rest, findings: [...findings], notes: [...notes], walls: walls.map(wallView), rain: rain && rainView(rain),
        file: rest.file && { ...rest.file, malformed: { ...rest.file.malformed, first: [...rest.file.malformed.first] } },
        sources: distinct(sources).map((source) => ({ ...source, readIn: source.readIn ?? null })), notice,
      },
    }
  },
})

type Analysis = ReturnType<typeof analyseHourlyRain>
type View = z.infer<typeof analysis>

function wallView({ azimuth, all, withoutSnow }: Analysis['walls'][number]): View['walls'][number] {
  return { azimuth, all: indicesView(all), withoutSnow: withoutSnow && indicesView(withoutSnow) }
}

function indicesView({ years, meanHourly, meanLinear, spellIndex }: Analysis['walls'][number]['all']): View['walls'][number]['all'] {
  return {
    years: years.map((year) => ({ ...year, hourly: shown(year.hourly), linear: shown(year.linear), greatestSpell: shown(year.greatestSpell) })),
    meanHourly: meanHourly === null ? null : shown(meanHourly), meanLinear: meanLinear === null ? null : shown(meanLinear), spellIndex: spellIndex === null ? null : shown(spellIndex),
  }
}

function rainView({ years, wetHours, total, lost, calm, snow, ofUnknownTemperature }: NonNullable<Analysis['rain']>): View['rain'] {
  return {
    wetHours, total: shown(total), lost: shown(lost), calm: shown(calm), snow: shown(snow), ofUnknownTemperature: shown(ofUnknownTemperature),
    years: years.map((year) => ({ ...year, rain: shown(year.rain) })),
  }
}

/** To a thousandth, finer than any gauge reads. */
function shown(amount: number): number {
  return Math.round(amount * 1_000) / 1_000
}

function distinct(sources: Analysis['sources']): Analysis['sources'] {
  return [...new Map(sources.map((source) => [`${source.title} ${source.locator}`, source])).values()]
}

const separators = { comma: ',', semicolon: ';', tab: '\t' } as const

/** The layout without what was left out; undefined where the time is told by halves. */
function tableOf({ time: { column: whole, ...parts }, separator, linesBeforeHeader, rain: { times, ...rain }, wind, direction, temperature, station, missing, dryHoursLeftOut }: z.output<typeof layout>) {
  const { year, month, day, hour } = parts
  const time = whole ? { column: whole } : year && month && day && hour ? { year, month, day, hour } : undefined
  if (!time) return undefined
  return {
    kind: 'table' as const,
    layout: {
      time, wind, direction,
      rain: { ...rain, ...(times ? { times } : {}) },
      ...(separator ? { separator: separators[separator] } : {}), ...(linesBeforeHeader ? { linesBeforeHeader } : {}), ...(temperature ? { temperature } : {}),
      ...(station ? { station } : {}), ...(missing ? { missing } : {}), ...(dryHoursLeftOut ? { dryHoursLeftOut } : {}),
    },
  }
}
