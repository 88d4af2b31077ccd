import { areaOf } from '../units/length.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { whether } from './choose.ts'
import { defineQuantity } from './define.ts'
import { bearing, onLintel, onLooseAngle } from './lintel-needs.ts'
import { angleOverOpening } from './lintel-section.ts'
import { confirmed, lintelExample } from './lintel-sources.ts'
import { combined, fact, optional, parameter, result, type Need } from './need.ts'

const squareMetre_mm2 = 1e6

/** How wide the lintel rests on the masonry, in nm. */
interface Seat {
  readonly width: number
  readonly note: string
}

const brick = optional(fact.amount('wall.veneer.thickness'))

/** No wider than the brick is thick, where that is known. */
export const seat: Need<Seat> = whether(
  onLooseAngle,
  combined({ angle: angleOverOpening, brick }, ({ angle, brick }) => seatOf(angle.horizontalLeg, brick, 'flat leg')),
  combined({ width: fact.amount('head.support.width'), brick }, ({ width, brick }) => seatOf(width, brick, 'width of the lintel')),
)

/** Pressure of the lintel on the masonry beside the opening, averaged over the bearing that is pressed harder, in pascals. */
export const lintelBearingStress = defineQuantity({
  id: 'lintel.bearing-stress',
  title: 'Pressure under the lintel end',
  part: 'head',
  dimension: 'stress',
  structural: true,
  formula: 'load on the bearing / (bearing length × width of the lintel on the masonry), at the end where it is greater',
  sources: [lintelExample],
  appliesTo: onLintel,
  needs: { loadLeft: result('lintel.reaction-left'), loadRight: result('lintel.reaction-right'), ...bearing, seat },
  compute: ({ loadLeft, loadRight, left, right, seat }) => {
    if (Math.min(left, right) === 0) return { reason: 'methodDoesNotHold', why: 'One end of the lintel has no bearing at all.' }
    const ends = [{ load: loadLeft, length: left }, { load: loadRight, length: right }]
    const pressures = ends.map(({ load, length }) => pressureOf(load, length, seat.width))
    const steps = ends.map(({ load, length }) => `${text('force', load)} / (${exactLengthText(length)} × ${exactLengthText(seat.width)}) = ${text('stress', pressureOf(load, length, seat.width))}`)
    return { value: Math.max(...pressures), steps: [...new Set(steps)], notes: [seat.note, confirmed] }
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
  appliesTo: onLintel,
  needs: { average: result('lintel.bearing-stress'), peak: parameter('lintel.bearing-pressure-peak') },
  compute: ({ average, peak }) => ({ value: peak * average, steps: [`${peak} × ${text('stress', average)} = ${text('stress', peak * average)}`], notes: [confirmed] }),
})

/** A force in newtons over a length and a width in nm, in pascals. */
export function pressureOf(force: number, length: number, width: number): number {
  return (force / areaOf(length, width)) * squareMetre_mm2
}

function seatOf(width: number, brick: number | undefined, of: string): Seat {
  return {
    width: Math.min(width, brick ?? width),
    note: brick === undefined ? `The whole ${of} is taken to rest on brick; the thickness of the brick is not known.` : `The ${of} is taken to rest on brick as far as the brick is thick.`,
  }
}

function text(dimension: 'force' | 'stress', amount: number): string {
  return quantityText({ dimension, amount }, 'inchPound')
}
