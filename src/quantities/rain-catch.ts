import { areaOf } from '../units/length.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { combined, fact, optional, parameter, result, type Need } from './need.ts'
import { bandAcross, bandOf } from './rain-band.ts'
import { geometry } from './rain-sources.ts'

const squareMetre_mm2 = 1e6

/** The wall whose water comes down on the head flashing, in mm². */
export const headCatch = defineQuantity({
  id: 'rain.head-catch',
  title: 'Wall that drains onto the head flashing',
  part: 'head',
  dimension: 'area',
  formula: 'length dam to dam × brick above the head',
  indicative: true,
  onlyWhenKnown: true,
  sources: [geometry],
  needs: { length: result('flashing.head-pan-length'), height: fact.amount('wall.heightAboveHead') },
  compute: ({ length, height }) => ({
    value: areaOf(length, height),
    steps: [`${exactLengthText(length)} × ${exactLengthText(height)}`],
    notes: ['Up to the next flashing through the wall or the roof. Water that runs down the face does not come onto the flashing.'],
  }),
})

interface Shares {
  readonly least: number
  readonly usual: number
  readonly greatest: number
}

/** Share of the rain on the wall that gets through the brick. */
const leakShares: Need<Shares> = combined(
  { least: parameter('rain.leak-share-least'), usual: parameter('rain.leak-share'), greatest: parameter('rain.leak-share-greatest') },
  (shares) => shares,
)

/** Water that comes onto the head flashing through the brick, in L/h. */
export const panInflow = defineQuantity({
  id: 'rain.pan-inflow',
  title: 'Water onto the head flashing in the storm',
  part: 'head',
  dimension: 'flow',
  formula: 'rain on the wall × wall that drains onto the flashing × share that gets through the brick',
  indicative: true,
  onlyWhenKnown: true,
  needs: { rain: bandOf('rain.on-wall'), area: result('rain.head-catch'), shares: leakShares },
  compute: ({ rain, area, shares }) => {
    const square = area / squareMetre_mm2
    const rows = [shares.least, shares.usual, shares.greatest].map((share) => [share, rain.least * square * share, rain.greatest * square * share] as const)
    return {
      value: bandAcross(rows.flatMap(([, from, to]) => [from, to])),
      tables: [{
        title: 'By the share that gets through the brick',
        columns: [{ title: 'Share', dimension: 'ratio' }, { title: 'Least rain on the wall', dimension: 'flow' }, { title: 'Greatest rain on the wall', dimension: 'flow' }],
        rows,
      }],
      notes: ['No measured share holds for a wall at hand; workmanship and mortar change it tenfold either way. Never read it as a pass or a fail.'],
    }
  },
})

/** Rain that the wall above the head catches in a storm by the rule for drainage, in L/h. */
export const stormCatch = defineQuantity({
  id: 'rain.storm-catch',
  title: 'Rain that the wall above the head catches in a storm',
  part: 'head',
  dimension: 'flow',
  formula: 'half of the wall × rain in the storm',
  indicative: true,
  onlyWhenKnown: true,
  needs: {
    area: result('rain.head-catch'),
    share: parameter('rain.wall-catch-share'),
    usual: parameter('rain.design-rainfall'),
    strict: parameter('rain.design-rainfall-strict'),
    described: optional(fact.amount('exposure.rainIntensity')),
  },
  compute: ({ area, share, usual, strict, described }) => {
    const caught = (rate: number) => (area / squareMetre_mm2) * share * rate
    const rows = [
      ['Usual design rainfall', usual, caught(usual)],
      ['Where nothing may overflow', strict, caught(strict)],
      ...(described === undefined ? [] : [['The storm described', described, caught(described)]]),
    ]
    return {
      value: bandAcross([caught(usual), caught(strict)]),
      steps: [`${share} × ${quantityText({ dimension: 'area', amount: area }, 'si')} × ${usual} mm/h = ${caught(usual).toFixed(1)} L/h`],
      tables: [{ title: 'By rain', columns: [{ title: 'Rain', dimension: null }, { title: 'Rate', dimension: 'rainRate' }, { title: 'Caught', dimension: 'flow' }], rows }],
      notes: ['A bound for storms in the British climate: nothing is absorbed, and all that the wall catches is counted, not only what gets through the brick.'],
    }
  },
})
