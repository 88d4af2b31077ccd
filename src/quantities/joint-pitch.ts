import { brick, brickThickness, type Brick } from './brick-unit.ts'
import { taken, whether } from './choose.ts'
import { choiceIs, combined, fact, orElse, type Need } from './need.ts'

/** Distances from one head joint to the next, repeating along a course; none where the course has no regular joints. */
export type Pitches = readonly number[]

export const headCourse = orElse(fact.choice('wall.veneer.headCourse'), taken('stretcher'), 'The course over the head is not known; stretchers are taken.')
const bond = orElse(fact.choice('wall.veneer.bond'), taken('running'), 'The bond is not known; a course of whole stretchers is taken.')

/** In the first course on the head flashing. Soldiers and rowlocks show the height of the brick as their width. */
export const headPitches: Need<Pitches> = combined({ brick, course: headCourse, bond }, ({ brick, course, bond }) => {
  if (course === 'soldier' || course === 'rowlock') return [onEdge(brick)]
  if (course !== 'stretcher') return []
  return bond === 'flemish' ? [stretcher(brick), stretcher(brick) / 2] : [stretcher(brick)]
})

/** In the course that is the sill; a slab or a metal sill has no head joints to go by. */
export const sillPitches: Need<Pitches> = combined(
  { brick, kind: fact.choice('sill.kind'), header: whether(choiceIs('sill.kind', 'brickHeader'), brickThickness, taken(0)) },
  ({ brick, kind, header }) => {
    if (kind === 'brickRowlock') return [onEdge(brick)]
    return kind === 'brickHeader' ? [header + brick.joint] : []
  },
)

const rowlockOverHead = combined({ course: headCourse }, ({ course }) => course === 'rowlock')

/** Height of the head joints in the first course on the head flashing; none where the course has no regular joints. */
export const headJointHeight: Need<number | undefined> = combined({ brick, course: headCourse, onEdge: whether(rowlockOverHead, brickThickness, taken(0)) }, ({ brick, course, onEdge }) => {
  const heights: Readonly<Record<string, number>> = { stretcher: brick.height, soldier: brick.length, rowlock: onEdge }
  return heights[course]
})

/** Height of the head joints in the course that is the sill; none under a slab or a metal sill. */
export const sillJointHeight: Need<number | undefined> = combined(
  { brick, kind: fact.choice('sill.kind'), onEdge: whether(choiceIs('sill.kind', 'brickRowlock'), brickThickness, taken(0)) },
  ({ brick, kind, onEdge }) => {
    if (kind === 'brickRowlock') return onEdge
    return kind === 'brickHeader' ? brick.height : undefined
  },
)

function onEdge({ height, joint }: Brick): number {
  return height + joint
}

function stretcher({ length, joint }: Brick): number {
  return length + joint
}
