import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { endLap, felt, openingRectangle, sheet, wallLength } from './barrier-wall.ts'
import { onlyWhere } from './choose.ts'
import { defineQuantity, valueText } from './define.ts'
import { fewestPieces } from './flashing-splices.ts'
import { fact, limit, orElse, parameter, result } from './need.ts'
import { rectangleArea } from './plane-area.ts'
import { veneerHeight } from './veneer-height.ts'

/** Wall that the barrier covers round this opening, without laps. */
export const barrierSheetArea = defineQuantity({
  id: 'barrier.sheet-area',
  title: 'Wall covered with barrier',
  part: 'barrier',
  dimension: 'area',
  formula: 'length of wall × its height − opening',
  onlyWhenKnown: true,
  appliesTo: sheet,
  needs: { length: wallLength, height: veneerHeight, width: fact.amount('opening.width'), opening: openingRectangle },
  compute: ({ length, height, width, opening }) => {
    const value = rectangleArea(length, height) - rectangleArea(width, opening)
    if (value <= 0) return { reason: 'methodDoesNotHold', why: 'The opening is no smaller than the wall; check the length and the height of the wall.' }
    return {
      value,
      steps: [`${exactLengthText(length)} × ${exactLengthText(height)} − ${exactLengthText(width)} × ${exactLengthText(opening)} = ${quantityText({ dimension: 'area', amount: value }, 'inchPound')} (${quantityText({ dimension: 'area', amount: value }, 'si')})`],
      notes: ['For one layer, laps not counted. Under an arch only the rectangle below its springing is taken off.'],
    }
  },
})

/** Rolls to buy for this wall. Sheets run across the opening and are cut out there. */
export const barrierRolls = defineQuantity({
  id: 'barrier.rolls',
  title: 'Rolls of barrier for the wall',
  part: 'barrier',
  dimension: 'count',
  formula: '⌈(courses × layers × length of wall × (1 + waste) − lap) / (roll length − lap)⌉',
  onlyWhenKnown: true,
  appliesTo: sheet,
  needs: {
    courses: result('barrier.courses'),
    layers: orElse(fact.amount('barrier.layers'), limit('barrier.layers'), 'The number of layers is not known; the least of the rule in force is taken.'),
    length: wallLength,
    roll: orElse(fact.amount('barrier.rollLength'), onlyWhere(felt, parameter('barrier.roll-length')), 'The length of the roll is not known; the common one of felt is taken.'),
    lap: endLap,
    waste: parameter('barrier.waste'),
  },
  compute: ({ courses, layers, length, roll, lap, waste }) => {
    if (layers === 0) return 'notApplicable'
    const run = courses * layers * length
    const wanted = Math.round(run * (1 + waste))
    const rolls = fewestPieces(wanted, roll, lap)
    if (rolls === undefined) return { reason: 'methodDoesNotHold', why: 'The roll is no longer than the lap.' }
    return {
      value: rolls,
      steps: [
        `${courses} courses × ${layers} × ${exactLengthText(length)} = ${exactLengthText(run)}, with waste ${valueText(wanted, 'length')}`,
        `Rolls of ${exactLengthText(roll)}, each after the first less a lap of ${exactLengthText(lap)}: ${rolls}`,
      ],
      notes: ['Sheets run across the opening and are cut there; what is cut out is not taken off. A roll that is begun goes on into the next course.'],
    }
  },
})
