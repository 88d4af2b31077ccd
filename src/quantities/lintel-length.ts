import { exactLengthText, feetInchesText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { onLintel } from './lintel-needs.ts'
import { fact, limit } from './need.ts'

/** The shortest lintel that bears enough at both ends: what to order, not what was measured. */
export const lintelLength = defineQuantity({
  id: 'lintel.length',
  title: 'Least lintel length',
  part: 'head',
  dimension: 'length',
  formula: 'clear opening + 2 × required bearing',
  appliesTo: onLintel,
  needs: { clear: fact.amount('opening.width'), bearing: limit('lintel.bearing-length') },
  compute: ({ clear, bearing }) => {
    const length = clear + 2 * bearing
    return {
      value: length,
      steps: [`${exactLengthText(clear)} + 2 × ${exactLengthText(bearing)} = ${orderText(length)}`],
      notes: ['Both ends have the required bearing only when the lintel is set dead center; a longer one leaves room to shift it.'],
    }
  },
})

/** With feet and inches too, as lintels are ordered, where a tape in inches shows the length. */
function orderText(length: number): string {
  const text = exactLengthText(length)
  return text.endsWith(' in') ? `${text}, that is ${feetInchesText(length)}` : text
}
