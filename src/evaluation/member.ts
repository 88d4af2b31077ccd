import type { Comparator } from '../catalog/limit.ts'
import type { Outcome, Reason } from '../catalog/rule.ts'
import type { Reading } from '../opening/opening.ts'
import { holds, isAmountComparator, marginOf } from './compare.ts'
import type { Requirement } from './requirement.ts'

/** How one reading stands against the requirement. */
export interface MemberResult {
  readonly outcome: Extract<Outcome, 'pass' | 'fail' | 'notDetermined'>
  readonly reason: Reason | null
  /** What was judged; null where nothing was read. */
  readonly reading: Reading | null
  /** How much is to spare (positive) or short (negative), in base units; null where no amounts were compared. */
  readonly spare: number | null
  readonly withinResolution: boolean
  readonly differsByUnit: boolean
}

/** One end of a rule; where the rule does not apply to that end, it says so. */
export type EndResult = Omit<MemberResult, 'outcome'> & { readonly outcome: Outcome }

type Known = Exclude<Requirement, { kind: 'unknown' }>

export function judgeReading(reading: Reading, requirement: Known, comparator: Comparator): MemberResult {
  if (reading.conflictsWith) return undecided('conflictingEvidence', reading)
  return requirement.kind === 'values' ? judgeChoice(reading, requirement.values, comparator) : judgeAmount(reading, requirement, comparator)
}

function judgeChoice(reading: Reading, values: readonly (string | boolean)[], comparator: Comparator): MemberResult {
  const listed = typeof reading.value !== 'object' && values.includes(reading.value)
  const passes = comparator === 'noneOf' ? !listed : listed
  return { ...undecided(null, reading), outcome: passes ? 'pass' : 'fail' }
}

function judgeAmount(reading: Reading, { governing, other, selfContradictory }: Extract<Known, { kind: 'amount' }>, comparator: Comparator): MemberResult {
  const { value, resolution = 0 } = reading
  if (typeof value !== 'object' || !isAmountComparator(comparator)) throw new Error('a checked rule compares an amount with an amount')
  const passes = holds(comparator, value.amount, governing.amount)
  const differsByUnit = holds(comparator, value.amount, other.amount) !== passes
  if (selfContradictory && differsByUnit) return { ...undecided('ruleUndecided', reading), differsByUnit }
  const straddles = (tape: number) => holds(comparator, value.amount + tape, governing.amount) !== passes
  return {
    outcome: passes ? 'pass' : 'fail',
    reason: null,
    reading,
    spare: marginOf(comparator, value.amount, governing.amount),
    withinResolution: resolution > 0 && (straddles(resolution) || straddles(-resolution)),
    differsByUnit,
  }
}

export function undecided(reason: Reason | null, reading: Reading | null): MemberResult {
  return { outcome: 'notDetermined', reason, reading, spare: null, withinResolution: false, differsByUnit: false }
}
