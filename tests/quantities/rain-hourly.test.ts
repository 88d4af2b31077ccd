import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { analyseHourlyRain, type HourlyRainAnalysis } from '../../src/quantities/rain/analyse-hourly-rain.ts'
import type { TableLayout } from '../../src/quantities/rain/read-table.ts'
import { inputsOf, type Given } from './inputs.ts'

const fixture = (name: string) => readFileSync(new URL(`../fixtures/rain/${name}`, import.meta.url), 'utf8')

const airport: TableLayout = {
  time: { year: 'year', month: 'month', day: 'day', hour: 'hour' },
  rain: { column: 'precip', unit: 'in' }, wind: { column: 'wind_speed', unit: 'mph' }, direction: { column: 'wind_dir' }, temperature: { column: 'temp', unit: '°F' },
  station: { column: 'origin', is: 'JFK' }, dryHoursLeftOut: true,
}

const plain: TableLayout = {
  time: { column: 'time' }, rain: { column: 'rain', unit: 'mm' }, wind: { column: 'wind', unit: 'm/s' }, direction: { column: 'from' }, temperature: { column: 'temperature', unit: 'Cel' }, dryHoursLeftOut: true,
}

function analysed(text: string, layout: TableLayout, more: { azimuths?: readonly number[]; given?: Given } = {}): HourlyRainAnalysis {
  const { azimuths, given = {} } = more
  return analyseHourlyRain({ text, format: { kind: 'table', layout }, ...(azimuths ? { azimuths } : {}) }, inputsOf(given))
}

/** Lines of "time,rain,wind,from,temperature" under their header. */
const hours = (...lines: readonly string[]) => ['time,rain,wind,from,temperature', ...lines].join('\n')

const codesOf = ({ findings }: HourlyRainAnalysis) => findings.map(({ code }) => code)

/**
 * Ten years, one hour of wind-driven rain in each: 1 mm with 4.5 m/s × the number of the year onto a south wall is 2/9 × 4.5 n × 1 = n L/m².
 * Sixty millimeters fall without wind, so that no year is too dry. From midnight of the first to the last hour of the last.
 */
const tenYears = hours(
  '2001-01-01T00:00,0,0,0,10',
  ...Array.from({ length: 10 }, (_, index) => [`${2001 + index}-05-01T12:00,1,${4.5 * (index + 1)},180,10`, `${2001 + index}-09-01T12:00,60,0,0,10`]).flat(),
  '2010-12-31T23:00,0,0,0,10',
)

describe('storms at Kennedy airport in 2013', () => {
  const jfk = analysed(fixture('jfk-2013-storms.csv'), airport)

  // Hours out of tidyverse/nycflights13, CC0; sums by a separate script in another language
  test('sums the rain, in inches', () => {
    expect(jfk.status).toBe('computed')
    expect(jfk.rain).toMatchObject({ wetHours: 36, lost: 0 })
    expect(jfk.rain?.total).toBeCloseTo(57.404, 9)
    expect(jfk.rain?.calm).toBeCloseTo(0.762, 9)
    expect(jfk.rain?.snow).toBeCloseTo(5.588, 9)
  })

  test.each([
    [0, 39.2039, 39.3535, 30.2007, 30.2183], [45, 45.8847, 46.2973, 41.8582, 42.2426], [90, 39.7533, 39.5488, 36.8489, 39.7533], [135, 28.2618, 27.6774, 23.1501, 28.2618],
    [180, 13.7939, 13.0928, 8.7446, 13.7939], [225, 3.6675, 3.2224, 2.5082, 3.6675], [270, 5.4592, 4.8924, 4.7111, 1.6242], [315, 21.9797, 21.7407, 12.7947, 12.9142],
  ])('on a wall that faces %d degrees', (azimuth, hourly, linear, spell, rainOnly) => {
    const wall = jfk.walls.find((one) => one.azimuth === azimuth)
    const [year] = wall?.all.years ?? []
    expect(year?.hourly).toBeCloseTo(hourly, 3)
    expect(year?.linear).toBeCloseTo(linear, 3)
    expect(year?.greatestSpell).toBeCloseTo(spell, 3)
    expect(wall?.withoutSnow?.years[0]?.hourly).toBeCloseTo(rainOnly, 3)
  })

  test('gives no mean and no value once in three years out of part of a year, and says so', () => {
    expect(jfk.walls[0]?.all).toMatchObject({ meanHourly: null, meanLinear: null, spellIndex: null, years: [{ year: 2013, whole: false }] })
    expect(codesOf(jfk)).toEqual(['noWholeYear', 'fewYears'])
  })

  test('takes the hours that are not there as missing unless told that dry hours are left out', () => {
    const result = analysed(fixture('jfk-2013-storms.csv'), { ...airport, dryHoursLeftOut: false })
    expect(result).toMatchObject({ status: 'notDetermined', rain: null, walls: [] })
    // From February 9 at 3 to June 14 at 17 there are 125 days and 15 hours, of which 62 stand in the file
    expect(result.file).toMatchObject({ hours: 62, expectedHours: 3015, missingHours: 2953, from: '2013-02-09T03', to: '2013-06-14T17' })
  })
})

