import type { Computation } from './define.ts'
import { fact, optional } from './need.ts'

export const reinforcedJoints = optional(fact.amount('head.support.jointReinforcementCourses'))

/**
 * Joint reinforcement over the opening makes brick, wire and angle act together. The angle alone then shows far more
 * stress and deflection than there is, so a result beyond what is allowed is withheld; one within it errs on the safe side.
 */
export function beyondPlainBeam(tooMuch: boolean, reinforcedJoints: number | undefined): Computation | undefined {
  if (!tooMuch || reinforcedJoints === undefined || reinforcedJoints === 0) return undefined
  return {
    reason: 'methodDoesNotHold',
    why: 'The bed joints above are reinforced: brick, wire and angle act together, and the angle checked as a plain beam says nothing of it. A licensed professional decides.',
  }
}
