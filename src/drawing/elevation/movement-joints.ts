import { choiceWords } from '../../opening/choice-words.ts'
import { millimetres } from '../../units/length.ts'
import type { Measure } from '../dimension-line.ts'
import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { ends, type End, type Known } from '../known.ts'
import { dimensionText } from '../length-words.ts'
import { box, part, strokes, type Shape } from '../shape.ts'
import { footOfSill } from './sill.ts'
import type { WallExtent } from './wall-extent.ts'

/** On paper: as narrow as a joint may be drawn, so that it is not taken for a head joint. */
const narrowest = 0.8
const whole = 1e-6

/** The jambs that a vertical movement joint runs along. Only there do the facts say where one is. */
export function jointedJambs(known: Known): readonly End[] {
  return ends.filter((end) => known.flag('wall.movementJointAtJamb', end) === true)
}

/** Movement joints over and under the jambs, from the foot of what is drawn to its top, left out beside the opening itself. */
export function movementJoints(frame: Frame, wall: WallExtent): Drawn {
  const { known } = frame
  const jambs = jointedJambs(known)
  if (jambs.length === 0) return { ...nothing, notes: elsewhere(frame) }
  const width = known.length('wall.movementJointWidth')
  const drawn = jambs.map((end): Shape => {
    const x = end === 'left' ? 0 : wall.width
    const stretches = [[wall.springing, wall.top], [wall.grade ?? wall.bottom, footOfSill(frame, wall)]] as const
    return part('movementJoint', stretches.filter(([from, to]) => to - from > whole).map((stretch) => joint(frame, x, stretch, width)), { member: end, known: String(width !== undefined), width: width === undefined ? '' : String(width), x: String(x) })
  })
  return { shapes: drawn, notes: notesOf(frame) }
}

function joint({ at, scale }: Frame, x: number, [from, to]: readonly [number, number], width: number | undefined): Shape {
  const [[middle, foot], [, top]] = [at(x, from), at(x, to)]
  if (width === undefined) return strokes('unknown', [[middle, foot], [middle, top]])
  const half = Math.max(narrowest, width * scale) / 2
  return box('movementJoint', [middle - half, foot], [middle + half, top])
}

/** Each joint with its width, or with the width that it needs where it was not measured. */
export function jointMeasures({ at, known, system }: Frame, wall: WallExtent): readonly Measure[] {
  const jambs = jointedJambs(known)
  if (jambs.length === 0) return []
  const width = known.length('wall.movementJointWidth')
  const needed = known.result('movement.joint-width-needed')
  const needs = needed?.status === 'computed' && typeof needed.value === 'number' ? `, needs ${dimensionText(millimetres(needed.value), system)}` : ''
  const half = (width ?? 0) / 2
  return jambs.map((end) => {
    const x = end === 'left' ? 0 : wall.width
    return { from: at(x - half, 0)[0], to: at(x + half, 0)[0], text: `movement joint ${width === undefined ? `?${needs}` : dimensionText(width, system)}`, name: `wall.movementJointWidth:${end}`, known: width !== undefined }
  })
}

function notesOf({ known, system }: Frame): readonly string[] {
  const [sealant, spacing] = [known.told('jambs.sealantClass'), known.glimpse('wall.movementJointSpacing')]
  return [
    ...(typeof sealant === 'string' ? [`The sealant at the jambs is ${choiceWords(sealant).toLowerCase()}.`] : ['The sealant of the movement joint is not described.']),
    ...(spacing === undefined ? [] : [`The next movement joint is up to ${dimensionText(spacing, system)} away.`]),
  ]
}

/** Joints that are known to be in the wall, but not where. */
function elsewhere({ known, system }: Frame): readonly string[] {
  const spacing = known.glimpse('wall.movementJointSpacing')
  if (spacing === undefined) return []
  return [`Vertical movement joints are ${dimensionText(spacing, system)} apart in this wall; where they stand is not described, so none is drawn.`]
}
