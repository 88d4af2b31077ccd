import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { expansionJoints, movementArticle } from './movement-sources.ts'
import { fact, optional, parameter, result } from './need.ts'
import type { QuantityTable } from './result.ts'

const strain = result('movement.strain')
const closes = parameter('movement.joint-compressibility')
const sources = [expansionJoints, movementArticle]

/** Greatest distance between two vertical joints of this width, in nanometres. */
export const movementJointSpacingAllowed = defineQuantity({
  id: 'movement.joint-spacing-allowed',
  title: 'Greatest spacing of vertical movement joints',
  part: 'wall',
  dimension: 'length',
  onlyWhenKnown: true,
  formula: 'joint width × how far the joint closes / growth as a part of the length, at most the advice for brick with openings',
  sources,
  needs: {
    width: fact.amount('wall.movementJointWidth'), closes, strain,
    withOpenings: parameter('movement.joint-spacing-with-openings'), plainWall: parameter('movement.joint-spacing-plain-wall'), britain: parameter('movement.joint-spacing-clay-britain'),
  },
  compute: ({ width, closes, strain, withOpenings, plainWall, britain }) => {
    if (width === 0) return { reason: 'methodDoesNotHold', why: 'A joint without width lets nothing move.' }
    const byWidth = Math.round((width * closes) / strain)
    return {
      value: Math.min(byWidth, withOpenings),
      steps: [`${exactLengthText(width)} × ${ratioText(closes)} / ${ratioText(strain)} = ${inchText(byWidth)}; at most ${exactLengthText(withOpenings)}`],
      tables: [compared('Spacing of vertical movement joints', 'Spacing', [
        ['What the width of the joint lets move', byWidth], ['Advice for brick with openings', withOpenings],
        ['Advice for brick without openings', plainWall], ['British advice for clay brick, for comparison', britain],
      ])],
    }
  },
})

/** Width of joint that takes the growth of the brick between two joints, in nanometres. */
export const movementJointWidthNeeded = defineQuantity({
  id: 'movement.joint-width-needed',
  title: 'Width needed of a vertical movement joint',
  part: 'wall',
  dimension: 'length',
  onlyWhenKnown: true,
  formula: 'spacing × growth as a part of the length / how far the joint closes',
  sources,
  needs: { spacing: fact.amount('wall.movementJointSpacing'), strain, closes, britain: parameter('movement.joint-width-share-britain'), built: optional(fact.amount('wall.movementJointWidth')) },
  compute: ({ spacing, strain, closes, britain, built }) => {
    const value = Math.round((spacing * strain) / closes)
    return {
      value,
      steps: [`${exactLengthText(spacing)} × ${ratioText(strain)} / ${ratioText(closes)} = ${inchText(value)}`],
      tables: [compared('Width of a vertical movement joint', 'Width', [['What the growth of the brick takes', value], ['British advice for clay brick, for comparison', Math.round(spacing * britain)]])],
      notes: ['Without an allowance for how exactly the joint is built.', ...(built !== undefined && built < value ? [`The joint of ${exactLengthText(built)} is narrower.`] : [])],
    }
  },
})

/** How far from a corner the first joints may stand: on the one side, and what that leaves for the other; in nanometres. */
export const movementCornerDistance = defineQuantity({
  id: 'movement.corner-distance',
  title: 'Movement joints from a corner, on the one side and on the other',
  part: 'wall',
  dimension: 'length',
  onlyWhenKnown: true,
  formula: 'on one side the distance advised, at most half the spacing; on the other what is left of the spacing',
  sources: [expansionJoints],
  needs: { advised: parameter('movement.joint-from-corner'), spacing: result('movement.joint-spacing-allowed') },
  compute: ({ advised, spacing }) => {
    const near = Math.min(advised, Math.round(spacing / 2))
    return {
      value: [near, spacing - near],
      steps: [`${inchText(near)} + ${inchText(spacing - near)} = ${inchText(spacing)}`],
      notes: ['For a wall that goes round a corner; the two distances together are at most the spacing between joints.'],
    }
  },
})

function compared(title: string, column: string, rows: readonly (readonly [string, number])[]): QuantityTable {
  return { title, columns: [{ title: 'By', dimension: null }, { title: column, dimension: 'length' }], rows }
}

function ratioText(amount: number): string {
  return quantityText({ dimension: 'ratio', amount }, 'inchPound')
}
