import { areaOf } from '../units/length.ts'
import { exactLengthText } from '../units/quantity-text.ts'
import { inBothSystems } from './both-systems.ts'
import { defineQuantity } from './define.ts'
import { fact, result } from './need.ts'
import { noOutline, outline } from './opening-outline.ts'

/** The face of the wall with its opening in it, in mm². */
export const wallArea = defineQuantity({
  id: 'takeoff.wall-area',
  title: 'Wall area, opening included',
  part: 'wall',
  dimension: 'area',
  formula: 'length of the wall × height of the veneer',
  onlyWhenKnown: true,
  needs: { length: fact.amount('wall.length'), height: fact.amount('wall.veneerHeight') },
  compute: ({ length, height }) => {
    const value = areaOf(length, height)
    return { value, steps: [`${exactLengthText(length)} × ${exactLengthText(height)} = ${areaText(value)}`], notes: ['A gable is not in it.'] }
  },
})

/** The brick to be laid in that wall, in mm². */
export const netArea = defineQuantity({
  id: 'takeoff.net-area',
  title: 'Wall area without this opening',
  part: 'wall',
  dimension: 'area',
  formula: 'wall area − opening area',
  onlyWhenKnown: true,
  needs: { wall: result('takeoff.wall-area'), outline },
  compute: ({ wall, outline }) => {
    if (!outline) return noOutline
    if (outline.area >= wall) return { reason: 'methodDoesNotHold', why: 'The opening is as large as the wall or larger.' }
    const value = wall - outline.area
    return { value, steps: [`${areaText(wall)} − ${areaText(outline.area)} = ${areaText(value)}`], notes: ['Only this opening is taken off; take the other openings of the wall off as well.'] }
  },
})

function areaText(amount: number): string {
  return inBothSystems({ dimension: 'area', amount })
}