describe('a file whose rain is not usable', () => {
  // pvlib 723170TYA.CSV: 3, 5, 8, 18 and 46 are 0.01, 0.02, 0.03, 0.07 and 0.18 in, in tenths of a millimeter
  const greensboro: TableLayout = {
    time: { year: 'year', month: 'month', day: 'day', hour: 'hour' }, rain: { column: 'Lprecip depth (mm)', unit: 'mm' }, wind: { column: 'Wspd (m/s)', unit: 'm/s' },
    direction: { column: 'Wdir (degrees)' }, temperature: { column: 'Dry-bulb (C)', unit: 'Cel' },
  }

  test('is in tenths of a millimeter', () => {
    const result = analysed(fixture('greensboro-tmy3.csv'), greensboro)
    expect(result).toMatchObject({ status: 'notDetermined', rain: null, walls: [], why: expect.stringMatching(/tenths of a millimeter/) as string })
    expect(codesOf(result)).toContain('tenthsSuspected')
  })

  test('is usable once told so', () => {
    const result = analysed(fixture('greensboro-tmy3.csv'), { ...greensboro, rain: { ...greensboro.rain, times: 0.1 } })
    expect(result.status).toBe('computed')
    expect(result.rain?.total).toBeCloseTo(10.4, 9)
  })

  test('whole millimeters of every kind are no tenths', () => {
    const lines = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((rain) => `2001-01-01T0${rain}:00,${rain},5,180,10`)
    expect(codesOf(analysed(hours(...lines), plain))).not.toContain('tenthsSuspected')
  })

  // EnergyPlus, Miami: 999.0 for the depth and 99.0 for its hours where it is missing, 1.0 mm that fell in six hours
  test('is missing in an EnergyPlus file', () => {
    const result = analyseHourlyRain({ text: fixture('miami-tmy3.epw'), format: { kind: 'energyPlus' } }, inputsOf({}))
    expect(result).toMatchObject({ status: 'notDetermined', rain: null, walls: [], file: { hours: 8, expectedHours: 8, missingHours: 3, from: '2004-12-31T16', to: '2004-12-31T23' } })
    expect(codesOf(result)).toEqual(expect.arrayContaining(['rainMissing', 'rainOfSeveralHours']))
  })

  test.each([
    ['rainAllZero', hours('2001-01-01T00:00,0,5,180,10', '2001-01-01T01:00,0,5,180,10')],
    ['hourTooWet', hours('2001-01-01T00:00,200.1,5,180,10')],
    ['annualRainTooLow', hours('2001-01-01T00:00,49.9,5,180,10', '2001-12-31T23:00,0,5,180,10')],
    ['annualRainTooHigh', hours('2001-01-01T00:00,0,5,180,10', ...Array.from({ length: 27 }, (_, index) => `2001-02-${String(index + 1).padStart(2, '0')}T00:00,150.1,5,180,10`), '2001-12-31T23:00,0,5,180,10')],
    ['tenthsSuspected', hours('2001-01-01T00:00,0,5,180,10', ...Array.from({ length: 27 }, (_, index) => `2001-02-${String(index + 1).padStart(2, '0')}T00:00,112,5,180,10`), '2001-12-31T23:00,0,5,180,10')],
    ['rainMissing', hours(...Array.from({ length: 10 }, (_, index) => `2001-01-01T0${index}:00,${index === 3 ? 'NA' : 1.5},5,180,10`))],
  ])('%s', (code, text) => {
    const result = analysed(text, plain)
    expect(result).toMatchObject({ status: 'notDetermined', rain: null, walls: [] })
    expect(result.findings.filter(({ decides }) => decides).map((finding) => finding.code)).toEqual([code])
    expect(result.why).toBe(result.findings.find(({ decides }) => decides)?.text)
  })

  test('an hour, a year and a share just within the bounds are taken', () => {
    expect(analysed(hours('2001-01-01T00:00,200,5,180,10'), plain).status).toBe('computed')
    expect(analysed(hours('2001-01-01T00:00,50,5,180,10', '2001-12-31T23:00,0,5,180,10'), plain).status).toBe('computed')
    expect(analysed(hours(...Array.from({ length: 20 }, (_, index) => `2001-01-01T${String(index).padStart(2, '0')}:00,${index === 3 ? 'NA' : 1.5},5,180,10`)), plain).status).toBe('computed')
  })
})

