import { nanometresOf } from '../units/length.ts'
import { exactLengthText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { fact, optional } from './need.ts'
import { hydraulics } from './rain-sources.ts'
import { headOf, water } from './water.ts'

/** Height to which the design wind pressure holds water up behind the brick, in nanometres. */
export const windHead = defineQuantity({
  id: 'rain.wind-head',
  title: 'Height of water that the wind pressure holds up',
  part: 'head',
  dimension: 'length',
  formula: 'design wind pressure / (density × gravity)',
  indicative: true,
  onlyWhenKnown: true,
  sources: [hydraulics],
  needs: { pressure: fact.amount('exposure.windPressure'), upstand: optional(fact.amount('head.flashing.upstand')), water },
  compute: ({ pressure, upstand, water }) => {
    const head = nanometresOf(headOf(water, pressure))
    const against = upstand === undefined || head === 0 ? [] : [`The upstand of ${exactLengthText(upstand)} is ${(upstand / head).toFixed(1)} times as high.`]
    return { value: head, notes: [...against, 'As if all of the pressure acted across the flashing; a vented air space takes up part of it.'] }
  },
})
