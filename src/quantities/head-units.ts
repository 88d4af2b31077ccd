import { exactLengthText } from '../units/quantity-text.ts'
import { figuresText } from './both-systems.ts'
import { brick, brickThickness } from './brick-unit.ts'
import { firstKnown } from './choose.ts'
import { coursesIn, unitsAcross } from './coursing.ts'
import { defineQuantity } from './define.ts'
import { choiceIs, fact, optional, result } from './need.ts'

const turnedCourse = choiceIs('wall.veneer.headCourse', 'soldier', 'rowlock')
const arched: readonly (string | undefined)[] = ['jackArch', 'segmentalArch', 'semicircularArch', 'otherArch']

/** Soldiers or rowlocks side by side over the opening, each with a joint. */
export const headUnits = defineQuantity({
  id: 'coursing.head-units',
  title: 'Soldier or rowlock bricks over the head',
  part: 'head',
  dimension: 'count',
  formula: 'opening width / (brick height + joint), rounded up',
  appliesTo: turnedCourse,
  needs: {
    course: fact.choice('wall.veneer.headCourse'), width: fact.amount('opening.width'), shape: optional(fact.choice('opening.headShape')), brick,
    thickness: optional(brickThickness), lintel: optional(firstKnown(fact.amount('head.support.length'), result('lintel.length'))),
  },
  compute: ({ course, width, shape, brick, thickness, lintel }) => {
    if (arched.includes(shape)) return { reason: 'methodDoesNotHold', why: 'The bricks of an arch stand to its center and taper; count them on its drawing.' }
    const across = unitsAcross(width, brick)
    const rise = course === 'soldier' ? brick.length : thickness
    return {
      ...across,
      notes: [
        ...across.notes,
        ...(lintel === undefined ? [] : [`Over the whole lintel, ${exactLengthText(lintel)}, they are ${unitsAcross(lintel, brick).value}.`]),
        ...(rise === undefined ? [] : [riseNote(rise + brick.joint, brick.course)]),
      ],
    }
  },
})

function riseNote(rise: number, course: number): string {
  const courses = coursesIn(rise, course)
  return `They stand ${exactLengthText(rise)} high with their joint, ${figuresText(courses)} courses${Number.isInteger(courses) ? '' : ': the courses beside them do not meet their top'}.`
}
