import { exactLengthText } from '../units/quantity-text.ts'
import { figuresText, inBothSystems } from './both-systems.ts'
import { coursesIn, heightOf } from './coursing.ts'

/** A bed joint near a height that is to be reached. */
export interface BedJoint {
  readonly courses: number
  readonly height: number
  /** From the height to this joint; negative is down. */
  readonly move: number
  /** By how much each bed joint has to be thicker for these courses to reach the height itself; negative is thinner. None where there is no course. */
  readonly perJoint: number | null
}

/** The bed joints below and above a height, or the one at it. */
export function bedJointsAround(height: number, course: number): readonly BedJoint[] {
  const courses = coursesIn(height, course)
  return [...new Set([Math.floor(courses), Math.ceil(courses)])].map((count) => {
    const reached = heightOf(count, course)
    return { courses: count, height: reached, move: reached - height, perJoint: count === 0 ? null : Math.round((height - reached) / count) }
  })
}

/** How the height divides into courses. */
export function divided(height: number, course: number): string {
  return `${exactLengthText(height)} / ${inBothSystems({ dimension: 'length', amount: course })} = ${figuresText(coursesIn(height, course))} courses`
}

/** The least change of every bed joint that would do instead, and whether so much is allowed. */
export function spreadNote(joints: readonly BedJoint[], tolerance: number): string {
  if (joints.some(({ move }) => move === 0)) return 'It lies in a bed joint.'
  const [least] = joints.flatMap(({ courses, perJoint }) => (perJoint === null ? [] : [{ courses, perJoint, size: Math.abs(perJoint) }])).sort((a, b) => a.size - b.size)
  if (!least) return 'It lies in no bed joint.'
  const change = `With ${least.courses} ${least.courses === 1 ? 'course' : 'courses'} every bed joint is ${inBothSystems({ dimension: 'length', amount: least.size })} ${least.perJoint > 0 ? 'thicker' : 'thinner'}`
  return `${change}, ${least.size <= tolerance ? 'within' : 'more than'} the ${exactLengthText(tolerance)} of the tolerance.`
}
