import { taken } from './choose.ts'
import { combined, fact, orElse, type Need } from './need.ts'

/** What the first course stands on, above finished grade: the ledge, or the top of the foundation where there is none. */
export const brickSupport: Need<number> = combined(
  {
    foundation: fact.amount('base.foundationAboveGrade'),
    ledge: orElse(fact.amount('base.ledgeRecess'), taken(0), 'No ledge is described; the first course is taken to stand on top of the foundation.'),
  },
  ({ foundation, ledge }) => foundation - ledge,
)

/** Heights above what the first course stands on. The lowest bed joint is counted as one like the others. */
export interface Levels {
  readonly support: number
  readonly sill: number
}

export const levels: Need<Levels> = combined({ support: brickSupport, sill: fact.amount('opening.sillAboveGrade') }, ({ support, sill }) => ({ support, sill: sill - support }))
