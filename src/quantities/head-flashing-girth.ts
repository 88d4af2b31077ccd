import { added } from './added.ts'
import { defineQuantity } from './define.ts'
import { airSpace, headLegs, insulation } from './flashing-legs.ts'
import { fact } from './need.ts'

/** Width of stock for the head flashing, from its top edge on the backing to the drip, in nanometres. */
export const headFlashingGirth = defineQuantity({
  id: 'flashing.head-girth',
  title: 'Head flashing, girth',
  part: 'head',
  dimension: 'length',
  formula: 'upstand + insulation outside the sheathing + air space + brick thickness + drip',
  needs: {
    upstand: headLegs.upstand,
    insulation,
    airSpace,
    brick: fact.amount('wall.veneer.thickness'),
    drip: headLegs.projection,
  },
  compute: ({ upstand, insulation, airSpace, brick, drip }) => ({
    ...added(upstand, ...(insulation > 0 ? [insulation] : []), airSpace, brick, drip),
    notes: ['A hem and the slant of a drip turned down are not counted.', ...(insulation > 0 ? ['Leave the insulation out where the water-resistive barrier is on its face.'] : [])],
  }),
})
