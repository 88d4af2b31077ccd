import type { Dimension } from '../units/dimension.ts'
import { exactLengthText, inchText, quantityText } from '../units/quantity-text.ts'
import { taken } from './choose.ts'
import { defineQuantity } from './define.ts'
import { movementArticle } from './movement-sources.ts'
import { fact, orElse, parameter, result } from './need.ts'

/** How much brick would grow if nothing held it, as a part of its length. */
export const movementStrain = defineQuantity({
  id: 'movement.strain',
  title: 'Growth of the brick to allow for, part of its length',
  part: 'wall',
  dimension: 'ratio',
  formula: 'moisture expansion + thermal expansion × temperature range + freezing expansion',
  sources: [movementArticle],
  needs: {
    moisture: parameter('movement.brick-moisture-expansion'),
    thermal: parameter('movement.brick-thermal-coefficient'),
    range: orElse(fact.amount('exposure.temperatureRange'), parameter('movement.temperature-range'), 'The temperature range of the brick is not known; the usual one is taken.'),
    freezesWet: orElse(fact.flag('exposure.freezesWet'), taken(false), 'Whether the brick freezes while wet is not known; growth by freezing is left out.'),
    freezing: parameter('movement.brick-freezing-expansion'),
  },
  compute: ({ moisture, thermal, range, freezesWet, freezing }) => {
    const value = moisture + thermal * range + (freezesWet ? freezing : 0)
    const parts = `${text('ratio', moisture)} + ${text('thermalExpansion', thermal)} × ${text('temperatureDifference', range)}${freezesWet ? ` + ${text('ratio', freezing)}` : ''}`
    return { value, steps: [`${parts} = ${text('ratio', value)}`] }
  },
})

/** How much longer the brick between two joints would get, in nanometres. */
export const movementExpansion = defineQuantity({
  id: 'movement.expansion',
  title: 'Growth of the brick between two movement joints',
  part: 'wall',
  dimension: 'length',
  onlyWhenKnown: true,
  formula: 'length between the joints × growth as a part of the length',
  needs: {
    length: orElse(fact.amount('wall.movementJointSpacing'), fact.amount('wall.length'), 'The spacing of movement joints is not known; the whole length of the wall is taken to grow as one.'),
    strain: result('movement.strain'),
  },
  compute: ({ length, strain }) => {
    const value = Math.round(length * strain)
    return { value, steps: [`${exactLengthText(length)} × ${text('ratio', strain)} = ${inchText(value)}`], notes: ['If nothing holds the brick back; it grows to both sides from where it is held.'] }
  },
})

function text(dimension: Exclude<Dimension, 'length'>, amount: number): string {
  return quantityText({ dimension, amount }, 'inchPound')
}
