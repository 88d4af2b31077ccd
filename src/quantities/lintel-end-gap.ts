import { nanometresOf, metres } from '../units/length.ts'
import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { defineQuantity } from './define.ts'
import { onLooseAngle } from './lintel-needs.ts'
import { asksOf, combined, fact, foundOnce, optional, orElse, parameter, result, together, type Need } from './need.ts'

const joint = fact.atEitherEnd('wall.movementJointAtJamb')

const slipPlane: Need<boolean> = foundOnce({
  asks: ['head.support.bearingSeat'],
  find: (inputs) => {
    const ends = inputs.fact('head.support.bearingSeat') ?? []
    const value = ends.some((seat) => seat?.value === 'slipPlane')
    const isKnown = value || (ends.length > 0 && ends.every((seat) => seat !== undefined))
    const used = [{ from: 'head.support.bearingSeat', text: ends.map((seat) => seat?.text ?? 'not known').join(' and ') }]
    return isKnown ? { known: true, value, used, sources: [], assumptions: [] } : { known: false, missing: ['head.support.bearingSeat'] }
  },
})

/** The lintel end has to be free to move where a joint stands at the jamb or the end lies on a slip plane. */
const hasFreeEnd: Need<boolean> = foundOnce({
  asks: asksOf(joint, slipPlane),
  find: (inputs) => {
    const found = [joint.find(inputs), slipPlane.find(inputs)]
    const free = found.find((one) => one.known && one.value)
    if (free) return free
    const both = together(found)
    return both.known ? { ...both, value: false } : both
  },
})

const isFree = combined({ angle: onLooseAngle, free: hasFreeEnd }, ({ angle, free }) => angle && free)

/** How much room the end of the steel is given, so that it can move against the brick. */
export const lintelEndGap = defineQuantity({
  id: 'lintel.end-gap',
  title: 'Space at the free end of the lintel',
  part: 'head',
  dimension: 'length',
  onlyWhenKnown: true,
  formula: 'least to greatest usual space at a lintel end beside a movement joint or on a slip plane',
  appliesTo: isFree,
  needs: {
    least: parameter('movement.lintel-end-gap-least'), greatest: parameter('movement.lintel-end-gap-greatest'), movement: optional(result('lintel.thermal-movement')),
  },
  compute: ({ least, greatest, movement }) => ({
    value: { least, greatest },
    steps: movement === undefined ? [] : [`Steel and brick move ${inchText(movement)} against each other; where one end is held, the free end takes all of it`],
    notes: [
      'At the end beside the joint, and at both ends where both are free. Keep the space free of mortar.',
      ...(movement !== undefined && movement > least ? [`The least space is smaller than the movement; leave more than ${inchText(movement)}.`] : []),
      'Brick over a free end does not arch; the lintel carries all of it.',
    ],
  }),
})

/** How much more the steel grows and shrinks than the brick beside it, in nm. */
export const lintelThermalMovement = defineQuantity({
  id: 'lintel.thermal-movement',
  title: 'Movement of the lintel against the brick',
  part: 'head',
  dimension: 'length',
  onlyWhenKnown: true,
  formula: 'lintel length × (expansion of steel − expansion of brick) × range of temperature',
  appliesTo: onLooseAngle,
  needs: {
    length: orElse(fact.amount('head.support.length'), result('lintel.length'), 'The length of the lintel is not known; the least length is taken.'),
    range: fact.amount('exposure.temperatureRange'),
    steel: parameter('movement.steel-thermal-coefficient'),
    brick: parameter('movement.brick-thermal-coefficient'),
  },
  compute: ({ length, range, steel, brick }) => {
    const movement = nanometresOf(metres(length) * (steel - brick) * range)
    const [more, less] = [steel, brick].map((amount) => quantityText({ dimension: 'thermalExpansion', amount }, 'inchPound'))
    return {
      value: movement,
      steps: [`${exactLengthText(length)} × (${more} − ${less}) × ${quantityText({ dimension: 'temperatureDifference', amount: range }, 'inchPound')} = ${inchText(movement)}`],
      notes: ['Steel and brick are taken to be equally warm. Brick also grows with moisture over the years; that is not counted here.'],
    }
  },
})
