import { exactLengthText } from '../units/quantity-text.ts'
import { taken } from './choose.ts'
import { defineQuantity, valueText } from './define.ts'
import { combined, fact, optional, orElse, result } from './need.ts'
import { doorKinds, noOutline, outline } from './opening-outline.ts'

const kind = fact.choice('opening.kind')
const hasFrame = combined({ kind }, ({ kind }) => kind !== 'recess')
const rod = orElse(fact.flag('jambs.backerRod'), taken(true), 'Whether there is a backer rod is not known; one is taken behind all of the sealant.')

/** Sealant between the frame and the brick, in nanometres. */
export const sealantLength = defineQuantity({
  id: 'takeoff.sealant-length',
  title: 'Sealant around the frame',
  part: 'jambs',
  dimension: 'length',
  formula: '2 × jamb + head, and the sill unless it is a door',
  appliesTo: hasFrame,
  needs: { kind, outline, atCorner: optional(fact.flag('opening.atCorner')) },
  compute: ({ kind, outline, atCorner }) => {
    if (!outline) return noOutline
    if (atCorner) return { reason: 'methodDoesNotHold', why: 'A side of the opening has no brick jamb; measure the joint on the drawing.' }
    const sill = doorKinds.includes(kind) ? [] : [outline.sill]
    const edges = [outline.jamb, outline.jamb, outline.head, ...sill]
    const value = edges.reduce((sum, edge) => sum + edge, 0)
    return {
      value,
      steps: [`${edges.map((edge) => valueText(edge, 'length')).join(' + ')} = ${valueText(value, 'length')}`],
      notes: ['The joint of the frame to the head support is in it; the line where the head flashing drains stays open, and so does the way out of a sill pan.', ...(sill.length === 0 ? ['The threshold is not counted.'] : [])],
    }
  },
})

/** Rod behind that sealant, in nanometres. */
export const backerRod = defineQuantity({
  id: 'takeoff.backer-rod',
  title: 'Backer rod around the frame',
  part: 'jambs',
  dimension: 'length',
  formula: 'length of sealant',
  appliesTo: rod,
  needs: { sealant: result('takeoff.sealant-length'), joint: optional(fact.amount('jambs.sealantWidth')), rod },
  compute: ({ sealant, joint }) => ({
    value: sealant,
    notes: [joint === undefined ? 'The rod is thicker than the joint is wide.' : `The rod is thicker than the joint is wide, ${exactLengthText(joint)}.`, 'Do not stretch it; add a little for the corners.'],
  }),
})
