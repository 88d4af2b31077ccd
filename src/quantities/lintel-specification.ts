import { quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { onLooseAngle } from './lintel-needs.ts'
import { beyondPlainBeam, reinforcedJoints } from './lintel-plain-beam.ts'
import type { Angle } from './angle-sizes.ts'
import { angleOverOpening } from './lintel-section.ts'
import { confirmed } from './lintel-sources.ts'
import { combined, fact, orElse, parameter, result, table } from './need.ts'
import { flexureCoefficients, governing, restrainedMoments, unrestrainedMoments, type NominalMoments } from './single-angle-flexure.ts'

const yieldStress = orElse(
  fact.amount('head.support.yieldStress'),
  parameter('steel.yield-stress'),
  'The yield stress of the steel is not known; that of A36, the usual grade, is taken.',
)
const coefficients = combined({ table: table('steel.single-angle-flexure') }, ({ table }) => flexureCoefficients(table))

const unequal = {
  reason: 'methodDoesNotHold',
  why: 'The legs are unequal and nothing holds the angle sideways: it bends and twists about axes that lie between its legs, which this check does not follow. A licensed professional decides.',
} as const

/** Allowable moment of the angles together by AISC 360, allowable strength, in N·m: another method than the allowable stress of the brick industry. */
export const lintelSpecificationMoment = defineQuantity({
  id: 'lintel.specification-moment',
  title: 'Allowable moment by the steel specification',
  part: 'head',
  dimension: 'moment',
  structural: true,
  formula: 'the least of yielding, buckling of the standing leg and buckling sideways, AISC 360 F10, / safety factor',
  appliesTo: onLooseAngle,
  needs: { angle: angleOverOpening, restraint: fact.choice('head.support.lateralRestraint'), span: result('lintel.effective-span'), yieldStress, modulus: parameter('steel.elastic-modulus'), coefficients },
  compute: ({ angle, restraint, span, yieldStress, modulus, coefficients }) => {
    const one = { ...angle, sectionModulus: angle.sectionModulus / angle.count, yieldStress, modulus }
    if (restraint !== 'continuous' && angle.verticalLeg !== angle.horizontalLeg) return unequal
    const moments = restraint === 'continuous' ? restrainedMoments(one, coefficients) : unrestrainedMoments(one, span, coefficients)
    const allowed = (angle.count * governing(moments)) / coefficients.safetyFactor
    return {
      value: allowed,
      steps: [...limitStates(moments), `${several(angle)}least ${momentText(governing(moments))} / ${coefficients.safetyFactor} = ${momentText(allowed)}`],
      notes: [loadedThroughAngle, confirmed],
    }
  },
})

/** How much of that moment is used; more than 1 is too much. */
export const lintelSpecificationRatio = defineQuantity({
  id: 'lintel.specification-ratio',
  title: 'Moment, part of what the steel specification allows',
  part: 'head',
  dimension: 'ratio',
  structural: true,
  formula: 'bending moment / allowable moment by the steel specification',
  appliesTo: onLooseAngle,
  needs: { moment: result('lintel.bending-moment'), allowed: result('lintel.specification-moment'), reinforcedJoints },
  compute: ({ moment, allowed, reinforcedJoints }) => {
    const ratio = moment / allowed
    return beyondPlainBeam(ratio > 1, reinforcedJoints) ?? {
      value: ratio,
      steps: [`${momentText(moment)} / ${momentText(allowed)} = ${quantityText({ dimension: 'ratio', amount: ratio }, 'inchPound')}`],
      notes: [confirmed],
    }
  },
})

const loadedThroughAngle = 'The specification takes the load to pass through the steel, or the angle to be kept from twisting; twist from brick that stands beside the standing leg is not counted.'

function limitStates({ yielding, legBuckling, sidewaysBuckling }: NominalMoments): readonly string[] {
  return [
    `yielding, F10.1: ${momentText(yielding)}`,
    legBuckling === undefined ? 'buckling of the standing leg, F10.3: compact, does not buckle' : `buckling of the standing leg, F10.3: ${momentText(legBuckling)}`,
    sidewaysBuckling === undefined ? 'buckling sideways, F10.2: held along its length, does not buckle' : `buckling sideways, F10.2: ${momentText(sidewaysBuckling)}`,
  ]
}

function several({ count }: Angle): string {
  return count === 1 ? '' : `${count} angles, each by itself: ${count} × `
}

function momentText(newtonMetres: number): string {
  return quantityText({ dimension: 'moment', amount: newtonMetres }, 'inchPound')
}
