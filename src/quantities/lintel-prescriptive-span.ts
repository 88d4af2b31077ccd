import type { Table } from '../catalog/reference.ts'
import { feetInchesText } from '../units/quantity-text.ts'
import { readQuantity } from '../units/quantity.ts'
import { defineQuantity } from './define.ts'
import { loadsAboveIfSaid } from './lintel-loads-above.ts'
import { onLooseAngle } from './lintel-needs.ts'
import { confirmed } from './lintel-sources.ts'
import { asksOf, combined, fact, foundOnce, limit, table, type Need } from './need.ts'

/** What a rule or its table says of the opening: its greatest clear width in nm, or that it has no such row. */
interface Allowed {
  readonly span: number | undefined
  readonly of: string
}

const inForce: Need<Allowed> = combined({ span: limit('lintel.prescriptive-span') }, ({ span }) => ({ span, of: 'every angle' }))

const byTable: Need<Allowed> = combined(
  { spans: table('lintel.angle-spans'), section: fact.choice('head.support.section'), stories: fact.amount('wall.storiesAbove') },
  ({ spans, section, stories }) => ({ span: spanIn(spans, section, stories), of: `${section} under ${stories} ${stories === 1 ? 'story' : 'stories'} of brick` }),
)

/** A span that stands in the rule itself goes before the table. */
const allowed: Need<Allowed> = foundOnce({
  asks: asksOf(inForce, byTable),
  find: (inputs) => {
    const given = inForce.find(inputs)
    return given.known ? given : byTable.find(inputs)
  },
})

/** The widest opening that the code allows for the angle without any calculation: shown beside what is computed. */
export const lintelPrescriptiveSpan = defineQuantity({
  id: 'lintel.prescriptive-span',
  title: 'Widest opening by the span table of the code',
  part: 'head',
  dimension: 'length',
  structural: true,
  onlyWhenKnown: true,
  formula: 'the span of the table for the angle and the stories of brick above',
  appliesTo: onLooseAngle,
  needs: { allowed, loads: loadsAboveIfSaid },
  compute: ({ allowed: { span, of }, loads }) => {
    if (loads && loads.even + loads.point > 0) return { reason: 'outsidePrescriptive', why: 'The span table of the code is for brick alone; a floor, roof or point load on the brick takes the opening out of it.' }
    if (span === undefined) return { reason: 'outsidePrescriptive', why: `The span table of the code has no row for ${of}.` }
    return { value: span, steps: [`${of}: ${feetInchesText(span)}`], notes: ['Of the clear opening, not of the effective span.', confirmed] }
  },
})

/** The same row that the rule on prescriptive spans finds: keys as they are spelled, and the figure that governs. */
function spanIn({ rows, lookup }: Table, section: string, stories: number): number | undefined {
  const cell = rows.find((row) => row['section'] === section && row['storiesAbove'] === stories)?.['span']
  if (typeof cell !== 'object' || cell === null) return undefined
  return readQuantity(cell[lookup?.governing ?? 'inchPound'])?.amount
}
