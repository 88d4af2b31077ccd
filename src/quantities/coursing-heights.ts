import { exactLengthText } from '../units/quantity-text.ts'
import { bedJointsAround, divided, spreadNote, type BedJoint } from './bed-joints.ts'
import { brick } from './brick-unit.ts'
import { coursesIn, laidInCourses } from './coursing.ts'
import { levels, type Levels } from './coursing-start.ts'
import { defineQuantity, type Computation } from './define.ts'
import { fact, optional, parameter } from './need.ts'
import type { QuantityTable } from './result.ts'

const curvedHeads: readonly (string | undefined)[] = ['segmentalArch', 'semicircularArch', 'otherArch']
const tolerance = parameter('masonry.bed-joint-tolerance')
const fromSupport = 'n × course above what the first course stands on, below and above'

/** How many courses reach from the support of the brick to the sill; a whole number when the sill lies in a bed joint. */
export const coursesToSill = defineQuantity({
  id: 'coursing.to-sill',
  title: 'Courses from the support of the brick to the sill',
  part: 'wall',
  dimension: 'count',
  formula: '(sill above grade − top of foundation above grade + ledge below it) / course',
  onlyWhenKnown: true,
  appliesTo: laidInCourses,
  needs: { levels, brick },
  compute: ({ levels, brick: { course } }) => belowSupport(levels) ?? {
    value: coursesIn(levels.sill, course),
    steps: [supportStep(levels), divided(levels.sill, course)],
    notes: ['Counted to the top of the sill at the face; a rowlock or a slab at the sill takes the place of the uppermost courses.'],
  },
})

/** The bed joints next to the sill, above grade, in nanometres. */
export const sillNearest = defineQuantity({
  id: 'coursing.sill-nearest',
  title: 'Nearest heights of the sill in a bed joint, above grade',
  part: 'wall',
  dimension: 'length',
  formula: fromSupport,
  onlyWhenKnown: true,
  appliesTo: laidInCourses,
  needs: { levels, brick, tolerance },
  compute: ({ levels, brick: { course }, tolerance }) => belowSupport(levels) ?? inWall('sill', levels.sill, levels, { course, tolerance }),
})

/** The bed joints next to the head, above grade, in nanometres. */
export const headNearest = defineQuantity({
  id: 'coursing.head-nearest',
  title: 'Nearest heights of the head in a bed joint, above grade',
  part: 'wall',
  dimension: 'length',
  formula: fromSupport,
  onlyWhenKnown: true,
  appliesTo: laidInCourses,
  needs: { levels, height: fact.amount('opening.height'), shape: optional(fact.choice('opening.headShape')), brick, tolerance },
  compute: ({ levels, height, shape, brick: { course }, tolerance }) => {
    if (curvedHeads.includes(shape)) return { reason: 'methodDoesNotHold', why: 'An arch starts from the bed joint at its springing; the top of the opening need not lie in one.' }
    return belowSupport(levels) ?? inWall('head', levels.sill + height, levels, { course, tolerance })
  },
})

/** The opening heights that are whole courses, in nanometres. */
export const openingHeightNearest = defineQuantity({
  id: 'coursing.opening-height-nearest',
  title: 'Nearest opening heights of whole courses',
  part: 'wall',
  dimension: 'length',
  formula: 'n × course, below and above the opening height',
  appliesTo: laidInCourses,
  needs: { height: fact.amount('opening.height'), brick, tolerance },
  compute: ({ height, brick: { course }, tolerance }) => {
    const joints = bedJointsAround(height, course).filter(({ courses }) => courses > 0)
    return {
      value: joints.map((joint) => joint.height),
      steps: [divided(height, course)],
      tables: [{
        title: 'Opening heights of whole courses',
        columns: [{ title: 'Courses', dimension: 'count' }, { title: 'Opening height', dimension: 'length' }, { title: 'Change', dimension: 'length' }, { title: 'Or every bed joint thicker by', dimension: 'length' }],
        rows: joints.map(({ courses, height, move, perJoint }) => [courses, height, move, perJoint]),
      }],
      notes: [spreadNote(joints, tolerance)],
    }
  },
})

function inWall(what: 'sill' | 'head', above: number, levels: Levels, { course, tolerance }: { readonly course: number; readonly tolerance: number }): Computation {
  const joints = bedJointsAround(above, course)
  return {
    value: joints.map(({ height }) => height + levels.support),
    steps: [supportStep(levels), divided(above, course)],
    tables: [tableOf(what, joints, levels.support)],
    notes: [spreadNote(joints, tolerance)],
  }
}

function tableOf(what: string, joints: readonly BedJoint[], support: number): QuantityTable {
  return {
    title: `Bed joints next to the ${what}`,
    columns: [{ title: 'Courses', dimension: 'count' }, { title: 'Above the support', dimension: 'length' }, { title: 'Above grade', dimension: 'length' }, { title: 'Move, up', dimension: 'length' }, { title: 'Or every bed joint thicker by', dimension: 'length' }],
    rows: joints.map(({ courses, height, move, perJoint }) => [courses, height, height + support, move, perJoint]),
  }
}

function supportStep({ support }: Levels): string {
  return `The first course stands ${exactLengthText(support)} above grade`
}

function belowSupport({ sill }: Levels): Computation | undefined {
  return sill < 0 ? { reason: 'methodDoesNotHold', why: 'The sill lies below what the first course stands on; the coursing there starts from something else.' } : undefined
}
