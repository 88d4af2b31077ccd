import { exactLengthText, inchText } from '../units/quantity-text.ts'
import { brick, brickThickness } from './brick-unit.ts'
import { laidInCourses } from './coursing.ts'
import { defineQuantity } from './define.ts'
import { optional } from './need.ts'

/** The brick of this wall as it is laid: its sizes and its course in nanometers are in the table. */
export const brickSizes = defineQuantity({
  id: 'coursing.brick',
  title: 'Brick and its coursing',
  part: 'wall',
  dimension: null,
  onRequest: true,
  formula: 'height and length of the brick, head joint, and one course with its bed joint',
  appliesTo: laidInCourses,
  needs: { brick, thickness: optional(brickThickness) },
  compute: ({ brick: { height, length, course, joint }, thickness }) => ({
    value: `${exactLengthText(height)} × ${exactLengthText(length)}, one course ${inchText(Math.round(course))}`,
    tables: [{
      title: 'Sizes of the brick as laid',
      columns: [
        { title: 'Height', dimension: 'length' }, { title: 'Length', dimension: 'length' }, { title: 'Thickness', dimension: 'length' },
        { title: 'Head joint', dimension: 'length' }, { title: 'Course', dimension: 'length' },
      ],
      rows: [[height, length, thickness ?? null, joint, course]],
    }],
  }),
})
