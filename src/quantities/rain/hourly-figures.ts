import type { Table } from '../../catalog/reference.ts'
import { combined, parameter, table, type Need } from '../need.ts'
import { hourlyRelation, type HourlyRelation } from '../rain-free-wind.ts'

/** What the analysis of a weather file computes and judges with. */
export interface HourlyFigures {
  readonly relation: HourlyRelation
  readonly linear: number
  /** Hours without driving rain on a wall that end a spell. */
  readonly spellGap: number
  /** Share of the years that do not exceed the spell index. */
  readonly spellShare: number
  readonly yearsLeast: number
  readonly yearsGreatest: number
  readonly missingShare: number
  readonly lostShare: number
  /** Yearly rain, mm. */
  readonly annualLeast: number
  readonly annualGreatest: number
  readonly annualWholeNumbers: number
  /** Rain in an hour, mm. */
  readonly hourGreatest: number
  /** Lengths in nanometers, of which only the ratio counts. */
  readonly gaugeStep: number
  readonly tenth: number
  /** °C. */
  readonly snowBelow: number
  readonly energyPlusFields: Table
}

export const hourlyFigures: Need<HourlyFigures> = combined(
  {
    relation: hourlyRelation,
    linear: parameter('rain.linear-coefficient-least'),
    spellGap: parameter('rain.spell-gap'),
    spellShare: parameter('rain.spell-share'),
    yearsLeast: parameter('rain.years-least'),
    yearsGreatest: parameter('rain.years-greatest'),
    missingShare: parameter('rain.missing-share-greatest'),
    lostShare: parameter('rain.lost-share-greatest'),
    annualLeast: parameter('rain.annual-least'),
    annualGreatest: parameter('rain.annual-greatest'),
    annualWholeNumbers: parameter('rain.annual-whole-numbers'),
    hourGreatest: parameter('rain.hour-greatest'),
    gaugeStep: parameter('rain.gauge-step'),
    tenth: parameter('rain.tenth'),
    snowBelow: parameter('rain.snow-below'),
    energyPlusFields: table('rain.energyplus-fields'),
  },
  (figures) => figures,
)
