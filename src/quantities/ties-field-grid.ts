import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { resultTable } from './need.ts'
import type { QuantityTable } from './result.ts'
import { tieArea } from './tie-area.ts'
import { areasOf, netArea, planTies, tieDemand } from './tie-demand.ts'
import type { TieLayout } from './tie-layout.ts'

/** Ties over the brick around the opening and along its edges: where each stands and what area it serves. */
export const tieFieldGrid = defineQuantity({
  id: 'ties.field-grid',
  title: 'Tie layout around the opening',
  part: 'ties',
  dimension: null,
  onRequest: true,
  formula: 'rows and columns at the greatest spacings allowed, less those in the opening, and ties along its edges; each serves what lies nearest to it',
  needs: { demand: tieDemand },
  compute: ({ demand }) => {
    const plan = planTies(demand)
    if ('why' in plan) return plan
    return {
      value: `${exactLengthText(demand.across)} across by ${shown(demand.up)} up`,
      steps: plan.steps,
      tables: [tableOf(plan.layout, areasOf(demand, plan.layout))],
      notes: [
        'Columns are set out from the middle of the wall; shift them together onto the studs, and add one where an end is left with more than half a spacing.',
        'A tie of the field within the allowed distance of the opening serves its edge too. Other openings in this wall are not left out.',
      ],
    }
  },
})

/** Ties to have on site for this panel: those of the layout, or more where the area alone asks for more. */
export const tieCount = defineQuantity({
  id: 'ties.count',
  title: 'Ties in the wall around the opening',
  part: 'ties',
  dimension: 'count',
  onlyWhenKnown: true,
  formula: 'the greater of ⌈brick area / area per tie⌉ and the ties of the layout',
  needs: { demand: tieDemand, tie: tieArea },
  compute: ({ demand, tie }) => {
    const plan = planTies(demand)
    if ('why' in plan) return plan
    const net = netArea(demand)
    const byArea = Math.ceil(net / tie.area)
    return {
      value: Math.max(byArea, plan.layout.ties.length),
      steps: [...plan.steps, `by area alone ⌈${areaText(net)} / ${areaText(tie.area)}⌉ = ${byArea}`],
      notes: [tie.note, 'Without waste; ties for other openings in this wall are not in it.'],
    }
  },
})

/** The wall that the worst-placed tie of the layout has to hold, in mm². */
export const tieLargestArea = defineQuantity({
  id: 'ties.largest-area',
  title: 'Greatest area that one tie of the layout serves',
  part: 'ties',
  dimension: 'area',
  onRequest: true,
  formula: 'the greatest of the areas nearest to each tie, the opening left out',
  needs: { layout: resultTable('ties.field-grid'), tie: tieArea },
  compute: ({ layout, tie }) => {
    if (layout.rows.length === 0) return { reason: 'methodDoesNotHold', why: 'The opening takes up the whole wall that is described; there is no brick for a tie to hold.' }
    const areas = layout.rows.map((row) => Number(row[3]))
    const value = Math.max(...areas)
    const [x, y] = layout.rows[areas.indexOf(value)] ?? []
    return {
      value,
      steps: [`${shown(Number(x))} from the left end and ${shown(Number(y))} above the foot: ${areaText(value)} of ${areaText(tie.area)} allowed`],
      notes: [value > tie.area ? 'More than one tie may serve: add a tie beside it.' : 'No tie of the layout serves more than is allowed.'],
    }
  },
})

function tableOf({ ties }: TieLayout, areas: readonly number[]): QuantityTable {
  return {
    title: 'Ties of the layout',
    columns: [{ title: 'From the left end', dimension: 'length' }, { title: 'Above the foot', dimension: 'length' }, { title: 'Serves', dimension: null }, { title: 'Wall area', dimension: 'area' }],
    rows: ties.map(({ x, y, serves }, index) => [x, y, serves.join(', '), areas[index] ?? null]),
  }
}

function areaText(amount: number): string {
  return quantityText({ dimension: 'area', amount }, 'inchPound')
}

function shown(nanometres: number): string {
  return inchText(Math.round(nanometres))
}
