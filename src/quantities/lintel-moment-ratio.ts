import { quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { onStatedLintel } from './lintel-needs.ts'
import { confirmed } from './lintel-sources.ts'
import { fact, result } from './need.ts'

/** Of a lintel that comes with its own strength, how much of it is used; more than 1 is too much. Its bars are its maker's business. */
export const lintelMomentRatio = defineQuantity({
  id: 'lintel.moment-ratio',
  title: 'Bending moment, part of what the lintel takes',
  part: 'head',
  dimension: 'ratio',
  structural: true,
  onlyWhenKnown: true,
  formula: 'bending moment / allowable moment as the maker or the engineer of the lintel states it',
  appliesTo: onStatedLintel,
  needs: { moment: result('lintel.bending-moment'), allowed: fact.amount('head.support.allowableMoment') },
  compute: ({ moment, allowed }) => ({
    value: moment / allowed,
    steps: [`${momentText(moment)} / ${momentText(allowed)} = ${quantityText({ dimension: 'ratio', amount: moment / allowed }, 'inchPound')}`],
    notes: ['The weight of the lintel is in the moment; where the maker states what is left beside it, this errs on the safe side.', confirmed],
  }),
})

function momentText(amount: number): string {
  return quantityText({ dimension: 'moment', amount }, 'inchPound')
}
