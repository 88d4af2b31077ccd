import { exactLengthText, inchText } from '../units/quantity-text.ts'
import { onlyWhere } from './choose.ts'
import { defineQuantity } from './define.ts'
import { choiceIs, fact, limit, orElse } from './need.ts'

const brickSill = choiceIs('sill.kind', 'brickRowlock', 'brickHeader')
const leastSlope = limit('sill.slope-brick')

/**
 * How far a sloping sill falls from back to front, in nanometres; negative where it falls back to the frame.
 * Where the slope of a brick sill is not known, the least slope in force is taken and said.
 */
export const sillDrop = defineQuantity({
  id: 'sill.drop',
  title: 'Fall of the sill, back to front',
  part: 'sill',
  dimension: 'length',
  formula: 'depth × tan(slope)',
  needs: {
    depth: fact.amount('sill.depth'),
    slope: orElse(fact.amount('sill.slope'), onlyWhere(brickSill, leastSlope), 'The slope is not known; the least slope of the rule in force is taken.'),
  },
  compute: ({ depth, slope }) => fallOf(depth, slope),
})

/** The least fall that a brick sill of this depth has to have, in nanometres. */
export const sillRequiredDrop = defineQuantity({
  id: 'sill.required-drop',
  title: 'Least fall of a brick sill, back to front',
  part: 'sill',
  dimension: 'length',
  formula: 'depth × tan(least slope)',
  appliesTo: brickSill,
  needs: { depth: fact.amount('sill.depth'), slope: leastSlope },
  compute: ({ depth, slope }) => fallOf(depth, slope),
})

function fallOf(depth: number, degrees: number) {
  const slope = Math.tan((degrees * Math.PI) / 180)
  const value = Math.round(depth * slope)
  return { value, steps: [`${exactLengthText(depth)} × tan(${Number(degrees.toFixed(2))}°) = ${exactLengthText(depth)} × ${slope.toFixed(3)} = ${inchText(value)}`] }
}
