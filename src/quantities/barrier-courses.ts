import { exactLengthText } from '../units/quantity-text.ts'
import { endLap, lap, rollWidth, sheet } from './barrier-wall.ts'
import { defineQuantity } from './define.ts'
import { optional, result } from './need.ts'
import { veneerHeight } from './veneer-height.ts'

/** Courses of sheet from the bottom of the veneer to its top, each over the one below. */
export const barrierCourses = defineQuantity({
  id: 'barrier.courses',
  title: 'Courses of barrier over the height of the wall',
  part: 'barrier',
  dimension: 'count',
  formula: '1 + ⌈(height − roll width) / (roll width − lap)⌉',
  appliesTo: sheet,
  needs: { height: veneerHeight, roll: rollWidth, lap, endLap: optional(endLap) },
  compute: ({ height, roll, lap, endLap }) => {
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
