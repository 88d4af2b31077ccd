import { exactLengthText, inchText } from '../units/quantity-text.ts'
import { millimetres, nanometresOf } from '../units/length.ts'
import { coursesIn } from './brick-unit.ts'
import { defineQuantity } from './define.ts'
import { fact, limit } from './need.ts'
import { tieArea } from './tie-area.ts'
import { courseHeight, hasSill, isLargeOpening, tieColumnSpacing } from './tie-needs.ts'

/** Ties that a large opening asks for at its edges: each side from end to end, so that no corner is left without. */
export const tiesAroundOpening = defineQuantity({
  id: 'ties.around-opening',
  title: 'Ties around the opening',
  part: 'ties',
  dimension: 'count',
  formula: 'for each side ⌈side / spacing⌉ + 1: two jambs, head, and sill unless it is a door',
  appliesTo: isLargeOpening,
  needs: {
    kind: fact.choice('opening.kind'), width: fact.amount('opening.width'), height: fact.amount('opening.height'),
    spacing: limit('tie.opening-spacing'), distance: limit('tie.opening-distance'), course: courseHeight,
  },
  compute: ({ kind, width, height, spacing, distance, course }) => {
    const inBedJoints = course === undefined || course > spacing ? spacing : coursesIn(spacing, course) * course
    const [jamb, across] = [along(height, inBedJoints), along(width, spacing)]
    const flat = hasSill(kind) ? 2 : 1
    return {
      value: 2 * jamb + flat * across,
      steps: [
        `each jamb ⌈${exactLengthText(height)} / ${shown(inBedJoints)}⌉ + 1 = ${jamb}`,
        `head${flat === 2 ? ' and sill, each' : ''} ⌈${exactLengthText(width)} / ${exactLengthText(spacing)}⌉ + 1 = ${across}`,
        `2 × ${jamb} + ${flat} × ${across} = ${2 * jamb + flat * across}`,
      ],
      notes: [`Each within ${exactLengthText(distance)} of the edge of the opening; ties of the field that stand there count.`],
    }
  },
})

/** Vertical distance between courses with ties that the area per tie leaves, at the horizontal spacing of the wall. */
export const tieSpacingAllowed = defineQuantity({
  id: 'ties.spacing-allowed',
  title: 'Vertical tie spacing allowed',
  part: 'ties',
  dimension: 'length',
  formula: 'area per tie / horizontal spacing, at most the vertical limit',
  needs: {
    tie: tieArea,
    across: tieColumnSpacing,
    widest: limit('tie.horizontal-spacing'), tallest: limit('tie.vertical-spacing'), course: courseHeight,
  },
  compute: ({ tie, across, widest, tallest, course }) => {
    if (across > widest) return { reason: 'outsidePrescriptive', why: `Ties ${exactLengthText(across)} apart along a course are farther apart than the ${exactLengthText(widest)} allowed; another layout needs a licensed professional.` }
    const byArea = nanometresOf(tie.area / millimetres(across) / 1_000)
    const value = Math.min(byArea, tallest)
    return {
      value,
      steps: [`area per tie / ${exactLengthText(across)} = ${shown(byArea)}; at most ${exactLengthText(tallest)}`],
      notes: [tie.note, ...(course === undefined || course > value ? [] : [inCourses(value, course)])],
    }
  },
})

/** From one end of a side to the other; whole courses may leave a part of a nanometre. */
function along(side: number, spacing: number): number {
  return Math.ceil((side - 1) / spacing) + 1
}

function inCourses(spacing: number, course: number): string {
  const courses = coursesIn(spacing, course)
  return `In bed joints: every ${courses} courses, ${shown(courses * course)}.`
}

function shown(nanometres: number): string {
  return inchText(Math.round(nanometres))
}
