import { exactLengthText } from '../units/quantity-text.ts'
import { figuresText, inBothSystems } from './both-systems.ts'
import { brick } from './brick-unit.ts'
import { taken } from './choose.ts'
import { coursesIn, heightOf, laidInCourses } from './coursing.ts'
import { defineQuantity } from './define.ts'
import { fact, optional, orElse } from './need.ts'
import type { Source } from './source.ts'

/** "CO +": so many half bricks with their joints, and one joint more. */
const brickworkDimensions: Source = {
  title: 'Brickwork dimensions, Technical Information Sheet 9',
  locator: 'horizontal dimensions, coordinating size plus joint, for openings',
  evidence: 'primary',
  readIn: 'https://www.yumpu.com/en/document/view/35562875/view-pdf-masonryfirstcom',
}

const bond = orElse(fact.choice('wall.veneer.bond'), taken('running'), 'The bond is not known; brick that laps by half is taken.')

/** The opening widths at which whole and part bricks of the bond end at both jambs, in nanometres. */
export const widthNearest = defineQuantity({
  id: 'coursing.width-nearest',
  title: 'Nearest opening widths that need no cut brick',
  part: 'wall',
  dimension: 'length',
  formula: 'n × (brick length + joint) / pieces in a brick + joint, below and above the opening width; a brick has 2 pieces, 3 where it laps by a third, 1 where it does not lap',
  sources: [brickworkDimensions],
  appliesTo: laidInCourses,
  needs: { width: fact.amount('opening.width'), brick, bond, atCorner: optional(fact.flag('opening.atCorner')) },
  compute: ({ width, brick: { length, joint }, bond, atCorner }) => {
    if (atCorner) return { reason: 'methodDoesNotHold', why: 'A side of the opening has no brick jamb; set the width out from the corner.' }
    const module = (length + joint) / piecesIn(bond)
    const modules = coursesIn(width - joint, module)
    const widths = [...new Set([Math.floor(modules), Math.ceil(modules)])].filter((count) => count > 0).map((count) => ({ count, width: heightOf(count, module) + joint }))
    return {
      value: widths.map((one) => one.width),
      steps: [`(${exactLengthText(width)} − ${exactLengthText(joint)}) / ${inBothSystems({ dimension: 'length', amount: module })} = ${figuresText(modules)} modules`],
      tables: [{
        title: 'Opening widths on the module',
        columns: [{ title: 'Modules', dimension: 'count' }, { title: 'Opening width', dimension: 'length' }, { title: 'Change', dimension: 'length' }],
        rows: widths.map((one) => [one.count, one.width, one.width - width]),
      }],
      notes: [widths.some((one) => one.width === width) ? 'The opening is on the module.' : 'The opening is off the module: cut bricks at a jamb, or other head joints beside it.', 'The piers on both sides have to be on the module too.'],
    }
  },
})

function piecesIn(bond: string): number {
  if (bond === 'stack') return 1
  return bond === 'thirdRunning' ? 3 : 2
}
