import { choiceIs, fact, limit, orElse, parameter } from './need.ts'

/** Members that span the opening from jamb to jamb; an arch, a shelf angle or an angle fixed to framing does not. */
export const onLintel = choiceIs('head.support.kind', 'looseSteelAngle', 'precastLintel', 'reinforcedMasonryLintel')

export const onLooseAngle = choiceIs('head.support.kind', 'looseSteelAngle')

/** Lintels whose strength their maker or their engineer states. */
export const onStatedLintel = choiceIs('head.support.kind', 'precastLintel', 'reinforcedMasonryLintel')

/** Any steel angle, whether it spans by itself or is held by the frame. */
export const onAngle = choiceIs('head.support.kind', 'looseSteelAngle', 'shelfAngle', 'angleFixedToFraming')

/** What the lintel rests on at each end: as measured, else as required. */
export const bearing = { left: bearingAt('left'), right: bearingAt('right') }

export const veneerWeight = orElse(
  fact.amount('wall.veneer.weight'),
  parameter('masonry.veneer-weight'),
  'The weight of the veneer is not known; the usual weight of one wythe of brick is taken.',
)

function bearingAt(end: 'left' | 'right') {
  const assumption = `The ${end} bearing is not known; the least bearing of the rule in force is taken.`
  return orElse(fact.end('head.support.bearing', end), limit('lintel.bearing-length'), assumption)
}
