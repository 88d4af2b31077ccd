import { findUnit } from '../../units/dimension.ts'
import type { HourlyFigures } from './hourly-figures.ts'
import type { HourlyFile } from './hourly-row.ts'
import type { HourlyRecord } from './hourly-years.ts'
import { sumsOf, wetHoursOf, type RainSums } from './wet-hours.ts'

export type QualityCode =
  | 'rainMissing' | 'rainAllZero' | 'annualRainTooLow' | 'annualRainTooHigh' | 'hourTooWet' | 'tenthsSuspected'
  | 'directionLost' | 'fewYears' | 'noWholeYear' | 'typicalYear' | 'malformedLines' | 'repeatedHours' | 'outOfOrder' | 'rainOfSeveralHours' | 'temperatureMissing'

/** Something to know of a weather file; one that decides keeps an index from being computed. */
export interface QualityFinding {
  readonly code: QualityCode
  readonly decides: boolean
  readonly text: string
}

interface Looked {
  readonly file: HourlyFile
  readonly record: HourlyRecord
  readonly sums: RainSums
  readonly figures: HourlyFigures
}

export function qualityOf(file: HourlyFile, record: HourlyRecord, figures: HourlyFigures): readonly QualityFinding[] {
  const looked = { file, record, figures, sums: sumsOf(wetHoursOf(record), figures.snowBelow) }
  return [...checks.flatMap(([code, check]) => found(code, true, check(looked))), ...remarks.flatMap(([code, check]) => found(code, false, check(looked)))]
}

function found(code: QualityCode, decides: boolean, text: string | false): readonly QualityFinding[] {
  return text === false ? [] : [{ code, decides, text }]
}

type Check = readonly [QualityCode, (looked: Looked) => string | false]

/** Each of these makes the rain of the file unusable. */
const checks: readonly Check[] = [
  ['rainMissing', ({ record: { missingHours, expectedHours }, figures }) => missingHours > figures.missingShare * expectedHours && `The rain is missing in ${percent(missingHours / expectedHours)} of the hours from the first to the last.`],
  ['rainAllZero', ({ sums }) => sums.wetHours === 0 && 'No hour of the file has any rain.'],
  ['annualRainTooLow', (looked) => yearText(looked, (rain) => rain < looked.figures.annualLeast)],
  ['annualRainTooHigh', (looked) => yearText(looked, (rain) => rain > looked.figures.annualGreatest)],
  ['hourTooWet', ({ record, figures }) => {
    const wettest = record.rows.find(({ rain }) => (rain ?? 0) > figures.hourGreatest)
    return wettest !== undefined && `Line ${wettest.line} has ${depth(wettest.rain ?? 0)} of rain in one hour.`
  }],
  ['tenthsSuspected', (looked) => looksLikeTenths(looked) && 'All rain is in whole numbers as tenths of a millimeter would be; the unit of the file is in doubt.'],
]

/** These are told beside the index. */
const remarks: readonly Check[] = [
  ['directionLost', ({ sums, figures }) => sums.lost > figures.lostShare * sums.total && `${percent(sums.lost / sums.total)} of the rain fell in hours without a wind direction or speed and counts for no wall.`],
  ['noWholeYear', ({ record }) => wholeYears(record) === 0 && 'No year is there from end to end; there is no yearly mean.'],
  ['fewYears', ({ record, figures }) => wholeYears(record) < figures.yearsLeast && `Only ${wholeYears(record)} whole years; ${figures.yearsLeast} are needed for the value once in three years and for a class of exposure.`],
  ['typicalYear', ({ record }) => record.isTypicalYear && 'The year is put together of months of several years; its spells and extremes are not those of any year.'],
  ['malformedLines', ({ file }) => file.malformed.count > 0 && `${file.malformed.count} lines could not be read and are left out.`],
  ['repeatedHours', ({ record }) => record.repeatedHours > 0 && `${record.repeatedHours} hours stand in the file more than once, as when clocks go back; all of them count.`],
  ['outOfOrder', ({ record }) => !record.wasInOrder && 'The lines are not in order of time and were put in order.'],
  ['rainOfSeveralHours', ({ record }) => {
    const count = record.rows.filter(({ ofSeveralHours }) => ofSeveralHours).length
    return count > 0 && `${count} readings are the rain of several hours and count as missing.`
  }],
  ['temperatureMissing', ({ sums, figures }) => sums.ofUnknownTemperature > figures.missingShare * sums.total && `${percent(sums.ofUnknownTemperature / sums.total)} of the rain fell in hours without a temperature; snow cannot be left out.`],
]

function yearText({ record }: Looked, doubted: (rain: number) => boolean): string | false {
  const year = record.years.find(({ whole, rain }) => whole && doubted(rain))
  return year !== undefined && `${year.year} has ${depth(year.rain)} of rain.`
}

function wholeYears({ years }: HourlyRecord): number {
  return years.filter(({ whole }) => whole).length
}

/** Whole numbers that add up to too much, or that are all hundredths of an inch rounded to tenths of a millimeter: 3, 5, 8, 10, 13. */
function looksLikeTenths({ record: { rows, years }, figures }: Looked): boolean {
  const wet = rows.flatMap(({ rain, rainAsWritten }) => (rainAsWritten !== null && rainAsWritten > 0 ? [{ rain, rainAsWritten }] : []))
  if (!wet.every(({ rainAsWritten }) => Number.isInteger(rainAsWritten))) return false
  const step = figures.gaugeStep / figures.tenth
  const onGauge = wet.every(({ rain, rainAsWritten }) => rain === rainAsWritten && Math.round(Math.round(rainAsWritten / step) * step) === rainAsWritten)
  return (wet.length >= enoughToTell && onGauge) || years.some(({ whole, rain }) => whole && rain > figures.annualWholeNumbers)
}

/** So many hours of rain are not all steps of a gauge by chance: less than half of the whole numbers are. */
const enoughToTell = 8

const hundredth = findUnit('%')?.factor ?? 1

function percent(share: number): string {
  return `${Number((share / hundredth).toFixed(1))} percent`
}

function depth(millimetres: number): string {
  return `${Number(millimetres.toFixed(1))} millimeters`
}
