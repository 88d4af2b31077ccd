import { taken } from './choose.ts'
import type { Computation } from './define.ts'
import { combined, fact, optional, orElse, type Need } from './need.ts'

/** How the head flashing lies over the opening. Lengths hold for a straight tray of its own. */
type Tray = 'straight' | 'runsOn' | 'curved' | 'roundCorner'

const curvedHeads: readonly string[] = ['segmentalArch', 'semicircularArch', 'otherArch']

export const headTray: Need<Tray> = combined(
  {
    runsOn: orElse(fact.flag('head.flashing.continuousPastOpening'), taken(false), 'Whether the flashing runs on past the opening is not known; it is taken to end beside it.'),
    shape: orElse(fact.choice('opening.headShape'), taken('flat'), 'The shape of the head is not known; it is taken as flat.'),
    atCorner: optional(fact.flag('opening.atCorner')),
  },
  ({ runsOn, shape, atCorner }): Tray => {
    if (runsOn) return 'runsOn'
    if (curvedHeads.includes(shape)) return 'curved'
    return atCorner ? 'roundCorner' : 'straight'
  },
)

/** Why a tray has no length of its own, or undefined where it has. */
export function withoutLength(tray: Tray): Computation | undefined {
  if (tray === 'runsOn') return 'notApplicable'
  if (tray === 'curved') return { reason: 'methodDoesNotHold', why: 'The flashing over an arch is cut to the arch or stepped; draw it first.' }
  if (tray === 'roundCorner') return { reason: 'methodDoesNotHold', why: 'The flashing turns the corner of the building; draw it in the flat first.' }
  return undefined
}
