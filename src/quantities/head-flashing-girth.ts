import { added } from './added.ts'
import { greatest, taken } from './choose.ts'
import { defineQuantity } from './define.ts'
import { fact, limit, orElse } from './need.ts'

/** Width of stock for the head flashing, from its top edge on the backing to the drip, in nanometres. */
export const headFlashingGirth = defineQuantity({
  id: 'flashing.head-girth',
  title: 'Head flashing, girth',
  part: 'head',
  dimension: 'length',
  formula: 'upstand + insulation outside the sheathing + air space + brick thickness + drip',
  needs: {
    upstand: greatest(limit('flashing.upstand'), fact.amount('head.flashing.upstand')),
    insulation: orElse(fact.amount('wall.insulationThickness'), taken(0), 'Insulation outside the sheathing is not described; none is counted.'),
    airSpace: orElse(fact.amount('wall.airSpace'), limit('air-space.recommended'), 'The air space is not known; the recommended one is taken.'),
    brick: fact.amount('wall.veneer.thickness'),
    drip: greatest(limit('flashing.drip-projection'), fact.amount('head.flashing.projection')),
  },
  compute: ({ upstand, insulation, airSpace, brick, drip }) => ({
    ...added(upstand, ...(insulation > 0 ? [insulation] : []), airSpace, brick, drip),
    notes: ['A hem and the slant of a drip turned down are not counted.', ...(insulation > 0 ? ['Leave the insulation out where the water-resistive barrier is on its face.'] : [])],
  }),
})
