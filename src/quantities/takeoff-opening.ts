import { areaOf } from '../units/length.ts'
import { exactLengthText } from '../units/quantity-text.ts'
import { figuresText, inBothSystems } from './both-systems.ts'
import { brickThickness } from './brick-unit.ts'
import { greatest } from './choose.ts'
import { laidInCourses } from './coursing.ts'
import { defineQuantity } from './define.ts'
import { combined, fact, optional, parameter, result } from './need.ts'
import { noOutline, outline } from './opening-outline.ts'
import type { QuantityTable } from './result.ts'
import { wholeBricks } from './takeoff-bricks.ts'

const squareMetre_mm2 = 1e6

/** A brick as thick as the wall makes the reveal to its own depth. */
const coveredDepth = greatest(parameter('masonry.reveal-in-wall-count'), brickThickness)
const flushJambs = combined({ atCorner: optional(fact.flag('opening.atCorner')) }, ({ atCorner }) => !atCorner)

/** Bricks that turn into the opening at both jambs, behind those counted on the face of the wall. */
export const returnBricks = defineQuantity({
  id: 'takeoff.returns',
  title: 'Bricks for deep returns at the jambs',
  part: 'jambs',
  dimension: 'count',
  formula: '2 × jamb × (frame behind the face − depth that the wall covers) × bricks for an area, rounded up',
  onlyWhenKnown: true,
  appliesTo: combined({ laidInCourses, flushJambs }, ({ laidInCourses, flushJambs }) => laidInCourses && flushJambs),
  needs: { setback: fact.amount('opening.frameSetback'), covered: coveredDepth, outline, perArea: result('takeoff.bricks-per-area') },
  compute: ({ setback, covered, outline, perArea }) => {
    if (!outline) return noOutline
    const deep = Math.max(0, setback - covered)
    if (deep === 0) return { value: 0, steps: [`${exactLengthText(setback)} is not deeper than the ${exactLengthText(covered)} that the count of the wall covers`] }
    const count = (2 * areaOf(outline.jamb, deep) * perArea) / squareMetre_mm2
    return {
      value: wholeBricks(count),
      steps: [`2 × ${exactLengthText(outline.jamb)} × (${exactLengthText(setback)} − ${exactLengthText(covered)}) × ${inBothSystems({ dimension: 'unitsPerArea', amount: perArea })} = ${figuresText(count)}, rounded up`],
      notes: ['By area, as books on estimating do; cut pieces may take a whole brick each.'],
    }
  },
})

/** Bricks that the opening saves in the wall, and those that it asks for at its edges. */
export const openingDeduction = defineQuantity({
  id: 'takeoff.opening-deduction',
  title: 'Bricks that the opening takes the place of',
  part: 'wall',
  dimension: 'count',
  formula: 'opening area × bricks for an area, rounded down',
  appliesTo: laidInCourses,
  needs: {
    outline, perArea: result('takeoff.bricks-per-area'),
    sill: optional(result('coursing.sill-units')), head: optional(result('coursing.head-units')), returns: optional(result('takeoff.returns')),
  },
  compute: ({ outline, perArea, ...edges }) => {
    if (!outline) return noOutline
    const count = (outline.area * perArea) / squareMetre_mm2
    const value = Math.floor(count + 1e-9)
    return {
      value,
      steps: [`${inBothSystems({ dimension: 'area', amount: outline.area })} × ${inBothSystems({ dimension: 'unitsPerArea', amount: perArea })} = ${figuresText(count)}, rounded down`],
      tables: [atOpening(value, edges)],
      notes: ['Small openings were once not taken off, for the work and waste around them; say in the bid which way was gone.'],
    }
  },
})

interface Edges {
  readonly sill?: number | undefined
  readonly head?: number | undefined
  readonly returns?: number | undefined
}

/** What is not known, or not there, has no row. */
function atOpening(deducted: number, { sill, head, returns }: Edges): QuantityTable {
  const rows = [['Taken off for the opening', deducted], ['Rowlocks in the sill', sill], ['Soldiers or rowlocks over the head', head], ['Returns at the jambs', returns]] as const
  return {
    title: 'Bricks at this opening',
    columns: [{ title: 'Where', dimension: null }, { title: 'Bricks', dimension: 'count' }],
    rows: rows.flatMap(([where, count]) => (count === undefined ? [] : [[where, count]])),
  }
}
