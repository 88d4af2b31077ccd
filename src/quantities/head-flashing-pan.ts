import { exactLengthText } from '../units/quantity-text.ts'
import { added } from './added.ts'
import { greatest, onlyWhere, taken } from './choose.ts'
import { defineQuantity } from './define.ts'
import { headTray, withoutLength } from './head-tray.ts'
import { bearing, onLintel } from './lintel-needs.ts'
import { combined, fact, limit, optional, orElse, parameter, result, type Need } from './need.ts'

export type End = 'left' | 'right'

/** Past each jamb: what the rule asks or the drawing shows, and always far enough that the dam stands clear of the steel. */
export function headPastJamb(end: End): Need<number> {
  const asked = greatest(limit('flashing.past-jamb'), fact.end('head.flashing.extensionPastJamb', end))
  const clearOfSteel = combined(
    { asked: optional(asked), bearing: bearing[end], past: optional(limit('flashing.past-support')), runOut: parameter('flashing.run-past-support') },
    ({ asked = 0, bearing, past = 0, runOut }) => (asked > bearing + past ? asked : bearing + Math.max(past, runOut)),
  )
  return greatest(asked, onlyWhere(onLintel, clearOfSteel))
}

export const headSpliceLap = greatest(limit('flashing.splice-lap'), fact.amount('head.flashing.spliceLap'))
const splice = optional(headSpliceLap)

function spliceNote(lap: number | undefined): string {
  return lap === undefined ? 'Add one lap for each further piece of stock.' : `Add one lap of ${exactLengthText(lap)}, sealed, for each further piece of stock.`
}

/** Length of the head flashing between its end dams, in nanometres; the described length where that is longer than the required one. */
export const headPanLength = defineQuantity({
  id: 'flashing.head-pan-length',
  title: 'Head flashing, dam to dam',
  part: 'head',
  dimension: 'length',
  formula: 'opening width + past each jamb, the greatest of required, described, and clear of the lintel end',
  needs: {
    tray: headTray,
    support: orElse(fact.choice('head.support.kind'), taken(''), 'What carries the brick is not known; no lintel bearing is reckoned with.'),
    width: fact.amount('opening.width'),
    left: headPastJamb('left'),
    right: headPastJamb('right'),
    lap: splice,
  },
  compute: ({ tray, width, left, right, lap }) => withoutLength(tray) ?? {
    ...added(left, width, right),
    notes: ['Each end dam turns up into the head joint at this length or the next one past it.', spliceNote(lap)],
  },
})

export function headDamHeight(end: End): Need<number> {
  return greatest(limit('flashing.end-dam-height'), fact.end('head.flashing.endDamHeight', end))
}

/** Length to cut: the pan and what turns up at its ends, in nanometres. */
export const headCutLength = defineQuantity({
  id: 'flashing.head-cut-length',
  title: 'Head flashing, cut length',
  part: 'head',
  dimension: 'length',
  formula: 'length dam to dam + height of each end dam, the greater of required and described',
  needs: { pan: result('flashing.head-pan-length'), left: headDamHeight('left'), right: headDamHeight('right'), lap: splice },
  compute: ({ pan, left, right, lap }) => ({
    ...added(left, pan, right),
    notes: [spliceNote(lap), 'With dams bought as separate pieces, cut the flashing to the length dam to dam.'],
  }),
})
