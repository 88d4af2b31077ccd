import { brick } from './brick-unit.ts'
import { combined, fact, optional, orElse, parameter } from './need.ts'
import { doorKinds } from './opening-outline.ts'

/** One course with its joint, so that ties stand in bed joints; undefined where the brick is not known. */
export const courseHeight = optional(combined({ brick }, ({ brick }) => brick.course))

/** Between ties along a course. */
export const tieColumnSpacing = orElse(fact.amount('ties.horizontalSpacing'), fact.amount('wall.studSpacing'), 'The horizontal tie spacing is not known; a tie on every stud is taken.')

/** Openings so large that extra ties go round them. */
export const isLargeOpening = combined(
  { width: fact.amount('opening.width'), height: fact.amount('opening.height'), threshold: parameter('tie.opening-threshold') },
  ({ width, height, threshold }) => width > threshold || height > threshold,
)

/** A door has no brick under it that ties could go into. */
export function hasSill(kind: string): boolean {
  return !doorKinds.includes(kind)
}
