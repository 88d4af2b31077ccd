import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { confirmed } from './lintel-sources.ts'
import { sealantWidthFormula, shelfAngleJoint } from './movement-sources.ts'
import { choiceIs, fact, limit, parameter, result } from './need.ts'

/** Room under a shelf angle for the brick below to grow into, in nanometres; what the frame comes down by is not in it. */
export const movementShelfAngleGap = defineQuantity({
  id: 'movement.shelf-angle-gap',
  title: 'Room needed under the shelf angle for the brick below',
  part: 'head',
  dimension: 'length',
  structural: true,
  onlyWhenKnown: true,
  formula: 'height of veneer × growth as a part of it / how far the joint closes + tolerance, at least the least gap',
  sources: [shelfAngleJoint, sealantWidthFormula],
  appliesTo: choiceIs('head.support.kind', 'shelfAngle'),
  needs: {
    height: fact.amount('wall.storyHeight'), strain: result('movement.strain'), closes: parameter('movement.joint-compressibility'),
    tolerance: parameter('movement.joint-tolerance'), least: limit('movement.shelf-angle-gap'),
  },
  compute: ({ height, strain, closes, tolerance, least }) => {
    const growth = Math.round(height * strain)
    const needed = Math.round(growth / closes) + tolerance
    return {
      value: Math.max(needed, least),
      steps: [
        `${exactLengthText(height)} × ${ratioText(strain)} = ${inchText(growth)}`,
        `${inchText(growth)} / ${ratioText(closes)} + ${exactLengthText(tolerance)} = ${inchText(needed)}; at least ${exactLengthText(least)}`,
      ],
      notes: ['Add what the angle and the frame come down by, from load, shortening and creep; a licensed professional states it.', confirmed],
    }
  },
})

function ratioText(amount: number): string {
  return quantityText({ dimension: 'ratio', amount }, 'inchPound')
}