describe('what is told beside the index', () => {
  test('the share of the rain that no direction is known for', () => {
    const result = analysed(hours('2001-01-01T00:00,9.5,5,180,10', '2001-01-01T01:00,0.3,5,NA,10', '2001-01-01T02:00,0.2,NA,180,10'), plain, { azimuths: [180] })
    expect(result.rain?.lost).toBeCloseTo(0.5, 9)
    expect(result.findings.find(({ code }) => code === 'directionLost')).toMatchObject({ decides: false, text: expect.stringMatching(/^5 percent of the rain/) as string })
    // 2/9 × 5 × 9.5^(8/9), worked with a calculator
    expect(result.walls[0]?.all.years[0]?.hourly).toBeCloseTo(8.2195, 4)
  })

  test('a little lost is not told', () => {
    expect(codesOf(analysed(hours('2001-01-01T00:00,97,5,180,10', '2001-01-01T01:00,3,5,NA,10'), plain))).not.toContain('directionLost')
  })

  test('snow that cannot be told from rain', () => {
    const result = analysed(hours('2001-01-01T00:00,1,5,180,NA', '2001-01-01T01:00,1,5,180,-1'), plain)
    expect(codesOf(result)).toContain('temperatureMissing')
    expect(result.walls[0]?.withoutSnow).toBeNull()
  })

  test('lines that cannot be read, by their number and the first of them only', () => {
    const bad = ['2001-01-01T01:00,wet,5,180,10', '2001-01-01T02:00,1,5,180', '2001-02-30T02:00,1,5,180,10', '2001-01-01T03:00,-9900,5,180,10', '2001-01-01T03:00,1,-1,180,10', '2001-01-01T03:00,1,5,361,10', '2001-01-01T03:00,1,5,180,warm', 'soon,1,5,180,10']
    const result = analysed(hours('2001-01-01T00:00,1,5,180,10', ...bad), plain)
    expect(result.file?.malformed).toEqual({
      count: 8,
      first: [
        { line: 3, why: 'the rain is not a number' }, { line: 4, why: '4 cells under 5 columns' }, { line: 5, why: 'the time cannot be read' }, { line: 6, why: '-9900 is no depth of rain' },
        { line: 7, why: '-1 is no wind speed' }, { line: 8, why: '361 is no direction from north' }, { line: 9, why: 'the temperature is not a number' }, { line: 10, why: 'the time cannot be read' },
      ],
    })
    const many = analysed(hours('2001-01-01T00:00,1,5,180,10', ...Array.from({ length: 90 }, () => 'soon,1,5,180,10')), plain)
    expect(many.file?.malformed.count).toBe(90)
    expect(many.file?.malformed.first).toHaveLength(24)
    expect(codesOf(result)).toEqual(expect.arrayContaining(['malformedLines', 'rainMissing']))
  })

  test('a code for "missing" that was named is a reading that is missing', () => {
    const result = analysed(hours('2001-01-01T00:00,1,5,180,10', '2001-01-01T01:00,-9900,5,180,10'), { ...plain, missing: ['-9900'] })
    expect(result.file?.malformed.count).toBe(0)
    expect(codesOf(result)).toContain('rainMissing')
  })

  test('hours that stand twice, and lines out of order', () => {
    const result = analysed(hours('2001-11-04T01:00,1,4.5,180,10', '2001-11-04T01:00,1,4.5,180,10', '2001-11-03T01:00,1,4.5,180,10'), plain, { azimuths: [180] })
    expect(codesOf(result)).toEqual(expect.arrayContaining(['repeatedHours', 'outOfOrder']))
    expect(result.file).toMatchObject({ from: '2001-11-03T01', to: '2001-11-04T01' })
    expect(result.walls[0]?.all.years[0]?.hourly).toBeCloseTo(3, 9)
  })

  test('a year put together of several', () => {
    const result = analysed(hours('1995-01-31T23:00,1,4.5,180,10', '2002-02-01T00:00,1,4.5,180,10', '1988-03-01T00:00,1,4.5,180,10'), plain, { azimuths: [180] })
    expect(codesOf(result)).toContain('typicalYear')
    expect(result.file).toMatchObject({ isTypicalYear: true, from: '1995-01-31T23', to: '1995-03-01T00' })
    expect(result.walls[0]?.all.years).toEqual([expect.objectContaining({ year: 1995, hourly: expect.closeTo(3, 9) as number })])
  })
})

