import { combined, fact, orElse, type Need } from './need.ts'

/** Height of the veneer at this opening, from its foot to its top. */
export const veneerHeight: Need<number> = orElse(
  fact.amount('wall.veneerHeight'),
  combined(
    { below: fact.amount('opening.sillAboveGrade'), opening: fact.amount('opening.height'), above: fact.amount('wall.heightAboveHead') },
    ({ below, opening, above }) => below + opening + above,
  ),
  'The height of the veneer is not known; grade to sill, opening and brick above the head are added up.',
)

/** From the foot of the veneer, where its first course stands, up to the sill. */
export const footToSill: Need<number> = orElse(
  combined(
    { height: fact.amount('wall.veneerHeight'), opening: fact.amount('opening.height'), above: fact.amount('wall.heightAboveHead') },
    ({ height, opening, above }) => height - opening - above,
  ),
  fact.amount('opening.sillAboveGrade'),
  'Where the foot of the veneer lies is not known; it is taken to be at grade.',
)
