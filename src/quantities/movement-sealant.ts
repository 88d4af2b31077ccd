import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { sealantDepthRule, sealantWidthFormula } from './movement-sources.ts'
import { fact, limit, orElse, parameter, result } from './need.ts'
import { sealantMovement } from './sealant-class.ts'

/** Width of the joint between frame and brick that lets the brick beside the opening move, in nanometres. */
export const movementSealantWidth = defineQuantity({
  id: 'movement.sealant-width',
  title: 'Width needed of the sealant joint at the jamb',
  part: 'jambs',
  dimension: 'length',
  onlyWhenKnown: true,
  formula: 'opening width × growth as a part of the length / movement of the sealant class + tolerance, at least the least width',
  sources: [sealantWidthFormula],
  needs: { width: fact.amount('opening.width'), strain: result('movement.strain'), moves: sealantMovement, tolerance: parameter('movement.joint-tolerance'), least: limit('joint.sealant-width') },
  compute: ({ width, strain, moves, tolerance, least }) => {
    const growth = Math.round(width * strain)
    const needed = Math.round(growth / moves) + tolerance
    return {
      value: Math.max(needed, least),
      steps: [
        `${exactLengthText(width)} × ${ratioText(strain)} = ${inchText(growth)}`,
        `${inchText(growth)} / ${ratioText(moves)} + ${exactLengthText(tolerance)} = ${inchText(needed)}; at least ${exactLengthText(least)}`,
      ],
      notes: [
        'One joint is taken to take all of the movement; the frame itself is taken to stand still.',
        'The brick at a jamb far from the middle of its panel moves farther against the frame: compare the growth between two movement joints.',
      ],
    }
  },
})

/** How deep the sealant goes at the middle of its joint, in nanometres. */
export const movementSealantDepth = defineQuantity({
  id: 'movement.sealant-depth',
  title: 'Depth of the sealant at the jamb',
  part: 'jambs',
  dimension: 'length',
  formula: 'half the joint width, within the least and the greatest depth',
  sources: [sealantDepthRule],
  needs: {
    width: orElse(fact.amount('jambs.sealantWidth'), result('movement.sealant-width'), 'The joint is not measured; the width that it needs is taken.'),
    least: limit('joint.sealant-depth-minimum'), greatest: limit('joint.sealant-depth-maximum'),
  },
  compute: ({ width, least, greatest }) => {
    if (width === 0) return { reason: 'methodDoesNotHold', why: 'There is no joint to fill.' }
    const half = Math.round(width / 2)
    return {
      value: Math.min(Math.max(half, least), greatest),
      steps: [`${inchText(width)} / 2 = ${inchText(half)}; at least ${exactLengthText(least)}, at most ${exactLengthText(greatest)}`],
    }
  },
})

function ratioText(amount: number): string {
  return quantityText({ dimension: 'ratio', amount }, 'inchPound')
}
