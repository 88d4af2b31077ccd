import { exactLengthText } from '../units/quantity-text.ts'
import { taken } from './choose.ts'
import { defineQuantity, type Computation } from './define.ts'
import { onAngle } from './lintel-needs.ts'
import { sizesOf, type Sizes } from './angle-sizes.ts'
import { combined, fact, orElse, result, type Need } from './need.ts'

const unreadable: Computation = { reason: 'methodDoesNotHold', why: 'The section is not spelled as an angle: standing leg, flat leg, thickness.' }

const asWritten = 'asWritten'
const longLeg = orElse(fact.choice('head.support.longLeg'), taken(asWritten), 'Which leg stands is not known; the one named first is taken to stand.')
const sizes: Need<Sizes | undefined> = combined({ section: fact.choice('head.support.section') }, ({ section }) => sizesOf(section))

/** The leg in the bed joint, which the brick stands on. */
export const lintelHorizontalLeg = defineQuantity({
  id: 'lintel.horizontal-leg',
  title: 'Flat leg of the lintel',
  part: 'head',
  dimension: 'length',
  formula: 'the shorter leg where the long one stands, the longer where it lies',
  appliesTo: onAngle,
  needs: { sizes, longLeg },
  compute: ({ sizes, longLeg }) => (sizes ? { value: flatLeg(sizes, longLeg) } : unreadable),
})

export const lintelThickness = defineQuantity({
  id: 'lintel.thickness',
  title: 'Thickness of the lintel steel',
  part: 'head',
  dimension: 'length',
  formula: 'as the section states',
  appliesTo: onAngle,
  needs: { sizes },
  compute: ({ sizes }) => (sizes ? { value: sizes.thickness } : unreadable),
})

/** How far the brick stands out past the steel it rests on, with the standing leg against the back of the brick. */
export const lintelBrickOverhang = defineQuantity({
  id: 'lintel.brick-overhang',
  title: 'Brick past the flat leg',
  part: 'head',
  dimension: 'length',
  formula: 'brick thickness − (flat leg − steel thickness), standing leg against the back of the brick',
  sources: [{
    title: 'Masonry Construction, placing lintel angles', locator: 'question and answer', evidence: 'primary',
    readIn: 'http://www.masonryconstruction.com/how-to/lintel-angle-placement_o',
  }],
  appliesTo: onAngle,
  needs: { brick: fact.amount('wall.veneer.thickness'), leg: result('lintel.horizontal-leg'), steel: result('lintel.thickness') },
  compute: ({ brick, leg, steel }) => ({
    value: brick - (leg - steel),
    steps: [`${exactLengthText(brick)} − (${exactLengthText(leg)} − ${exactLengthText(steel)}) = ${exactLengthText(brick - (leg - steel))}`],
  }),
})

function flatLeg({ verticalLeg, horizontalLeg }: Sizes, longLeg: string): number {
  if (longLeg === 'vertical') return Math.min(verticalLeg, horizontalLeg)
  return longLeg === asWritten ? horizontalLeg : Math.max(verticalLeg, horizontalLeg)
}
