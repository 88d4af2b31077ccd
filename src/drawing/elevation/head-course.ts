import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { box, outline, part, strokes, type Shape } from '../shape.ts'
import { archLine } from './arch-line.ts'
import type { WallExtent } from './wall-extent.ts'

const closestUnits = 0.9

/** Whatever carries or trims the brick over the head and can be seen from outside: soldiers, rowlocks, an arch, a lintel of stone. */
export function headCourse(frame: Frame, wall: WallExtent): Drawn {
  const { known } = frame
  if (wall.headShape === 'jackArch') return jackArch(frame, wall)
  if (wall.headShape !== 'flat') return archRing(frame, wall)
  const support = known.choice('head.support.kind')
  if (support === 'precastLintel' || support === 'reinforcedMasonryLintel' || support === 'woodMember') return beam(frame, wall)
  const course = known.choice('wall.veneer.headCourse')
  return course === 'soldier' || course === 'rowlock' ? turnedUnits(frame, wall, course) : nothing
}

/** Bricks on end or on edge over the opening; on past it where the support runs on. */
function turnedUnits({ at, known, scale }: Frame, { brick, height, width, left, right }: WallExtent, course: string): Drawn {
  const rise = course === 'soldier' ? brick?.length : brick?.thickness
  if (!brick || rise === undefined) return nothing
  const [from, to] = known.choice('head.support.kind') === 'shelfAngle' ? [left, right] : [0, width]
  const pitch = brick.height + brick.joint
  const count = Math.ceil((to - from) / pitch - 1e-6)
  const joints = pitch * scale < closestUnits ? [] : Array.from({ length: Math.max(0, count - 1) }, (_, index) => [at(from + (index + 1) * pitch, height), at(from + (index + 1) * pitch, height + rise)])
  return { shapes: [part('headCourse', [box('visible', at(from, height), at(to, height + rise)), strokes('joint', ...joints)], { laid: course, units: String(count) })] }
}

function jackArch({ at }: Frame, { brick, width, height }: WallExtent): Drawn {
  if (!brick) return nothing
  const rise = brick.length
  const count = Math.max(3, 2 * Math.floor(width / (brick.height + brick.joint) / 2) + 1)
  const slant = (x: number) => x + ((x - width / 2) / width) * rise * 0.7
  const joints = Array.from({ length: count - 1 }, (_, index) => { const x = ((index + 1) * width) / count; return [at(x, height), at(slant(x), height + rise)] })
  const ring: Shape[] = [outline('mask', at(0, height), at(slant(0), height + rise), at(slant(width), height + rise), at(width, height)), strokes('unknown', [at(0, height), at(slant(0), height + rise), at(slant(width), height + rise), at(width, height)]), strokes('joint', ...joints)]
  return { shapes: [part('archRing', ring, { known: 'false' })], anchors: [['lintel', at(width / 2, height + rise / 2)]], notes: ['Depth, skew and bricks of the jack arch are not described; they are drawn as a pattern only.'] }
}

function archRing({ at, scale }: Frame, wall: WallExtent): Drawn {
  const { brick, width, height, springing } = wall
  const depth = brick?.length ?? width / 10
  const [inner, outer] = [archLine(wall, 0), archLine(wall, depth)]
  const pitch = brick ? brick.height + brick.joint : width / 10
  const length = inner.slice(1).reduce((sum, [x, y], index) => { const [px, py] = inner[index] ?? [x, y]; return sum + Math.hypot(x - px, y - py) }, 0)
  const count = pitch * scale < closestUnits ? 1 : Math.max(1, Math.round(length / pitch))
  const [from, to] = [archLine(wall, 0, count), archLine(wall, depth, count)]
  const joints = from.slice(1, -1).map(([x, y], index) => { const [ox, oy] = to[index + 1] ?? [x, y]; return [at(x, y), at(ox, oy)] })
  const ring = [...inner, ...outer.toReversed()].map(([x, y]) => at(x, y))
  const shapes: Shape[] = [outline('mask', ...ring), strokes('joint', ...joints), strokes('visible', ...[0, -1].map((end) => [inner.at(end), outer.at(end)].flatMap((place) => (place ? [at(...place)] : [])))), strokes('unknown', [...outer.map(([x, y]) => at(x, y))])]
  return {
    shapes: [part('archRing', shapes, { known: 'false', rise: String(height - springing) })], anchors: [['lintel', at(width / 2, height + depth / 2)]],
    notes: ['The depth of the arch ring is not described; one brick is drawn.', ...(springing === height ? ['The rise of the arch is not known; the head is drawn straight.'] : [])],
  }
}

function beam(frame: Frame, { brick, width, height }: WallExtent): Drawn {
  const { at, known } = frame
  const depth = known.length('head.support.depth')
  const [left, right] = [known.length('head.support.bearing', 'left'), known.length('head.support.bearing', 'right')]
  const drawnDepth = depth ?? 2 * (brick?.course ?? width / 20)
  const corners = [at(-(left ?? 0), height), at(width + (right ?? 0), height + drawnDepth)] as const
  const isKnown = depth !== undefined && left !== undefined && right !== undefined
  return {
    shapes: [part('lintel', [box('mask', ...corners), box(isKnown ? 'visible' : 'unknown', ...corners)], { known: String(isKnown) })],
    anchors: [['lintel', at(width / 2, height + drawnDepth / 2)], ['bearing:left', at(-(left ?? 0) / 2, height + drawnDepth / 3)], ['bearing:right', at(width + (right ?? 0) / 2, height + drawnDepth / 3)]],
  }
}