describe('ten years', () => {
  const result = analysed(tenYears, plain, { azimuths: [180, 240, 0] })
  const [south, west, north] = result.walls

  test('are whole, and nothing is to be told', () => {
    expect(result.rain?.years).toHaveLength(10)
    expect(result.rain?.years.every(({ whole, rain }) => whole && rain === 61)).toBe(true)
    expect(result.findings).toEqual([])
  })

  test('have a mean of (1 + … + 10) / 10', () => expect(south?.all.meanHourly).toBeCloseTo(5.5, 9))

  // 0.2 × 1 × 4.5 n, mean n 5.5, worked by hand
  test('have a mean by the linear relation', () => expect(south?.all.meanLinear).toBeCloseTo(4.95, 9))

  test('have a spell that seven of ten do not exceed', () => expect(south?.all.spellIndex).toBeCloseTo(7, 9))

  test('drive half as much onto a wall 60 degrees off, and nothing onto the other side', () => {
    expect(west?.all.meanHourly).toBeCloseTo(2.75, 9)
    expect(north?.all).toMatchObject({ meanHourly: 0, spellIndex: 0 })
  })

  test('one year less gives no value once in three years', () => {
    const nine = analysed(tenYears.replace('2010-12-31T23', '2010-10-01T00'), plain, { azimuths: [180] })
    expect(nine.walls[0]?.all.spellIndex).toBeNull()
    expect(nine.walls[0]?.all.meanHourly).toBeCloseTo(5, 9)
    expect(nine.findings).toEqual([expect.objectContaining({ code: 'fewYears', decides: false, text: expect.stringMatching(/^Only 9 whole years; 10 are needed/) as string })])
  })

  test('are too many where the catalog takes nine years of hours', () => {
    const lines = Array.from({ length: 400 }, (_, index) => `2001-01-01T${String(index % 24).padStart(2, '0')}:00,1,5,180,10`)
    expect(analysed(hours(...lines), plain).status).toBe('computed')
    const all = Array.from({ length: 8785 }, (_, index) => `2001-01-01T${String(index % 24).padStart(2, '0')}:00,1,5,180,10`)
    expect(analysed(hours(...all), plain, { given: { parameters: { 'rain.years-greatest': '1' } } })).toMatchObject({ status: 'notDetermined', file: null, why: 'The file holds more than 1 years of hours.' })
  })
})

