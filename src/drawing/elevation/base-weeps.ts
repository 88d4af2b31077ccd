import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { dimensionText } from '../length-words.ts'
import { box, part, strokes, type Shape } from '../shape.ts'
import { headJointsAt } from './bond.ts'
import { footOfSill } from './sill.ts'
import type { WallExtent } from './wall-extent.ts'

const unknownHeight = 50
/** Weeps that are closer on paper would run together. */
const closest = 1.2
const leastWidth = 0.5

/** Weeps at the foot of the wall, where the drawing reaches down to it. */
export function baseWeeps(frame: Frame, wall: WallExtent, phase: number): Drawn {
  const { known } = frame
  const told = known.told('base.weeps.kind')
  if (told === undefined && known.told('base.weeps.spacing') === undefined) return nothing
  if (wall.grade === undefined) return { ...nothing, notes: told === 'none' ? [] : ['The elevation does not reach the base of the wall; its weeps are drawn in the section.'] }
  if (told === 'none') return { ...nothing, notes: ['No weeps are described at the base.'] }
  const above = known.length('base.weepsAboveGrade') ?? known.length('base.flashing.aboveGrade')
  if (above === undefined) return { ...nothing, notes: ['How high the weeps at the base lie is not known; they are not drawn.'] }
  if (above < 0) return { ...nothing, notes: ['The weeps at the base lie below grade and are not to be seen.'] }
  const level = wall.grade + above
  const height = known.length('base.weeps.openHeight') ?? wall.brick?.height ?? unknownHeight
  if (level + height > wall.top) return { ...nothing, notes: ['The weeps at the base lie above what is drawn of the wall.'] }
  const row = { level, height }
  const spacing = known.length('base.weeps.spacing')
  return spacing === undefined ? unspaced(frame, wall, row) : spaced(frame, wall, row, { spacing, phase })
}

interface WeepRow {
  readonly level: number
  readonly height: number
}

/** Where nobody says how far apart they stand, the row is only marked. */
function unspaced(frame: Frame, wall: WallExtent, row: WeepRow): Drawn {
  const { at } = frame
  const lines = brickAt(frame, wall, row).map(([from, to]) => [at(from, row.level), at(to, row.level)])
  return { shapes: [part('baseWeeps', [strokes('unknown', ...lines)], { known: 'false' })], anchors: anchorAt(at, wall.left, row.level), notes: ['How far apart the weeps at the base stand is not known; their bed joint is drawn dashed.'] }
}

function spaced(frame: Frame, wall: WallExtent, row: WeepRow, { spacing, phase }: { readonly spacing: number; readonly phase: number }): Drawn {
  const { at, known, scale, system } = frame
  if (spacing * scale < closest) return { ...nothing, notes: ['The weeps at the base are too close to be drawn at this scale.'] }
  const joints = headJointsAt(frame, wall, row.level, phase)
  const inJoints = everyJoint(joints, spacing)
  const places = (inJoints ?? evenly(wall, spacing)).filter((x) => brickAt(frame, wall, row).some(([from, to]) => x > from && x < to))
  const width = Math.max(leastWidth, (wall.brick?.joint ?? 10) * scale)
  const drawn = places.map((x, index): Shape => {
    const [px, py] = at(x, row.level)
    return part('weep', [box('weep', [px - width / 2, py], [px + width / 2, py - Math.max(1, row.height * scale)])], { weep: String(index + 1), x: String(x) })
  })
  return {
    shapes: [part('baseWeeps', drawn, { kind: known.choice('base.weeps.kind') ?? 'unknown', spacing: String(spacing), level: String(row.level), known: 'true' })],
    anchors: anchorAt(at, places[0], row.level + row.height),
    notes: [`Weeps at the base are drawn ${inJoints ? `in head joints no more than ${dimensionText(spacing, system)} apart` : `${dimensionText(spacing, system)} apart`}; where the first one stands is not described.`],
  }
}

function anchorAt(at: Frame['at'], x: number | undefined, level: number): NonNullable<Drawn['anchors']> {
  return x === undefined ? [] : [['baseWeeps', at(x, level)]]
}

/** The farthest head joint in reach each time, as far as the wall is drawn; undefined where they are farther apart than the weeps. */
function everyJoint(joints: readonly number[], spacing: number): readonly number[] | undefined {
  const [first, last] = [joints[0], joints.at(-1)]
  if (first === undefined || last === undefined) return undefined
  const weeps = [first]
  for (let reach = first + spacing + unseen; reach <= last + 2 * unseen;) {
    const next = joints.findLast((joint) => joint <= reach)
    if (next === undefined || next === weeps.at(-1)) return undefined
    weeps.push(next)
    reach = next + spacing + unseen
  }
  return weeps
}

const unseen = 1e-3

function evenly({ left, right }: WallExtent, spacing: number): readonly number[] {
  return Array.from({ length: Math.floor((right - left) / spacing) }, (_, index) => left + (index + 0.5) * spacing)
}

/** The brick at a level, without an opening that reaches down to it. */
function brickAt(frame: Frame, wall: WallExtent, { level, height }: WeepRow): readonly (readonly [number, number])[] {
  const { left, right, width } = wall
  const isWhole = level + height <= footOfSill(frame, wall) || level >= wall.height
  return isWhole ? [[left, right]] : [[left, 0], [width, right]]
}

/** The edge of the base flashing, as far as its height is known and drawn. */
export function baseFlashing(frame: Frame, wall: WallExtent): Drawn {
  const { at, known } = frame
  if (wall.grade === undefined || known.flag('base.flashing.present') !== true) return nothing
  const above = known.length('base.flashing.aboveGrade')
  const level = wall.grade + (above ?? 0)
  if (above === undefined || above < 0 || level > wall.top) return nothing
  const lines = brickAt(frame, wall, { level, height: 0 }).map(([from, to]) => [at(from, level), at(to, level)])
  return { shapes: [part('baseFlashing', [strokes('sheetMetal', ...lines)], { level: String(level) })], anchors: [['baseFlashing', at(wall.right - (wall.right - wall.left) / 8, level)]] }
}
