import { metres } from '../units/length.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { weightOf } from '../units/weight.ts'
import { defineQuantity, type Computation } from './define.ts'
import { arches } from './lintel-arching.ts'
import type { BeamLoad } from './lintel-beam.ts'
import { onLintel, onLooseAngle, veneerWeight } from './lintel-needs.ts'
import { angleOverOpening, type Angle } from './lintel-section.ts'
import { confirmed, lintelTextbook } from './lintel-sources.ts'
import { combined, fact, optional, parameter, result, resultText, type Need } from './need.ts'

const span = result('lintel.effective-span')
const above = fact.amount('wall.heightAboveHead')
const loadAbove = optional(fact.flag('wall.loadAbove'))
const triangle = lintelTextbook('p. 231', 231)

export const otherLoad: Computation = { reason: 'outsidePrescriptive', why: 'A floor, a roof or a point load rests on the brick above; the lintel needs a licensed professional.' }
const brickOnly = 'Nothing but the brick is counted; whether anything else rests on it is not known.'

/** All the brick above, over the effective span, in newtons. Always shown, since a joint or a short wall takes arching away. */
export const lintelLoadWithoutArching = defineQuantity({
  id: 'lintel.load-without-arching',
  title: 'Brick over the span if it did not arch',
  part: 'head',
  dimension: 'force',
  structural: true,
  formula: 'veneer weight × height above the head × effective span',
  appliesTo: onLintel,
  needs: { weight: veneerWeight, above, span, loadAbove },
  compute: ({ weight, above, span, loadAbove }) => loadAbove ? otherLoad : {
    value: weight * metres(above) * metres(span),
    steps: [`${arealText(weight)} × ${exactLengthText(above)} × ${exactLengthText(span)} = ${forceText(weight * metres(above) * metres(span))}`],
    notes: [...(loadAbove === undefined ? [brickOnly] : []), confirmed],
  },
})

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
  needs: { arching: resultText('lintel.arching'), weight: veneerWeight, span, angle: parameter('lintel.arching-triangle-angle'), all: result('lintel.load-without-arching') },
  compute: ({ arching, weight, span, angle, all }) => {
    if (arching !== arches) return { value: all, steps: [`no arching, all the brick above: ${forceText(all)}`], notes: [confirmed] }
    const load = (weight * metres(span) ** 2 * Math.tan((angle * Math.PI) / 180)) / 4
    return { value: load, steps: [`${arealText(weight)} × (${exactLengthText(span)})² / 4 × tan(${angle} deg) = ${forceText(load)}`], notes: [confirmed] }
  },
})

/** Everything on the span: brick and the steel itself. Asks whether anything else rests there. */
export const lintelLoad = defineQuantity({
  id: 'lintel.load',
  title: 'Load on the lintel',
  part: 'head',
  dimension: 'force',
  structural: true,
  formula: 'brick carried + weight of the angle over the effective span',
  appliesTo: onLooseAngle,
  needs: { brick: result('lintel.brick-load'), angle: angleOverOpening, span, loadAbove: fact.flag('wall.loadAbove') },
  compute: ({ brick, angle, span, loadAbove }) => {
    const steel = ownWeight(angle, span)
    return loadAbove ? otherLoad : { value: brick + steel, steps: [`${forceText(brick)} of brick + ${forceText(steel)} of steel = ${forceText(brick + steel)}`], notes: [confirmed] }
  },
})

/** The same load, by its shape along the span. */
export const carried: Need<BeamLoad> = combined(
  { arching: resultText('lintel.arching'), brick: result('lintel.brick-load'), all: result('lintel.load') },
  ({ arching, brick, all }) => beamLoadOf(arching, brick, all - brick),
)

/** A triangle of brick where it arches, an even load where not; the steel is always an even load. In newtons. */
export function beamLoadOf(arching: string, brick: number, steel: number): BeamLoad {
  return arching === arches ? { triangle: brick, uniform: steel } : { triangle: 0, uniform: brick + steel }
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
