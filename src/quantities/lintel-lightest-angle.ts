import type { Table } from '../catalog/reference.ts'
import type { UnitSystem } from '../units/dimension.ts'
import { metres, nanometresOf } from '../units/length.ts'
import { quantityText } from '../units/quantity-text.ts'
import { taken } from './choose.ts'
import { defineQuantity, type Computation } from './define.ts'
import { bendingStressOf, deflectionOf, momentOf } from './lintel-beam.ts'
import { imposedOnLintel } from './lintel-imposed-load.ts'
import { beamLoadOf, ownWeight } from './lintel-load.ts'
import { onLooseAngle } from './lintel-needs.ts'
import { pointLoadOnLintel } from './lintel-point-load.ts'
import type { Angle } from './angle-sizes.ts'
import { anglesOf } from './lintel-section.ts'
import { beamFormulas, confirmed } from './lintel-sources.ts'
import { combined, limit, orElse, parameter, result, resultText, table } from './need.ts'
import type { PartLoad } from './simple-span.ts'

interface Demand {
  readonly arching: string
  readonly brick: number
  readonly floor: number
  readonly point: PartLoad | undefined
  readonly span: number
  readonly allowed: number
  readonly allowable: number
  readonly modulus: number
}

const needs = {
  arching: resultText('lintel.arching'),
  brick: result('lintel.brick-load'),
  floor: imposedOnLintel,
  point: combined({ point: pointLoadOnLintel }, ({ point }) => point?.onSpan),
  span: result('lintel.effective-span'),
  allowed: result('lintel.deflection-limit'),
  allowable: parameter('steel.allowable-bending-stress'),
  modulus: parameter('steel.elastic-modulus'),
  leastLeg: orElse(limit('lintel.horizontal-leg'), taken(0), 'No least flat leg is in force; narrow ones are looked at too.'),
  leastThickness: orElse(limit('lintel.thickness'), taken(0), 'No least steel thickness is in force; thin ones are looked at too.'),
}

/** The lightest single angle in inch sizes that carries the brick and itself, within the allowed stress and deflection. */
export const lintelLightestAngle = defineQuantity({
  id: 'lintel.lightest-angle',
  title: 'Lightest angle that carries the brick',
  part: 'head',
  dimension: null,
  structural: true,
  formula: 'the lightest single angle, long leg vertical, whose bending stress and deflection under brick, own weight and whatever else comes on it are within what is allowed',
  sources: [beamFormulas],
  appliesTo: onLooseAngle,
  needs: { sections: table('steel.angle-sections'), ...needs },
  compute: (asked) => lightestOf(asked, 'inchPound'),
})

/** The same from the metric sizes. */
export const lintelLightestMetricAngle = defineQuantity({
  id: 'lintel.lightest-metric-angle',
  title: 'Lightest metric angle that carries the brick',
  part: 'head',
  dimension: null,
  structural: true,
  formula: 'the lightest single angle in metric sizes, long leg vertical, whose bending stress and deflection under brick, own weight and whatever else comes on it are within what is allowed',
  sources: [beamFormulas],
  appliesTo: onLooseAngle,
  needs: { sections: table('steel.metric-angle-sections'), ...needs },
  compute: (asked) => lightestOf(asked, 'si'),
})

interface Asked extends Demand {
  readonly sections: Table
  readonly leastLeg: number
  readonly leastThickness: number
}

function lightestOf({ sections, leastLeg, leastThickness, ...demand }: Asked, system: UnitSystem): Computation {
  const seatsBrick = ({ horizontalLeg, thickness }: Angle) => horizontalLeg >= leastLeg && thickness >= leastThickness
  const [lightest, next] = anglesOf(sections).filter((angle) => seatsBrick(angle) && Math.max(...used(angle, demand)) <= 1)
  if (!lightest) return { reason: 'outsidePrescriptive', why: 'No single angle of the table carries the brick over this span; the support needs a licensed professional.' }
  return {
    value: lightest.section,
    steps: [usedText(lightest, demand, system), next ? `next: ${usedText(next, demand, system)}` : 'no other angle of the table carries it'],
    notes: ['The code may still ask for a heavier angle; its own table comes first.', confirmed],
  }
}

function usedText(angle: Angle, demand: Demand, system: UnitSystem): string {
  const [stress, deflection] = used(angle, demand)
  const mass = quantityText({ dimension: 'linearMass', amount: angle.mass }, system)
  return `${angle.section}, ${mass}: ${share(stress)} of the allowable stress, ${share(deflection)} of the allowed deflection`
}

/** The parts of the allowable stress and of the allowed deflection that an angle uses. */
function used(angle: Angle, { arching, brick, floor, point, span, allowed, allowable, modulus }: Demand): readonly [stress: number, deflection: number] {
  const load = beamLoadOf(arching, brick, ownWeight(angle, span) + floor, point)
  const stress = bendingStressOf(momentOf(load, metres(span)), angle.sectionModulus)
  const deflection = nanometresOf(deflectionOf(load, metres(span), { modulus, momentOfInertia: angle.momentOfInertia }))
  return [stress / allowable, deflection / allowed]
}

function share(ratio: number): string {
  return quantityText({ dimension: 'ratio', amount: ratio }, 'inchPound')
}
