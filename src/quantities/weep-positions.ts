import { defineQuantity } from './define.ts'
import { headPastJamb } from './head-flashing-pan.ts'
import { headPitches, sillPitches } from './joint-pitch.ts'
import { optional, result } from './need.ts'
import type { QuantityTable } from './result.ts'
import { sillPastJamb } from './sill-pan.ts'
import { laid, underSlab, weepFormula } from './weep-layout.ts'
import { headSpacing, sillSpacing } from './weep-spacing.ts'

export const headWeepPositions = defineQuantity({
  id: 'weeps.head-positions',
  title: 'Weeps over the head, from the left end of the flashing',
  part: 'head',
  dimension: 'length',
  formula: weepFormula,
  needs: { length: result('flashing.head-pan-length'), pitches: headPitches, spacing: headSpacing, past: optional(headPastJamb('left')) },
  compute: ({ past, ...course }) => laid(course, (weeps, joints) => positions(weeps, past, joints)),
})

export const sillWeepPositions = defineQuantity({
  id: 'weeps.sill-positions',
  title: 'Weeps under the sill, from the left end of the flashing',
  part: 'sill',
  dimension: 'length',
  formula: `${weepFormula}; under a slab, evenly from end to end`,
  needs: { length: result('sill.flashing-length'), pitches: sillPitches, spacing: sillSpacing, past: optional(sillPastJamb('left')) },
  compute: ({ past, ...course }) => (course.pitches.length === 0
    ? underSlab(course, (weeps) => positions(weeps, past))
    : laid(course, (weeps, joints) => positions(weeps, past, joints))),
})

function positions(weeps: readonly number[], past: number | undefined, joints: readonly number[] = []) {
  return { value: weeps, tables: [tableOf(weeps, past, joints)] }
}

/** Seen from outside. A distance from the jamb is negative beside the opening. */
function tableOf(weeps: readonly number[], past: number | undefined, joints: readonly number[]): QuantityTable {
  return {
    title: 'Weeps from left to right; joints counted from the left end dam, a negative distance is left of the jamb',
    columns: [
      { title: 'Weep', dimension: 'count' }, { title: 'Head joint', dimension: 'count' },
      { title: 'From the left end dam', dimension: 'length' }, { title: 'From the left jamb', dimension: 'length' },
    ],
    rows: weeps.map((weep, index) => [index + 1, joints.includes(weep) ? joints.indexOf(weep) + 1 : null, weep, past === undefined ? null : weep - past]),
  }
}
