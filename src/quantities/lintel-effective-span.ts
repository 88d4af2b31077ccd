import { exactLengthText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { bearing, onLintel } from './lintel-needs.ts'
import { lintelTextbook } from './lintel-sources.ts'
import { fact } from './need.ts'

/** The span the lintel is checked on: from the middle of one bearing to the middle of the other. */
export const lintelEffectiveSpan = defineQuantity({
  id: 'lintel.effective-span',
  title: 'Effective span of the lintel',
  part: 'head',
  dimension: 'length',
  formula: 'clear opening + half of each bearing',
  sources: [lintelTextbook('p. 213, eq. 4.77; worked on p. 230', 213)],
  appliesTo: onLintel,
  needs: { clear: fact.amount('opening.width'), ...bearing },
  compute: ({ clear, left, right }) => {
    const span = Math.round(clear + (left + right) / 2)
    return {
      value: span,
      steps: [`${exactLengthText(clear)} + ${exactLengthText(left)} / 2 + ${exactLengthText(right)} / 2 = ${exactLengthText(span)}`],
      notes: ['Prescriptive span tables go by the clear opening, not by this span; some published checks do so too and come out a little lighter.'],
    }
  },
})
