import { exactLengthText } from '../units/quantity-text.ts'
import { greatest, onlyWhere } from './choose.ts'
import { defineQuantity } from './define.ts'
import { choiceIs, fact, limit, optional, parameter, result, type Need } from './need.ts'
import { veneerHeight } from './veneer-height.ts'

const sheet = choiceIs('barrier.kind', 'no15Felt', 'buildingPaper', 'buildingWrap')
const felt = choiceIs('barrier.kind', 'no15Felt')
const paperOrWrap = choiceIs('barrier.kind', 'buildingPaper', 'buildingWrap')
const widthOfPaper = onlyWhere(choiceIs('barrier.kind', 'no15Felt', 'buildingPaper'), parameter('barrier.roll-width'))

const lap = lapOf('barrier.horizontal-lap', 'barrier.horizontalLap')
const endLap = optional(lapOf('barrier.vertical-lap', 'barrier.verticalLap'))

/** Courses of felt or paper from the bottom of the veneer to its top, each over the one below. */
export const barrierCourses = defineQuantity({
  id: 'barrier.courses',
  title: 'Courses of barrier over the height of the wall',
  part: 'barrier',
  dimension: 'count',
  formula: '1 + ⌈(height − roll width) / (roll width − lap)⌉',
  appliesTo: sheet,
  needs: { height: veneerHeight, roll: optional(widthOfPaper), lap, endLap },
  compute: ({ height, roll, lap, endLap }) => {
    if (roll === undefined) return { reason: 'methodDoesNotHold', why: 'Wraps come in rolls of many widths; count the courses from the roll on site.' }
    if (lap >= roll) return { reason: 'methodDoesNotHold', why: 'The lap is as wide as the roll.' }
    const further = Math.max(0, Math.ceil((height - roll) / (roll - lap)))
    return {
      value: 1 + further,
      steps: [`${exactLengthText(height)} high: 1 course of ${exactLengthText(roll)} + ${further} of ${exactLengthText(roll - lap)} showing`],
      notes: ['For one layer; the opening is not taken off.', ...(endLap === undefined ? [] : [`Lap sheets ${exactLengthText(endLap)} where they meet end to end.`])],
    }
  },
})

/** Height of roll that goes into the horizontal laps, in nanometres. */
export const barrierLapLength = defineQuantity({
  id: 'barrier.lap-length',
  title: 'Barrier lost in horizontal laps',
  part: 'barrier',
  dimension: 'length',
  formula: '(courses − 1) × lap',
  appliesTo: sheet,
  needs: { courses: result('barrier.courses'), lap },
  compute: ({ courses, lap }) => ({
    value: (courses - 1) * lap,
    steps: [`${courses - 1} × ${exactLengthText(lap)} = ${exactLengthText((courses - 1) * lap)}`],
  }),
})

/** Felt has a rule of its own; from 2018 on editions differ on which other sheets are bound. */
function lapOf(rule: string, described: string): Need<number> {
  return greatest(onlyWhere(felt, limit(rule)), onlyWhere(paperOrWrap, limit(`${rule}-other`)), fact.amount(described))
}
