import { exactLengthText, inchText } from '../units/quantity-text.ts'
import { figuresText } from './both-systems.ts'
import { brick, type Brick } from './brick-unit.ts'
import { defineQuantity } from './define.ts'
import { choiceIs, combined, fact, optional } from './need.ts'

export const laidInCourses = combined({ kind: optional(fact.choice('wall.veneer.kind')) }, ({ kind }) => kind !== 'anchoredStone' && kind !== 'adheredMasonry')

/** How many courses reach from the sill to the head; a whole number when the head lands on a bed joint. */
export const coursesToHead = defineQuantity({
  id: 'coursing.to-head',
  title: 'Courses from sill to head',
  part: 'wall',
  dimension: 'count',
  formula: 'opening height / (coursing height / courses in it)',
  appliesTo: laidInCourses,
  needs: { height: fact.amount('opening.height'), brick },
  compute: ({ height, brick: { course } }) => {
    const courses = coursesIn(height, course)
    return {
      value: courses,
      steps: [`${exactLengthText(height)} / ${inchText(course)} = ${figuresText(courses)}`, ...aroundHead(courses, height, course)],
      notes: [Number.isInteger(courses) ? 'The head lands on a bed joint when the sill does.' : 'The head falls between bed joints: change the height, cut or turn a course, or change the sill.'],
    }
  },
})

/** Rowlock bricks side by side across the sill, each with a joint. */
export const rowlocksInSill = defineQuantity({
  id: 'coursing.sill-units',
  title: 'Rowlock bricks across the sill',
  part: 'sill',
  dimension: 'count',
  formula: 'opening width / (brick height + joint), rounded up',
  appliesTo: choiceIs('sill.kind', 'brickRowlock'),
  needs: { width: fact.amount('opening.width'), brick },
  compute: ({ width, brick }) => unitsAcross(width, brick),
})

/** Bricks on edge or on end, side by side across a width: each takes its height and a joint. */
export function unitsAcross(width: number, { height, joint, course }: Brick) {
  const pitch = height + joint
  const onModule = coursesIn(width, course)
  return {
    value: Math.ceil(width / pitch),
    steps: [`${exactLengthText(width)} / (${exactLengthText(height)} + ${exactLengthText(joint)}) = ${figuresText(width / pitch)}, rounded up`],
    notes: Number.isInteger(onModule) ? [`At the pitch of the coursing, ${inchText(course)}, ${onModule} fill the width exactly.`] : [],
  }
}

/** The height of so many courses with their joints, to the nearest nanometre. */
export function heightOf(courses: number, course: number): number {
  return Math.round(courses * course)
}

/** How many courses make a height: a whole number where they reach it to the nanometre. */
export function coursesIn(height: number, course: number): number {
  const whole = Math.round(height / course)
  return heightOf(whole, course) === height ? whole : height / course
}

/** Where the bed joints under and over the head lie. */
function aroundHead(courses: number, height: number, course: number): readonly string[] {
  if (Number.isInteger(courses)) return []
  const [below, above] = [Math.floor(courses), Math.ceil(courses)]
  return [
    `${below} courses reach ${inchText(heightOf(below, course))}, ${inchText(height - heightOf(below, course))} under the head`,
    `${above} courses reach ${inchText(heightOf(above, course))}, ${inchText(heightOf(above, course) - height)} over it`,
  ]
}
