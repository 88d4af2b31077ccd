import { exactLengthText } from '../units/quantity-text.ts'
import { defineQuantity, type Computation } from './define.ts'
import { headPitches, sillPitches, type Pitches } from './joint-pitch.ts'
import { result } from './need.ts'
import { headJoints, weepsIn } from './weep-grid.ts'
import { codeSpacing, headSpacing, sillSpacing, type Spacing } from './weep-spacing.ts'

export interface Course {
  readonly length: number
  readonly pitches: Pitches
  readonly spacing: Spacing
}

type Computed = Extract<Computation, { readonly value: unknown }>

export const weepFormula = 'fewest head joints with one inside each end dam and none farther from the next than allowed'
const head = { length: result('flashing.head-pan-length'), pitches: headPitches }
const gridNote = 'The left end dam is taken to stand in a head joint of the course on the flashing.'

export const headWeepSpacingLimit = defineQuantity({
  id: 'weeps.head-spacing-limit',
  title: 'Greatest weep spacing at the head',
  part: 'head',
  dimension: 'length',
  formula: 'least of the code and the recommendation for the kind of weep',
  needs: { spacing: headSpacing },
  compute: ({ spacing: { amount, longest } }) => ({ value: amount, notes: longest < amount ? ['The weeps have to be closer than this; exactly so much is too far.'] : [] }),
})

export const headWeepCount = defineQuantity({
  id: 'weeps.head-count',
  title: 'Weeps over the head',
  part: 'head',
  dimension: 'count',
  formula: weepFormula,
  needs: { ...head, spacing: headSpacing },
  compute: (course) => laid(course, (weeps) => ({ value: weeps.length })),
})

/** The count that the code alone asks for; less is against the law, not only against good practice. */
export const headWeepCountByCode = defineQuantity({
  id: 'weeps.head-count-code',
  title: 'Weeps over the head, by the code alone',
  part: 'head',
  dimension: 'count',
  formula: weepFormula,
  needs: { ...head, spacing: codeSpacing },
  compute: (course) => laid(course, (weeps) => ({ value: weeps.length })),
})

export const sillWeepCount = defineQuantity({
  id: 'weeps.sill-count',
  title: 'Weeps under the sill',
  part: 'sill',
  dimension: 'count',
  formula: `${weepFormula}; under a slab, ⌈length / spacing⌉ + 1`,
  needs: { length: result('sill.flashing-length'), pitches: sillPitches, spacing: sillSpacing },
  compute: (course) => (course.pitches.length === 0 ? underSlab(course, (weeps) => ({ value: weeps.length })) : laid(course, (weeps) => ({ value: weeps.length }))),
})

/** Lays the weeps out in the head joints of a course. */
export function laid(course: Course, answer: (weeps: readonly number[], joints: readonly number[]) => Pick<Computed, 'value' | 'tables'>): Computation {
  if (course.pitches.length === 0) return { reason: 'methodDoesNotHold', why: 'Stones and arch rings have no regular head joints; place the weeps on the drawing.' }
  const joints = headJoints(course.length, course.pitches)
  if (joints.length === 0) return { reason: 'methodDoesNotHold', why: 'No head joint falls between the end dams.' }
  const weeps = weepsIn(joints, course.spacing.longest)
  if (!weeps) return { reason: 'methodDoesNotHold', why: `The head joints are farther apart than the ${exactLengthText(course.spacing.amount)} allowed.` }
  return { ...answer(weeps, joints), steps: [stepOf(course), `${weeps.length} weeps in ${exactLengthText(course.length)}`], notes: [gridNote] }
}

function stepOf({ pitches, spacing }: Course): string {
  const joints = `Head joints every ${pitches.map(exactLengthText).join(' and ')}`
  const [pitch, ...others] = pitches
  if (pitch === undefined || others.length > 0) return joints
  const every = Math.floor(spacing.longest / pitch)
  return `${joints}; ${exactLengthText(spacing.amount)} allows a weep in every ${every === 1 ? '' : `${every} joints, `}${exactLengthText(every * pitch)}`
}

/** Weeps under a slab stand in its bed joint, wherever they are wanted. */
export function underSlab({ length, spacing }: Course, answer: (weeps: readonly number[]) => Pick<Computed, 'value' | 'tables'>): Computation {
  const gaps = Math.ceil(length / spacing.longest)
  const weeps = Array.from({ length: gaps + 1 }, (_, index) => Math.round((index * length) / gaps))
  return { ...answer(weeps), steps: [`⌈${exactLengthText(length)} / ${exactLengthText(spacing.amount)}⌉ + 1 = ${gaps + 1}`], notes: ['In the bed joint under the sill, with one at each end.'] }
}
