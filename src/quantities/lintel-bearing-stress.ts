import { areaOf } from '../units/length.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { bearing, onLooseAngle } from './lintel-needs.ts'
import { angleOverOpening } from './lintel-section.ts'
import { confirmed } from './lintel-sources.ts'
import { fact, optional, parameter, result } from './need.ts'

const squareMetre_mm2 = 1e6

/** Pressure of the lintel on the brick beside the opening, averaged over the shorter bearing, in pascals. */
export const lintelBearingStress = defineQuantity({
  id: 'lintel.bearing-stress',
  title: 'Pressure under the lintel end',
  part: 'head',
  dimension: 'stress',
  structural: true,
  formula: 'half the load / (shorter bearing × width of the flat leg on the brick)',
  appliesTo: onLooseAngle,
  needs: { load: result('lintel.load'), ...bearing, angle: angleOverOpening, brick: optional(fact.amount('wall.veneer.thickness')) },
  compute: ({ load, left, right, angle, brick }) => {
    const length = Math.min(left, right)
    if (length === 0) return { reason: 'methodDoesNotHold', why: 'One end of the lintel has no bearing at all.' }
    const width = Math.min(angle.horizontalLeg, brick ?? angle.horizontalLeg)
    return {
      value: pressureOf(load / 2, length, width),
      steps: [`${text('force', load)} / 2 / (${exactLengthText(length)} × ${exactLengthText(width)}) = ${text('stress', pressureOf(load / 2, length, width))}`],
      notes: [brick === undefined ? 'The whole flat leg is taken to rest on brick; the thickness of the brick is not known.' : 'The flat leg is taken to rest on brick as far as the brick is thick.', confirmed],
    }
  },
})

/** The pressure at the edge of the opening, where the lintel bends into its seat. */
export const lintelBearingStressPeak = defineQuantity({
  id: 'lintel.bearing-stress-peak',
  title: 'Greatest pressure under the lintel end',
  part: 'head',
  dimension: 'stress',
  structural: true,
  formula: 'average pressure × ratio of peak to average',
  appliesTo: onLooseAngle,
  needs: { average: result('lintel.bearing-stress'), peak: parameter('lintel.bearing-pressure-peak') },
  compute: ({ average, peak }) => ({ value: peak * average, steps: [`${peak} × ${text('stress', average)} = ${text('stress', peak * average)}`], notes: [confirmed] }),
})

/** A force in newtons over a length and a width in nm, in pascals. */
export function pressureOf(force: number, length: number, width: number): number {
  return (force / areaOf(length, width)) * squareMetre_mm2
}

function text(dimension: 'force' | 'stress', amount: number): string {
  return quantityText({ dimension, amount }, 'inchPound')
}
