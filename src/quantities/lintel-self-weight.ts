import { metres } from '../units/length.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { weightOf } from '../units/weight.ts'
import { whether } from './choose.ts'
import { defineQuantity } from './define.ts'
import { onLintel, onLooseAngle } from './lintel-needs.ts'
import { angleOverOpening } from './lintel-section.ts'
import { confirmed } from './lintel-sources.ts'
import { combined, fact, result, type Need } from './need.ts'

/** Newtons on each meter: of an angle by the table of sections, of any other lintel as its maker states it. */
const perLength: Need<number> = whether(onLooseAngle, combined({ angle: angleOverOpening }, ({ angle }) => weightOf(angle.mass)), fact.amount('head.support.lineWeight'))

/** What the lintel itself weighs over its effective span, in newtons. */
export const lintelSelfWeight = defineQuantity({
  id: 'lintel.self-weight',
  title: 'Weight of the lintel over the span',
  part: 'head',
  dimension: 'force',
  structural: true,
  formula: 'weight per length × effective span',
  appliesTo: onLintel,
  needs: { perLength, span: result('lintel.effective-span') },
  compute: ({ perLength, span }) => ({
    value: perLength * metres(span),
    steps: [`${quantityText({ dimension: 'lineLoad', amount: perLength }, 'inchPound')} × ${exactLengthText(span)} = ${quantityText({ dimension: 'force', amount: perLength * metres(span) }, 'inchPound')}`],
    notes: [confirmed],
  }),
})
