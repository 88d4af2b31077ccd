import { exactLengthText } from '../units/quantity-text.ts'
import { metres } from '../units/length.ts'
import { taken } from './choose.ts'
import { defineQuantity } from './define.ts'
import { combined, fact, limit, orElse, result, type Need } from './need.ts'
import { bandOf } from './rain-band.ts'
import { geometry } from './rain-sources.ts'

/** The lower of the two end dams, over which water leaves first, in nanometres. */
export const lowerDam: Need<number> = orElse(
  combined({ ends: fact.ends('head.flashing.endDamHeight') }, ({ ends }) => Math.min(...ends)),
  limit('flashing.end-dam-height'),
  'The height of the end dams is not known; the least height of the rule in force is taken.',
)

/** Water in L that stands between the dams before it runs over: the lip stays level, the pan falls to the front. */
export function volumeBehindDams(pan: { readonly length: number; readonly depth: number; readonly dam: number; readonly slope: number }): number {
  const [length, depth, dam] = [pan.length, pan.depth, pan.dam].map(metres)
  if (length === undefined || depth === undefined || dam === undefined) throw new Error('a pan has three sizes')
  const fall = Math.tan((pan.slope * Math.PI) / 180)
  const section = fall * depth <= dam ? depth * dam - (fall * depth ** 2) / 2 : dam ** 2 / (2 * fall)
  return length * section * 1e3
}

export const panVolume = defineQuantity({
  id: 'rain.pan-volume',
  title: 'Water that the head flashing holds with its weeps blocked',
  part: 'head',
  dimension: 'volume',
  formula: 'length dam to dam × (air space × dam height - fall × air space² / 2)',
  indicative: true,
  onlyWhenKnown: true,
  sources: [geometry],
  needs: {
    length: result('flashing.head-pan-length'),
    depth: fact.amount('wall.airSpace'),
    dam: lowerDam,
    slope: orElse(fact.amount('head.flashing.slope'), taken(0), 'The slope of the pan is not known; a level pan is taken.'),
  },
  compute: (pan) => {
    if (pan.slope < 0) return { reason: 'methodDoesNotHold', why: 'The pan falls back to the backing; water stands there whatever the weeps do.' }
    return {
      value: volumeBehindDams(pan),
      steps: [`${exactLengthText(pan.length)} between the dams, ${exactLengthText(pan.depth)} of air space, ${exactLengthText(pan.dam)} of dam`],
      notes: ['Mortar droppings take up part of it.'],
    }
  },
})

/** Hours until water runs over the lower dam with every weep blocked. */
export const overtopTime = defineQuantity({
  id: 'rain.overtop-time',
  title: 'Time until water runs over the end dam, weeps blocked',
  part: 'head',
  dimension: 'duration',
  formula: 'water that the flashing holds / water onto the flashing',
  indicative: true,
  onlyWhenKnown: true,
  sources: [geometry],
  needs: { volume: result('rain.pan-volume'), inflow: bandOf('rain.pan-inflow') },
  compute: ({ volume, inflow }) => {
    if (inflow.least <= 0) return { reason: 'methodDoesNotHold', why: 'No rain comes onto the flashing in the storm described.' }
    return {
      value: { least: volume / inflow.greatest, greatest: volume / inflow.least },
      notes: ['Steady rain, nothing absorbed, nothing dried. It compares dam heights and air spaces; it is no forecast.'],
    }
  },
})
