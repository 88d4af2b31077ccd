import { added } from './added.ts'
import { greatest, positive } from './choose.ts'
import { defineQuantity } from './define.ts'
import { brickLength } from './brick-unit.ts'
import { choiceIs, fact, limit, orElse, result, type Need } from './need.ts'

type End = 'left' | 'right'

export const flashedSill = choiceIs('sill.kind', 'brickRowlock', 'brickHeader', 'precastConcrete', 'stone', 'metal')

/** A rule that names the first head joint outside the jamb gives no length; one brick reaches it whichever brick starts the course. */
export function sillPastJamb(end: End): Need<number> {
  const given = greatest(positive(limit('sill.flashing-past-jamb')), positive(fact.end('sill.flashing.extensionPastJamb', end)))
  return orElse(given, brickLength, `How far the flashing runs past the ${end} jamb is not known; one brick is taken, which reaches the first head joint.`)
}

export function sillDamHeight(end: End): Need<number> {
  return greatest(limit('sill.end-dam-height'), fact.end('sill.flashing.endDamHeight', end))
}

/** Length of the flashing under the sill units, between its end dams, in nanometres. */
export const sillFlashingLength = defineQuantity({
  id: 'sill.flashing-length',
  title: 'Sill flashing, dam to dam',
  part: 'sill',
  dimension: 'length',
  formula: 'opening width + past each jamb, the greater of required and described',
  appliesTo: flashedSill,
  needs: { width: fact.amount('opening.width'), left: sillPastJamb('left'), right: sillPastJamb('right') },
  compute: ({ width, left, right }) => ({ ...added(left, width, right), notes: ['Each end turns up in a head joint outside the jamb.'] }),
})

/** Length to cut: the sill flashing and what turns up at its ends, in nanometres. */
export const sillFlashingCutLength = defineQuantity({
  id: 'sill.flashing-cut-length',
  title: 'Sill flashing, cut length',
  part: 'sill',
  dimension: 'length',
  formula: 'length dam to dam + height of each end dam, the greater of required and described',
  appliesTo: flashedSill,
  needs: { length: result('sill.flashing-length'), left: sillDamHeight('left'), right: sillDamHeight('right') },
  compute: ({ length, left, right }) => ({
    ...added(left, length, right),
    notes: ['This is not the pan in the rough opening; that one is cut to the rough opening, which is not described.'],
  }),
})
