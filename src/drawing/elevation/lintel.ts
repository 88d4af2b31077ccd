import { angleKinds, angleOf } from '../angle.ts'
import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { ends, type End } from '../known.ts'
import { part, strokes, words, type Shape } from '../shape.ts'
import type { WallExtent } from './wall-extent.ts'

/** What is drawn of a bearing that nobody measured. */
const unknownBearing = 100

/** The angle over the head: the edge of its flat leg in the joint, and its standing leg behind the brick. */
export function lintel(frame: Frame, wall: WallExtent): Drawn {
  const kind = frame.known.choice('head.support.kind')
  if (kind === undefined || !angleKinds.includes(kind)) return { ...nothing, anchors: [['lintel', frame.at(wall.width / 2, wall.height)]] }
  return kind === 'shelfAngle' ? shelfAngle(frame, wall) : looseAngle(frame, wall)
}

function looseAngle({ at, known }: Frame, { width, height }: WallExtent): Drawn {
  const angle = angleOf(known)
  const [left, right] = ends.map((end) => endOf(known.length('head.support.bearing', end), end, width)) as [LintelEnd, LintelEnd]
  const standing = angle?.vertical ?? 90
  const isKnown = left.known && right.known
  const shapes: Shape[] = [
    strokes(isKnown ? 'cut' : 'unknown', [at(left.x, height), at(right.x, height)]),
    part('standingLeg', [strokes(angle ? 'hidden' : 'unknown', [at(left.x, height), at(left.x, height + standing), at(right.x, height + standing), at(right.x, height)])], { known: String(angle !== undefined) }),
    ...[left, right].map((end) => bearing(at, end, { edge: end.end === 'left' ? 0 : width, height })),
  ]
  return {
    shapes: [part('lintel', shapes, { known: String(isKnown && angle !== undefined) })],
    anchors: [['lintel', at(width / 2, height + standing)], ['bearing:left', at(left.x / 2, height)], ['bearing:right', at((right.x + width) / 2, height)]],
  }
}

interface LintelEnd {
  readonly end: End
  readonly x: number
  readonly known: boolean
}

function endOf(bearing: number | undefined, end: End, width: number): LintelEnd {
  const length = bearing ?? unknownBearing
  return { end, x: end === 'left' ? -length : width + length, known: bearing !== undefined }
}

/** The length that rests on brick, as a heavy line under the leg. */
function bearing(at: Frame['at'], { end, x, known }: LintelEnd, { edge, height }: { readonly edge: number; readonly height: number }): Shape {
  const [[x1, y], [x2]] = [at(x, height), at(edge, height)]
  const shapes: Shape[] = [strokes(known ? 'sheetMetal' : 'unknown', [[x1, y + 0.5], [x2, y + 0.5]])]
  if (!known) shapes.push(words('?', [(x1 + x2) / 2, y + 3.4], { anchor: 'middle', weight: 'bold' }))
  return part('bearing', shapes, { member: end, known: String(known) })
}

function shelfAngle({ at, known }: Frame, { width, height, left, right }: WallExtent): Drawn {
  const angle = angleOf(known)
  const standing = angle?.vertical ?? 90
  return {
    shapes: [part('shelfAngle', [
      strokes('cut', [at(left, height), at(right, height)]),
      strokes(angle ? 'hidden' : 'unknown', [at(left, height + standing), at(right, height + standing)]),
    ], { known: String(angle !== undefined) })],
    anchors: [['lintel', at(width / 2, height + standing)]],
    notes: ['The shelf angle runs on past the opening on both sides.'],
  }
}
