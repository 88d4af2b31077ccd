import { metres, nanometresOf } from '../units/length.ts'
import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { whether } from './choose.ts'
import { defineQuantity } from './define.ts'
import { deflectionOf, placeOfDeflection, type Stiffness } from './lintel-beam.ts'
import { carried, partsText } from './lintel-load.ts'
import { onLintel, onLooseAngle } from './lintel-needs.ts'
import { beyondPlainBeam, reinforcedJoints } from './lintel-plain-beam.ts'
import { angleOverOpening } from './lintel-section.ts'
import { beamFormulas, confirmed } from './lintel-sources.ts'
import { combined, fact, parameter, result, type Need } from './need.ts'

const span = result('lintel.effective-span')
const allowed = result('lintel.deflection-limit')

/** Of an angle by the table of sections, of any other lintel as its maker states it. */
const stiffness: Need<Stiffness> = whether(
  onLooseAngle,
  combined({ angle: angleOverOpening, modulus: parameter('steel.elastic-modulus') }, ({ angle, modulus }) => ({ modulus, momentOfInertia: angle.momentOfInertia })),
  combined({ momentOfInertia: fact.amount('head.support.momentOfInertia'), modulus: fact.amount('head.support.elasticModulus') }, (stated) => stated),
)

/** How far the support of the veneer may bend, in nm: a part of the span, but no more than a cap. */
export const lintelDeflectionLimit = defineQuantity({
  id: 'lintel.deflection-limit',
  title: 'Allowed deflection of the lintel',
  part: 'head',
  dimension: 'length',
  structural: true,
  formula: 'the lesser of effective span / divisor and cap',
  appliesTo: onLintel,
  needs: { span, divisor: parameter('lintel.deflection-divisor'), cap: parameter('lintel.deflection-cap') },
  compute: ({ span, divisor, cap }) => {
    const share = Math.round(span / divisor)
    return {
      value: Math.min(share, cap),
      steps: [`${exactLengthText(span)} / ${divisor} = ${inchText(share)}; no more than ${inchText(cap)}`],
      notes: [confirmed],
    }
  },
})

/** Greatest deflection under everything on the lintel, in nm: at midspan, but with a point load nearer to it. */
export const lintelDeflection = defineQuantity({
  id: 'lintel.deflection',
  title: 'Deflection of the lintel',
  part: 'head',
  dimension: 'length',
  structural: true,
  formula: 'triangle W L³ / (60 E I) + even load 5 W L³ / (384 E I), on the effective span; with a point load, where the bent lintel lies level',
  sources: [beamFormulas],
  appliesTo: onLintel,
  needs: { load: carried, span, stiffness, allowed, reinforcedJoints },
  compute: ({ load, span, stiffness, allowed, reinforcedJoints }) => {
    const deflection = nanometresOf(deflectionOf(load, metres(span), stiffness))
    const place = load.part ? `, ${inchText(nanometresOf(placeOfDeflection(load, metres(span))))} from the left support` : ''
    return beyondPlainBeam(deflection > allowed, reinforcedJoints) ?? {
      value: deflection,
      steps: [`${partsText(load)}, moment of inertia ${quantityText({ dimension: 'momentOfInertia', amount: stiffness.momentOfInertia }, 'inchPound')}: ${inchText(deflection)}${place}`],
      notes: [confirmed],
    }
  },
})

/** How much of the allowed part of the span is used; more than 1 is too much. The cap is another rule's business: not every code has it. */
export const lintelDeflectionRatio = defineQuantity({
  id: 'lintel.deflection-ratio',
  title: 'Deflection, share of the allowed part of the span',
  part: 'head',
  dimension: 'ratio',
  structural: true,
  formula: 'deflection / (effective span / divisor)',
  appliesTo: onLintel,
  needs: { deflection: result('lintel.deflection'), span, divisor: parameter('lintel.deflection-divisor') },
  compute: ({ deflection, span, divisor }) => {
    const ratio = deflection / (span / divisor)
    return {
      value: ratio,
      steps: [`${inchText(deflection)} / (${exactLengthText(span)} / ${divisor}) = ${quantityText({ dimension: 'ratio', amount: ratio }, 'inchPound')}`],
      notes: [confirmed],
    }
  },
})
