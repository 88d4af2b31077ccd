import { best, greatest, onlyWhere, taken } from './choose.ts'
import { choiceIs, combined, fact, limit, orElse, parameter, type Need } from './need.ts'

/** A barrier that comes in rolls. */
export const sheet = choiceIs('barrier.kind', 'no15Felt', 'buildingPaper', 'buildingWrap')
export const felt = choiceIs('barrier.kind', 'no15Felt')
const paperOrWrap = choiceIs('barrier.kind', 'buildingPaper', 'buildingWrap')
const feltOrPaper = choiceIs('barrier.kind', 'no15Felt', 'buildingPaper')

/** Wraps come in rolls of many widths, so that only felt and paper have one to go by. */
export const rollWidth = orElse(
  fact.amount('barrier.rollWidth'),
  onlyWhere(feltOrPaper, parameter('barrier.roll-width')),
  'The width of the roll is not known; the common one of felt and paper is taken.',
)

export const lap = lapOf('barrier.horizontal-lap', 'barrier.horizontalLap')
export const endLap = lapOf('barrier.vertical-lap', 'barrier.verticalLap')

export const wallLength: Need<number> = orElse(
  fact.amount('wall.length'),
  combined({ piers: fact.ends('opening.pierWidth'), width: fact.amount('opening.width') }, ({ piers: [left, right], width }) => left + width + right),
  'The length of the wall is not known; the opening and the masonry beside it are taken.',
)

const headShape = orElse(fact.choice('opening.headShape'), taken('flat'), 'The shape of the head is not known; it is taken as flat.')
const isCurved = combined({ headShape }, ({ headShape }) => ['segmentalArch', 'semicircularArch', 'otherArch'].includes(headShape))
const height = fact.amount('opening.height')

/** Height of the rectangle that is taken off for the opening; under an arch only up to its springing, so that no barrier is missing. */
export const openingRectangle: Need<number> = best([
  onlyWhere(combined({ isCurved }, ({ isCurved }) => !isCurved), height),
  onlyWhere(isCurved, combined({ height, rise: fact.amount('opening.headRise') }, ({ height, rise }) => height - rise)),
], () => false)

/** Felt has a rule of its own; from 2018 on editions differ on which other sheets are bound. */
function lapOf(rule: string, described: string): Need<number> {
  return greatest(onlyWhere(felt, limit(rule)), onlyWhere(paperOrWrap, limit(`${rule}-other`)), fact.amount(described))
}