describe('a file that cannot be read', () => {
  const one = hours('2001-01-01T00:00,1,5,180,10')

  test.each([
    [{ rain: { column: 'precip', unit: 'mm' } }, 'The header line has no column "precip".'],
    [{ time: { year: 'year', month: 'month', day: 'day', hour: 'hour' } }, 'The header line has no column "year".'],
    [{ rain: { column: 'rain', unit: 'psf' } }, /no unit of rain/],
    [{ rain: { column: 'rain', unit: 'mm', times: 0 } }, /more than 0/],
    [{ wind: { column: 'wind', unit: 'kn' } }, /no unit of wind speed/],
    [{ temperature: { column: 'temperature', unit: 'mm' } }, /no unit of temperature/],
    [{ station: { column: 'origin', is: 'JFK' } }, /no column "origin"/],
    [{ station: { column: 'from', is: 'JFK' } }, /no hour that can be read/],
  ])('with the layout %j', (layout, why) => {
    expect(analysed(one, { ...plain, ...layout })).toMatchObject({ status: 'notDetermined', file: null, walls: [], why: typeof why === 'string' ? why : expect.stringMatching(why) as string })
  })

  test.each([
    ['a table', one, /eight header lines/],
    ['half-hours', fixture('miami-tmy3.epw').replace('DATA PERIODS,1,1', 'DATA PERIODS,1,2'), /2 readings in an hour/],
    ['a header alone', fixture('miami-tmy3.epw').split('\n').slice(0, 8).join('\n'), /no hour/],
  ])('as an EnergyPlus file: %s', (_, text, why) => {
    expect(analyseHourlyRain({ text, format: { kind: 'energyPlus' } }, inputsOf({}))).toMatchObject({ status: 'notDetermined', file: null, why: expect.stringMatching(why) as string })
  })

  test('is empty', () => expect(analysed('', plain).status).toBe('notDetermined'))
})

describe('the ways a table may be written', () => {
  test('lines above the header, semicolons, quotation marks, and another station', () => {
    const text = ['Station 12', '"time";"rain";"wind";"from";"temperature";"where"', '"2001-01-01 00:00";"1";"4.5";"180";"10";"south; by the gate"', '"2001-01-01 00:00";"9";"4.5";"180";"10";"north"'].join('\r\n')
    const result = analysed(text, { ...plain, separator: ';', linesBeforeHeader: 1, station: { column: 'where', is: 'south; by the gate' } }, { azimuths: [180] })
    expect(result.file).toMatchObject({ hours: 1, ofOtherStations: 1 })
    expect(result.walls[0]?.all.years[0]?.hourly).toBeCloseTo(1, 9)
  })

  test('an EnergyPlus hour runs to its number', () => {
    const wet = fixture('miami-tmy3.epw').replaceAll('0.150,1.0,6.0', '0.150,1.0,1.0').replaceAll('999.0,99.0', '1.0,1.0')
    const result = analyseHourlyRain({ text: wet, format: { kind: 'energyPlus' }, azimuths: [80] }, inputsOf({}))
    // 2/9 × (5.1 + 5.7 cos 10° + 7.2 cos 10°) m/s at 1 mm an hour, worked with a calculator
    expect(result.walls[0]?.all.years[0]?.hourly).toBeCloseTo(3.9564, 3)
    expect(result.file).toMatchObject({ from: '2004-12-31T16', to: '2004-12-31T23' })
  })
})

test('the sources of the relations and bounds go along', () => {
  expect(analysed(tenYears, plain).sources.map(({ title }) => title)).toEqual(expect.arrayContaining(['iso-15927-3', 'driving-rain-digest', 'practice']))
})
