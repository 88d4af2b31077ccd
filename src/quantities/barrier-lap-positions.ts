import { exactLengthText } from '../units/quantity-text.ts'
import { lap, rollWidth, sheet } from './barrier-wall.ts'
import { greatest } from './choose.ts'
import { defineQuantity } from './define.ts'
import { fact, limit, optional, result } from './need.ts'
import type { QuantityTable } from './result.ts'
import { footToSill, veneerHeight } from './veneer-height.ts'

interface Course {
  readonly number: number
  readonly bottom: number
  readonly top: number
}

/** Levels from the base of the wall. */
interface Levels {
  readonly sill: number
  readonly head: number
  /** Top edge of the head flashing on the backing; undefined where its upstand is not known. */
  readonly flashing: number | undefined
}

/** Lower edge of each course of barrier, with what it meets at this opening. */
export const barrierLapPositions = defineQuantity({
  id: 'barrier.lap-positions',
  title: 'Lower edges of the barrier courses, up from the base of the wall',
  part: 'barrier',
  dimension: 'length',
  formula: '(course − 1) × (roll width − lap)',
  appliesTo: sheet,
  needs: {
    courses: result('barrier.courses'),
    wall: veneerHeight,
    roll: rollWidth,
    lap,
    footToSill,
    opening: fact.amount('opening.height'),
    upstand: optional(greatest(limit('flashing.upstand'), fact.amount('head.flashing.upstand'))),
    overFlashing: optional(greatest(limit('flashing.barrier-lap'), fact.amount('head.flashing.barrierLap'))),
  },
  compute: ({ courses, wall, roll, lap, footToSill, opening, upstand, overFlashing }) => {
    const head = footToSill + opening
    const levels = { sill: footToSill, head, flashing: upstand === undefined ? undefined : head + upstand }
    const all = coursesOf(courses, roll, lap, wall)
    return {
      value: all.map(({ bottom }) => bottom),
      steps: [`Every ${exactLengthText(roll)} − ${exactLengthText(lap)} = ${exactLengthText(roll - lap)}; sill at ${exactLengthText(levels.sill)}, head at ${exactLengthText(head)}`],
      tables: [tableOf(all, levels)],
      notes: ['Each course laps over the one below it. Start at the bottom, and leave the sheet loose round the opening until its flashing is in.', ...headNotes(all, levels, overFlashing)],
    }
  },
})

function coursesOf(count: number, roll: number, lap: number, wall: number): readonly Course[] {
  return Array.from({ length: count }, (_, index) => {
    const bottom = index * (roll - lap)
    return { number: index + 1, bottom, top: Math.min(bottom + roll, wall) }
  })
}

/** What the crew does with a course at this opening. */
function atOpening({ bottom, top }: Course, { sill, head, flashing }: Levels): string {
  const beside = top > sill && bottom < head
  const said = [
    ...(bottom < sill && top >= sill ? ['under the sill flashing'] : []),
    ...(beside ? ['cut at the jambs'] : []),
    ...(flashing !== undefined && top > head && top <= flashing ? ['behind the head flashing'] : []),
    ...(flashing !== undefined && top > flashing && bottom < flashing ? ['over the head flashing'] : []),
  ]
  if (said.length > 0) return said.join('; ')
  return top <= sill ? 'below the opening' : 'above the opening'
}

function headNotes(courses: readonly Course[], { head, flashing }: Levels, asked: number | undefined): readonly string[] {
  if (flashing === undefined) return ['How far the head flashing turns up is not known, so the course that laps over it is not told.']
  const over = courses.find(({ top, bottom }) => top > flashing && bottom < flashing)
  if (!over) return ['The head flashing turns up past the top of the barrier; no course laps over it.']
  const covered = flashing - Math.max(over.bottom, head)
  const laps = `Course ${over.number} laps over the head flashing by ${exactLengthText(covered)}`
  if (asked === undefined || covered >= asked) return [`${laps}.`]
  return [`${laps}, less than the ${exactLengthText(asked)} wanted: lap a strip of barrier under it and over the flashing.`]
}

function tableOf(courses: readonly Course[], levels: Levels): QuantityTable {
  return {
    title: 'Courses of barrier from the base of the wall up; negative is below the sill or the head',
    columns: [
      { title: 'Course', dimension: 'count' }, { title: 'Lower edge', dimension: 'length' }, { title: 'Upper edge', dimension: 'length' },
      { title: 'Lower edge from the sill', dimension: 'length' }, { title: 'Lower edge from the head', dimension: 'length' }, { title: 'At the opening', dimension: null },
    ],
    rows: courses.map((course) => [course.number, course.bottom, course.top, course.bottom - levels.sill, course.bottom - levels.head, atOpening(course, levels)]),
  }
}
