import { metres, nanometresOf } from '../units/length.ts'
import { inchText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { bendingStressOf, momentOf, placeOfMoment, sectionModulusFor } from './lintel-beam.ts'
import { carried, partsText } from './lintel-load.ts'
import { onLintel, onLooseAngle } from './lintel-needs.ts'
import { beyondPlainBeam, reinforcedJoints } from './lintel-plain-beam.ts'
import { angleOverOpening } from './lintel-section.ts'
import { beamFormulas, confirmed, lintelTextbook } from './lintel-sources.ts'
import { parameter, result } from './need.ts'

const allowable = parameter('steel.allowable-bending-stress')
const moment = result('lintel.bending-moment')

/** Greatest moment, in N·m: at midspan, but with a point load nearer to it. */
export const lintelBendingMoment = defineQuantity({
  id: 'lintel.bending-moment',
  title: 'Bending moment in the lintel',
  part: 'head',
  dimension: 'moment',
  structural: true,
  formula: 'triangle W L / 6 + even load W L / 8, on the effective span; with a point load, where the shear changes its sign',
  sources: [lintelTextbook('p. 231', 231), beamFormulas],
  appliesTo: onLintel,
  needs: { load: carried, span: result('lintel.effective-span') },
  compute: ({ load, span }) => ({
    value: momentOf(load, metres(span)),
    steps: [`${partsText(load)}: ${text('moment', momentOf(load, metres(span)))}${load.part ? `, ${inchText(nanometresOf(placeOfMoment(load, metres(span))))} from the left support` : ''}`],
    notes: [confirmed],
  }),
})

/** The least section modulus that carries the moment, in mm³: what to look for in a table of sections. */
export const lintelSectionModulusNeeded = defineQuantity({
  id: 'lintel.section-modulus-needed',
  title: 'Section modulus needed',
  part: 'head',
  dimension: 'sectionModulus',
  structural: true,
  formula: 'bending moment / allowable bending stress',
  appliesTo: onLooseAngle,
  needs: { moment, allowable },
  compute: ({ moment, allowable }) => ({
    value: sectionModulusFor(moment, allowable),
    steps: [`${text('moment', moment)} / ${text('stress', allowable)} = ${text('sectionModulus', sectionModulusFor(moment, allowable))}`],
    notes: [confirmed],
  }),
})

/** Bending stress in the steel, in pascals. */
export const lintelBendingStress = defineQuantity({
  id: 'lintel.bending-stress',
  title: 'Bending stress in the lintel',
  part: 'head',
  dimension: 'stress',
  structural: true,
  formula: 'bending moment / section modulus of the angle, long leg vertical',
  appliesTo: onLooseAngle,
  needs: { moment, angle: angleOverOpening, allowable, reinforcedJoints },
  compute: ({ moment, angle, allowable, reinforcedJoints }) => {
    const stress = bendingStressOf(moment, angle.sectionModulus)
    return beyondPlainBeam(stress > allowable, reinforcedJoints) ?? {
      value: stress,
      steps: [`${text('moment', moment)} / ${text('sectionModulus', angle.sectionModulus)} = ${text('stress', stress)}`],
      notes: [confirmed],
    }
  },
})

/** How much of the allowable stress is used; more than 1 is too much. */
export const lintelBendingStressRatio = defineQuantity({
  id: 'lintel.bending-stress-ratio',
  title: 'Bending stress, part of what is allowed',
  part: 'head',
  dimension: 'ratio',
  structural: true,
  formula: 'bending stress / allowable bending stress',
  appliesTo: onLooseAngle,
  needs: { stress: result('lintel.bending-stress'), allowable },
  compute: ({ stress, allowable }) => ({
    value: stress / allowable,
    steps: [`${text('stress', stress)} / ${text('stress', allowable)} = ${text('ratio', stress / allowable)}`],
    notes: [confirmed],
  }),
})

function text(dimension: 'force' | 'moment' | 'stress' | 'sectionModulus' | 'ratio', amount: number): string {
  return quantityText({ dimension, amount }, 'inchPound')
}
