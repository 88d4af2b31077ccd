import { hourlyRain, linearRain, shareOnto } from '../rain-free-wind.ts'
import type { HourlyFigures } from './hourly-figures.ts'
import type { RainYear } from './hourly-years.ts'
import { isSnow, type WetHour } from './wet-hours.ts'

/** Driving rain on one wall in one year, in L/m². */
export interface WallYear {
  readonly year: number
  readonly whole: boolean
  readonly hourly: number
  readonly linear: number
  /** The greatest spell that begins in the year, by the hourly relation. */
  readonly greatestSpell: number
}

export interface WallIndices {
  readonly years: readonly WallYear[]
  /** Means of the whole years, L/m²; null without one. */
  readonly meanHourly: number | null
  readonly meanLinear: number | null
  /** The greatest spell that two years in three do not exceed, L/m²; null with too few whole years. */
  readonly spellIndex: number | null
}

export interface Wall {
  /** Where the wall faces, degrees from north, clockwise. */
  readonly azimuth: number
  readonly all: WallIndices
  /** Hours of snow left out; null where the temperature is not known. */
  readonly withoutSnow: WallIndices | null
}

export function wallAt(azimuth: number, hours: readonly WetHour[], years: readonly RainYear[], figures: HourlyFigures, knowsSnow: boolean): Wall {
  const driven = drivenOnto(azimuth, hours, figures)
  return {
    azimuth,
    all: indicesOf(driven, years, figures),
    withoutSnow: knowsSnow ? indicesOf(driven.filter(({ snow }) => !snow), years, figures) : null,
  }
}

interface DrivenHour {
  readonly year: number
  readonly time: number
  readonly hourly: number
  readonly linear: number
  readonly snow: boolean
}

/** The hours in which the wind drives rain onto the wall. */
function drivenOnto(azimuth: number, hours: readonly WetHour[], { relation, linear, snowBelow }: HourlyFigures): readonly DrivenHour[] {
  return hours.flatMap((hour) => {
    const { year, time, rain, wind, direction } = hour
    if (wind === null || wind === 0 || direction === null) return []
    const driving = { rain, wind, onto: shareOnto(direction - azimuth) }
    return driving.onto === 0 ? [] : [{ year, time, hourly: hourlyRain(relation, driving), linear: linearRain(linear, driving), snow: isSnow(hour, snowBelow) }]
  })
}

function indicesOf(driven: readonly DrivenHour[], years: readonly RainYear[], { spellGap, spellShare, yearsLeast }: HourlyFigures): WallIndices {
  const spells = spellsOf(driven, spellGap)
  const sums = new Map(years.map(({ year, whole }) => [year, { year, whole, hourly: 0, linear: 0, greatestSpell: 0 }]))
  for (const { year, hourly, linear } of driven) {
    const sum = sums.get(year)
    if (!sum) continue
    sum.hourly += hourly
    sum.linear += linear
  }
  for (const { year, depth } of spells) {
    const sum = sums.get(year)
    if (sum) sum.greatestSpell = Math.max(sum.greatestSpell, depth)
  }
  const all = [...sums.values()]
  const whole = all.filter(({ whole }) => whole)
  return {
    years: all,
    meanHourly: meanOf(whole.map(({ hourly }) => hourly)),
    meanLinear: meanOf(whole.map(({ linear }) => linear)),
    spellIndex: whole.length < yearsLeast ? null : notExceeded(whole.map(({ greatestSpell }) => greatestSpell), spellShare),
  }
}

interface Spell {
  readonly year: number
  readonly depth: number
}

/** Spells of driving rain on one wall; so many hours without any end one. A spell belongs to the year in which it begins. */
export function spellsOf(driven: readonly Pick<DrivenHour, 'year' | 'time' | 'hourly'>[], gap: number): readonly Spell[] {
  const spells: { year: number; depth: number }[] = []
  let last = -Infinity
  for (const { year, time, hourly } of driven) {
    const open = spells.at(-1)
    if (!open || time - last - 1 >= gap) spells.push({ year, depth: hourly })
    else open.depth += hourly
    last = time
  }
  return spells
}

/** The least of the amounts that at least this share of them does not exceed. */
export function notExceeded(amounts: readonly number[], share: number): number | null {
  return amounts.toSorted((a, b) => a - b)[Math.ceil(share * amounts.length) - 1] ?? null
}

function meanOf(amounts: readonly number[]): number | null {
  return amounts.length === 0 ? null : amounts.reduce((sum, amount) => sum + amount, 0) / amounts.length
}
