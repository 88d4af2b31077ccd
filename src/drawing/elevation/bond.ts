import type { Drawn, Frame } from '../drawn.ts'
import type { BrickSizes } from '../known.ts'
import { box, part, strokes, type Point } from '../shape.ts'
import type { WallExtent } from './wall-extent.ts'

/** Joints closer than this on paper would run together. */
const closest = { course: 0.8, head: 1.6 }

/** The face of the wall in its bond, with its ends: whole lines where the brick ends, broken ones where only the drawing does. */
export function wallFace(frame: Frame, wall: WallExtent, phase: number): Drawn {
  const { at, known, scale } = frame
  const { brick, left, right, bottom, top } = wall
  const foot = wall.grade ?? bottom
  const bond = known.choice('wall.veneer.bond')
  const field = part('wallFace', [box('mask', at(left, foot), at(right, top)), ...edges(frame, wall, foot)])
  if (!brick || brick.course * scale < closest.course) {
    return { shapes: [field], anchors: [['wall', at(left + (right - left) / 12, wall.height / 3)]], notes: brick ? ['Courses are not drawn at this scale.'] : [] }
  }
  const withHeads = (brick.length + brick.joint) * scale / 2 >= closest.head && bond !== undefined
  const start = startOfCourses(frame, wall)
  const courses = coursesIn(start, brick.course, foot, top).map(({ from, to, index }) =>
    part('course', [strokes('joint', [at(left, from), at(right, from)], ...(withHeads ? headJoints(frame, wall, { from, to, index, phase, bond }) : []))], { course: String(index) }))
  return {
    shapes: [field, part('bond', courses, { bond: bond ?? 'unknown', start: start.how })],
    anchors: [['wall', at(left + (right - left) / 12, wall.height / 3)]],
    notes: [...(start.how === 'head' ? ['Courses are drawn from the head; where the first course stands is not described.'] : []), ...(withHeads ? [] : ['Head joints are not drawn: the bond is not known, or they are too close at this scale.'])],
  }
}

/** From the ledge up where its height is known; else so that the head lies in a bed joint. */
export function startOfCourses({ known }: Frame, { brick, springing }: WallExtent): { readonly level: number; readonly how: 'foot' | 'head' } {
  const toSill = known.result('coursing.to-sill')
  if (brick && toSill?.status === 'computed' && typeof toSill.value === 'number') return { level: -toSill.value * brick.course, how: 'foot' }
  return { level: springing, how: 'head' }
}

interface CourseLines {
  readonly from: number
  readonly to: number
  readonly index: number
}

function coursesIn({ level }: { readonly level: number }, course: number, bottom: number, top: number): readonly CourseLines[] {
  const first = Math.ceil((bottom - level) / course - 1e-6)
  const count = Math.max(0, Math.ceil((top - level) / course - 1e-6) - first)
  return Array.from({ length: count }, (_, index) => {
    const from = level + (first + index) * course
    return { from, to: Math.min(top, from + course), index: first + index }
  })
}

interface Joints extends CourseLines {
  readonly phase: number
  readonly bond: string
}

function headJoints({ at }: Frame, wall: WallExtent, { from, to, phase, bond }: Joints): readonly (readonly Point[])[] {
  return headJointsIn(wall, from, phase, bond).map((x) => [at(x, from), at(x, to)])
}

/** Where head joints stand in the course on a bed joint. */
function headJointsIn({ brick, left, right, springing }: WallExtent, bed: number, phase: number, bond: string): readonly number[] {
  if (!brick) return []
  const fromHead = Math.round((bed - springing) / brick.course)
  return jointPlaces(bond, brick, fromHead, phase).flatMap(({ start, every }) => {
    const first = Math.ceil((left - start) / every + 1e-6)
    const count = Math.max(0, Math.ceil((right - start) / every - 1e-6) - first)
    return Array.from({ length: count }, (_, index) => start + (first + index) * every)
  })
}

/** Head joints of the course that lies at a level, from the left; none where brick or bond is not known. */
export function headJointsAt(frame: Frame, wall: WallExtent, level: number, phase: number): readonly number[] {
  const bond = frame.known.choice('wall.veneer.bond')
  if (!wall.brick || bond === undefined) return []
  const { level: start } = startOfCourses(frame, wall)
  const bed = start + Math.round((level - start) / wall.brick.course) * wall.brick.course
  return headJointsIn(wall, bed, phase, bond).toSorted((a, b) => a - b)
}

interface Series {
  readonly start: number
  readonly every: number
}

/** Where head joints lie in a course, counted from the first one on the head, whose joints start at `phase`. */
function jointPlaces(bond: string, { length, joint }: BrickSizes, course: number, phase: number): readonly Series[] {
  const stretcher = length + joint
  const turn = ((course % 2) + 2) % 2
  switch (bond) {
    case 'stack': return [{ start: phase, every: stretcher }]
    case 'thirdRunning': return [{ start: phase + (turn * stretcher) / 3, every: stretcher }]
    case 'english': return turn === 0 ? [{ start: phase, every: stretcher }] : [{ start: phase + stretcher / 4, every: stretcher / 2 }]
    case 'flemish': {
      const every = 1.5 * stretcher
      const start = phase + turn * 0.75 * stretcher
      return [{ start, every }, { start: start + stretcher, every }]
    }
    default: return [{ start: phase + (turn * stretcher) / 2, every: stretcher }]
  }
}

/** A break line has a kink in its middle. */
function edges({ at }: Frame, { left, right, top, ended, grade, bottom }: WallExtent, foot: number) {
  const broken = (a: Point, b: Point) => strokes('dimension', breakLine(a, b))
  const edge = (isEnd: boolean, a: Point, b: Point) => (isEnd ? strokes('cut', [a, b]) : broken(a, b))
  return [
    edge(ended.left, at(left, foot), at(left, top)), edge(ended.right, at(right, foot), at(right, top)), edge(ended.top, at(left, top), at(right, top)),
    ...(grade === undefined ? [broken(at(left, bottom), at(right, bottom))] : []),
  ]
}

export function breakLine([x1, y1]: Point, [x2, y2]: Point): readonly Point[] {
  const size = Math.hypot(x2 - x1, y2 - y1)
  if (size < 8) return [[x1, y1], [x2, y2]]
  const along = ([u, v]: Point): Point => [x1 + ((x2 - x1) / size) * (size / 2 + u) - ((y2 - y1) / size) * v, y1 + ((y2 - y1) / size) * (size / 2 + u) + ((x2 - x1) / size) * v]
  return [[x1, y1], along([-1.5, 0]), along([-0.6, -1.4]), along([0.6, 1.4]), along([1.5, 0]), [x2, y2]]
}
