import { metres, nanometresOf } from '../units/length.ts'
import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { weightOf } from '../units/weight.ts'
import { taken, whether } from './choose.ts'
import { defineQuantity } from './define.ts'
import { arches } from './lintel-arching.ts'
import type { BeamLoad } from './lintel-beam.ts'
import { imposedOnLintel } from './lintel-imposed-load.ts'
import { loadsAboveIfSaid } from './lintel-loads-above.ts'
import { onLintel, onLooseAngle, veneerWeight } from './lintel-needs.ts'
import { pointLoadOnLintel } from './lintel-point-load.ts'
import type { Angle } from './angle-sizes.ts'
import { confirmed, lintelTextbook, veneerCarriesItselfNote } from './lintel-sources.ts'
import { combined, fact, parameter, result, resultText, type Need } from './need.ts'
import type { PartLoad } from './simple-span.ts'

const span = result('lintel.effective-span')
const above = fact.amount('wall.heightAboveHead')
const triangle = lintelTextbook('p. 231', 231)

const brickOnly = 'Nothing but the brick is counted; whether anything else rests on it is not known.'
const besidesBrick = 'The floor, roof or point load on the brick comes on top.'

/** All the brick above, over the effective span, in newtons. Always shown, since a joint or a short wall takes arching away. */
export const lintelLoadWithoutArching = defineQuantity({
  id: 'lintel.load-without-arching',
  title: 'Brick over the span if it did not arch',
  part: 'head',
  dimension: 'force',
  structural: true,
  formula: 'veneer weight × height above the head × effective span',
  appliesTo: onLintel,
  needs: { weight: veneerWeight, above, span, loads: loadsAboveIfSaid },
  compute: ({ weight, above, span, loads }) => ({
    value: weight * metres(above) * metres(span),
    steps: [`${arealText(weight)} × ${exactLengthText(above)} × ${exactLengthText(span)} = ${forceText(weight * metres(above) * metres(span))}`],
    notes: [...(loads === undefined ? [brickOnly] : []), ...(loads && loads.even + loads.point > 0 ? [besidesBrick] : []), confirmed],
  }),
})

const isArching = combined({ arching: resultText('lintel.arching') }, ({ arching }) => arching === arches)

/** The brick that the lintel carries: the triangle under the arch, or all of it. */
export const lintelBrickLoad = defineQuantity({
  id: 'lintel.brick-load',
  title: 'Brick the lintel carries',
  part: 'head',
  dimension: 'force',
  structural: true,
  formula: 'arching: veneer weight × effective span² / 4 × tan(triangle angle); else veneer weight × height above × effective span',
  sources: [triangle],
  appliesTo: onLintel,
  needs: { arching: resultText('lintel.arching'), weight: veneerWeight, span, angle: parameter('lintel.arching-triangle-angle'), all: whether(isArching, taken(0), result('lintel.load-without-arching')) },
  compute: ({ arching, weight, span, angle, all }) => {
    if (arching !== arches) return { value: all, steps: [`no arching, all the brick above: ${forceText(all)}`], notes: [confirmed] }
    const load = (weight * metres(span) ** 2 * Math.tan((angle * Math.PI) / 180)) / 4
    return { value: load, steps: [`${arealText(weight)} × (${exactLengthText(span)})² / 4 × tan(${angle} deg) = ${forceText(load)}`], notes: [confirmed] }
  },
})

/** Everything on the span: brick, the lintel itself, and what of a floor, roof or point load comes on it. Asks whether anything else rests there. */
export const lintelLoad = defineQuantity({
  id: 'lintel.load',
  title: 'Load on the lintel',
  part: 'head',
  dimension: 'force',
  structural: true,
  formula: 'brick carried + weight of the lintel over the effective span + floor, roof and point load that come on it',
  appliesTo: onLintel,
  needs: { brick: result('lintel.brick-load'), own: result('lintel.self-weight'), floor: imposedOnLintel, point: pointLoadOnLintel, isSteel: onLooseAngle },
  compute: ({ brick, own, floor, point, isSteel }) => {
    const parts = [[brick, 'brick'], [own, isSteel ? 'steel' : 'lintel'], [floor, 'floor or roof load'], [point?.onSpan.total ?? 0, 'point load']] as const
    const total = parts.reduce((sum, [amount]) => sum + amount, 0)
    const counted = parts.filter(([amount]) => amount > 0).map(([amount, of]) => `${forceText(amount)} of ${of}`)
    return { value: total, steps: [`${counted.join(' + ')} = ${forceText(total)}`], notes: [...(floor > 0 || point ? [veneerCarriesItselfNote] : []), confirmed] }
  },
})

/** The same load, by its shape along the span. */
export const carried: Need<BeamLoad> = combined(
  { arching: resultText('lintel.arching'), brick: result('lintel.brick-load'), all: result('lintel.load'), point: pointLoadOnLintel },
  ({ arching, brick, all, point }) => beamLoadOf(arching, brick, all - brick - (point?.onSpan.total ?? 0), point?.onSpan),
)

/** A triangle of brick where it arches, an even load where not; the lintel itself and a floor are always an even load. In newtons. */
export function beamLoadOf(arching: string, brick: number, even: number, part?: PartLoad): BeamLoad {
  const whole = arching === arches ? { triangle: brick, uniform: even } : { triangle: 0, uniform: brick + even }
  return part && part.total > 0 ? { ...whole, part } : whole
}

/** Each shape of load with what it comes to. */
export function partsText({ triangle, uniform, part }: BeamLoad): string {
  return `triangle ${forceText(triangle)}, even load ${forceText(uniform)}${part ? `, point load ${forceText(part.total)} over ${inchText(nanometresOf(part.to - part.from))}` : ''}`
}

/** What the angle itself weighs over a span, in newtons. */
export function ownWeight({ mass }: Pick<Angle, 'mass'>, span: number): number {
  return weightOf(mass * metres(span))
}

function forceText(newtons: number): string {
  return quantityText({ dimension: 'force', amount: newtons }, 'inchPound')
}

function arealText(pascals: number): string {
  return quantityText({ dimension: 'arealLoad', amount: pascals }, 'inchPound')
}
