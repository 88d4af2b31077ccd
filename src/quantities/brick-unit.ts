import { namedBrick, type NamedBrick } from './brick-table.ts'
import { assuming, firstKnown, isKnown, onlyWhere, shownOnce, whether } from './choose.ts'
import { combined, fact, parameter, type Need } from './need.ts'

/** A brick and how it is coursed, in nanometres. */
export interface Brick {
  readonly height: number
  readonly length: number
  /** One course with its bed joint. */
  readonly course: number
  /** A head joint. */
  readonly joint: number
}

const givenHeight = fact.amount('wall.veneer.unitHeight')
const givenLength = fact.amount('wall.veneer.unitLength')
const givenJoint = fact.amount('wall.veneer.jointThickness')

const namedJoint = combined({ named: namedBrick }, ({ named }) => named.joint)
const jointOfName = onlyWhere(combined({ namedJoint }, ({ namedJoint }) => namedJoint !== undefined), combined({ namedJoint }, ({ namedJoint }) => namedJoint ?? 0))

const joint: Need<number> = firstKnown(givenJoint, jointOfName, parameter('masonry.joint-thickness'))

/** Sizes that are described go before those of the standard name; with both of them no name is needed. */
const height = sizeOf(givenHeight, givenLength, (named) => named.height)
const length = sizeOf(givenLength, givenHeight, (named) => named.length)

const courseOfHeight = combined({ givenHeight, joint }, ({ givenHeight, joint }) => givenHeight + joint)
const courseOfName = combined({ named: namedBrick }, ({ named }) => named.course)

/** A mason holds the coursing of the standard brick and lets the bed joint take up the rest; a brick of its own height has its own. */
const course: Need<number> = firstKnown(
  courseOfHeight,
  onlyWhere(isKnown(givenJoint), assuming(courseOfName, 'The coursing is that of the standard brick; the joint described is taken for the head joints only.')),
  courseOfName,
  whether(isKnown(givenLength), courseOfHeight, courseOfName),
)

/** The brick of this wall as it is laid. */
export const brick: Need<Brick> = shownOnce(combined({ height, length, course, joint }, (sizes) => sizes))

/** The length of one brick. */
export const brickLength: Need<number> = length

/** From the face of the brick to its back. */
export const brickThickness: Need<number> = firstKnown(fact.amount('wall.veneer.thickness'), combined({ named: namedBrick }, ({ named }) => named.thickness))

/** Whole courses in a height; three courses in 8 in leave a part of a nanometre, which is not counted against them. */
export function coursesIn(height: number, course: number): number {
  return Math.floor((height + 1) / course)
}

/** Where neither is known, a brick described by its other size lacks this one; any other lacks its name. */
function sizeOf(given: Need<number>, other: Need<number>, of: (named: NamedBrick) => number): Need<number> {
  const byName = combined({ named: namedBrick }, ({ named }) => of(named))
  return firstKnown(given, byName, whether(isKnown(other), given, byName))
}
