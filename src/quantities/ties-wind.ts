import { millimetres, nanometresOf } from '../units/length.ts'
import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import type { Dimension } from '../units/dimension.ts'
import { coursesIn } from './brick-unit.ts'
import { defineQuantity } from './define.ts'
import { confirmed } from './lintel-sources.ts'
import { fact, result } from './need.ts'
import type { Source } from './source.ts'
import { courseHeight, tieColumnSpacing } from './tie-needs.ts'

/** Says that both hold, the load of the area served and the limits of the code. */
const coastalGuide: Source = {
  title: "Home Builder's Guide to Coastal Construction, FEMA P-499 (2010)", locator: 'technical fact sheet on brick veneer, tie spacing', evidence: 'primary',
  readIn: 'https://www.yumpu.com/en/document/view/11684418/fema-p-499-home-builders-guide-to-coastal-construction/107',
}

/** Says that ties do not share evenly where the backing is flexible. */
const windOnTies: Source = {
  title: 'Wind loads on ties (question and answer), Masonry Construction', locator: 'answer', evidence: 'primary', readIn: 'http://www.masonryconstruction.com/how-to/wind-loads-on-ties_o',
}

const uneven = 'Where the backing is flexible, ties near the top and bottom of the wall may take four or more times the load of their area.'
const sources = [coastalGuide, windOnTies]
const pressure = fact.amount('exposure.windPressure')
const capacity = fact.amount('ties.capacity')

/** What the wind puts on the tie that serves the most wall, in newtons. */
export const tieWindLoad = defineQuantity({
  id: 'ties.wind-load',
  title: 'Wind load on the most loaded tie',
  part: 'ties',
  dimension: 'force',
  structural: true,
  onRequest: true,
  formula: 'design wind pressure × greatest area that one tie serves',
  sources,
  needs: { pressure, area: result('ties.largest-area') },
  compute: ({ pressure, area }) => {
    const load = (pressure * area) / 1e6
    return { value: load, steps: [`${text('arealLoad', pressure)} × ${text('area', area)} = ${text('force', load)}`], notes: [uneven, confirmed] }
  },
})

/** How much of what a tie may carry the wind uses; more than 1 is too much. */
export const tieWindLoadRatio = defineQuantity({
  id: 'ties.wind-load-ratio',
  title: 'Wind load on a tie, part of what it may carry',
  part: 'ties',
  dimension: 'ratio',
  structural: true,
  onRequest: true,
  formula: 'wind load on the most loaded tie / allowable load of one tie',
  sources,
  needs: { load: result('ties.wind-load'), capacity },
  compute: ({ load, capacity }) => ({
    value: load / capacity,
    steps: [`${text('force', load)} / ${text('force', capacity)} = ${text('ratio', load / capacity)}`],
    notes: [uneven, confirmed],
  }),
})

/** Vertical distance between courses with ties that one tie carries in the wind, never more than the code allows. */
export const tieSpacingForWind = defineQuantity({
  id: 'ties.spacing-for-wind',
  title: 'Vertical tie spacing that the wind leaves',
  part: 'ties',
  dimension: 'length',
  structural: true,
  onlyWhenKnown: true,
  formula: 'allowable load of one tie / (design wind pressure × horizontal spacing), at most the spacing allowed without looking at the load',
  sources,
  needs: { pressure, capacity, across: tieColumnSpacing, allowed: result('ties.spacing-allowed'), course: courseHeight },
  compute: ({ pressure, capacity, across, allowed, course }) => {
    if (pressure === 0) return { reason: 'methodDoesNotHold', why: 'No wind pressure is given; the spacing allowed by the code holds.' }
    const byLoad = nanometresOf((capacity / (pressure * millimetres(across))) * 1e3)
    const value = Math.min(byLoad, allowed)
    const inCourses = course === undefined || course > value ? [] : [`In bed joints: every ${coursesIn(value, course)} courses.`]
    return {
      value,
      steps: [`${text('force', capacity)} / (${text('arealLoad', pressure)} × ${exactLengthText(across)}) = ${inchText(byLoad)}; at most ${inchText(Math.round(allowed))}`],
      notes: [...inCourses, uneven, confirmed],
    }
  },
})

function text(dimension: Exclude<Dimension, 'length'>, amount: number): string {
  return quantityText({ dimension, amount }, 'inchPound')
}
