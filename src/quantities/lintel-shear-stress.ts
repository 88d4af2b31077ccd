import { metres } from '../units/length.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { whether } from './choose.ts'
import { defineQuantity } from './define.ts'
import { pressureOf } from './lintel-bearing-stress.ts'
import { onLintel, onLooseAngle } from './lintel-needs.ts'
import { angleOverOpening } from './lintel-section.ts'
import { confirmed, lintelExample } from './lintel-sources.ts'
import { combined, fact, parameter, result, type Need } from './need.ts'

/** What resists the shear: a height and a width in nm. */
interface Web {
  readonly height: number
  readonly width: number
  readonly note: string
}

const ofAngle: Need<Web> = combined({ angle: angleOverOpening }, ({ angle }) => ({
  height: angle.verticalLeg, width: angle.thickness * angle.count, note: 'The flat leg is not counted.',
}))

const ofMasonry: Need<Web> = combined({ height: fact.amount('head.support.depth'), width: fact.amount('head.support.width') }, ({ height, width }) => ({
  height, width, note: 'Averaged over the whole height. A reinforced lintel is judged on the depth down to its bars, which is less and gives more stress.',
}))

/** Shear spread over the standing leg, or over the lintel; in pascals. */
export const lintelShearStress = defineQuantity({
  id: 'lintel.shear-stress',
  title: 'Shear stress in the lintel',
  part: 'head',
  dimension: 'stress',
  structural: true,
  formula: 'greatest shear / (standing leg × steel thickness); of masonry, greatest shear / (width × depth)',
  sources: [lintelExample],
  appliesTo: onLintel,
  needs: { shear: result('lintel.shear'), web: whether(onLooseAngle, ofAngle, ofMasonry) },
  compute: ({ shear, web }) => ({
    value: pressureOf(shear, web.height, web.width),
    steps: [`${forceText(shear)} / (${exactLengthText(web.height)} × ${exactLengthText(web.width)}) = ${quantityText({ dimension: 'stress', amount: pressureOf(shear, web.height, web.width) }, 'inchPound')}`],
    notes: [web.note, confirmed],
  }),
})

/** What is used of the shear that is allowed, in newtons; of an angle by its stress, of any other lintel as its maker states it. */
const allowed: Need<number> = whether(
  onLooseAngle,
  combined({ web: ofAngle, stress: parameter('steel.allowable-shear-stress') }, ({ web, stress }) => stress * metres(web.height) * metres(web.width)),
  fact.amount('head.support.allowableShear'),
)

/** How much of the allowable shear is used; more than 1 is too much. */
export const lintelShearRatio = defineQuantity({
  id: 'lintel.shear-ratio',
  title: 'Shear, part of what is allowed',
  part: 'head',
  dimension: 'ratio',
  structural: true,
  onlyWhenKnown: true,
  formula: 'greatest shear / allowable shear: of an angle its allowable stress × standing leg × steel thickness, of any other lintel as its maker states it',
  appliesTo: onLintel,
  needs: { shear: result('lintel.shear'), allowed },
  compute: ({ shear, allowed }) => ({
    value: shear / allowed,
    steps: [`${forceText(shear)} / ${forceText(allowed)} = ${quantityText({ dimension: 'ratio', amount: shear / allowed }, 'inchPound')}`],
    notes: [confirmed],
  }),
})

function forceText(newtons: number): string {
  return quantityText({ dimension: 'force', amount: newtons }, 'inchPound')
}
