import { defineQuantity } from './define.ts'
import { fact, limit, orElse } from './need.ts'

/**
 * How far a sloping sill falls from back to front: depth × tan(slope), in nanometres.
 * Where the slope is not known, the least slope in force for a brick sill is taken and said.
 */
export const sillDrop = defineQuantity({
  id: 'sill.drop',
  title: 'Fall of the sill, back to front',
  part: 'sill',
  dimension: 'length',
  formula: 'depth × tan(slope)',
  needs: {
    depth: fact.amount('sill.depth'),
    slope: orElse(fact.amount('sill.slope'), limit('sill.slope-brick'), 'The slope is not known; the least slope of the rule in force is taken.'),
  },
  compute: ({ depth, slope }) => ({ value: Math.round(depth * Math.tan((slope * Math.PI) / 180)) }),
})
