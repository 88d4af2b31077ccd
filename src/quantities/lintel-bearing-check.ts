import { metres, nanometresOf } from '../units/length.ts'
import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { seat } from './lintel-bearing-stress.ts'
import { onLintel } from './lintel-needs.ts'
import { confirmed, lintelExample } from './lintel-sources.ts'
import { fact, limit, parameter, result } from './need.ts'

const allowed = result('lintel.bearing-stress-allowed')

/** What the masonry under the lintel end may be pressed with, in pascals. */
export const lintelBearingStressAllowed = defineQuantity({
  id: 'lintel.bearing-stress-allowed',
  title: 'Allowed pressure under the lintel end',
  part: 'head',
  dimension: 'stress',
  structural: true,
  onlyWhenKnown: true,
  formula: 'part of the strength of the masonry × strength of the masonry',
  sources: [lintelExample],
  appliesTo: onLintel,
  needs: { strength: fact.amount('wall.veneer.compressiveStrength'), share: parameter('masonry.compressive-strength-fraction') },
  compute: ({ strength, share }) => ({
    value: share * strength,
    steps: [`${share} × ${stressText(strength)} = ${stressText(share * strength)}`],
    notes: ['Of masonry laid solid under the end; hollow units and green mortar bear less.', confirmed],
  }),
})

/** How much of the allowed pressure is used where it is greatest; more than 1 is too much. */
export const lintelBearingStressRatio = defineQuantity({
  id: 'lintel.bearing-stress-ratio',
  title: 'Pressure under the lintel end, part of what is allowed',
  part: 'head',
  dimension: 'ratio',
  structural: true,
  onlyWhenKnown: true,
  formula: 'greatest pressure / allowed pressure',
  sources: [lintelExample],
  appliesTo: onLintel,
  needs: { peak: result('lintel.bearing-stress-peak'), allowed },
  compute: ({ peak, allowed }) => ({
    value: peak / allowed,
    steps: [`${stressText(peak)} / ${stressText(allowed)} = ${quantityText({ dimension: 'ratio', amount: peak / allowed }, 'inchPound')}`],
    notes: [confirmed],
  }),
})

/** The bearing that both the rule and the strength of the masonry ask for, in nm. */
export const lintelBearingLengthNeeded = defineQuantity({
  id: 'lintel.bearing-length-needed',
  title: 'Bearing needed at each end',
  part: 'head',
  dimension: 'length',
  structural: true,
  onlyWhenKnown: true,
  formula: 'the greater of the required bearing and ratio of peak to average × greater load on a bearing / (allowed pressure × width on the masonry)',
  sources: [lintelExample],
  appliesTo: onLintel,
  needs: { required: limit('lintel.bearing-length'), load: result('lintel.shear'), peak: parameter('lintel.bearing-pressure-peak'), allowed, seat },
  compute: ({ required, load, peak, allowed, seat }) => {
    const byStress = nanometresOf((peak * load) / (allowed * metres(seat.width)))
    return {
      value: Math.max(required, byStress),
      steps: [
        `${peak} × ${quantityText({ dimension: 'force', amount: load }, 'inchPound')} / (${stressText(allowed)} × ${exactLengthText(seat.width)}) = ${inchText(byStress)}`,
        `required bearing ${exactLengthText(required)}`,
      ],
      notes: [seat.note, 'A longer bearing makes the effective span a little longer; compute again with the bearing chosen.', confirmed],
    }
  },
})

function stressText(pascals: number): string {
  return quantityText({ dimension: 'stress', amount: pascals }, 'inchPound')
}
