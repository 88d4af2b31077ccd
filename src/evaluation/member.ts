import type { Comparator } from '../catalog/limit.ts'
import type { Outcome, Reason } from '../catalog/rule.ts'
import type { Reading } from '../opening/opening.ts'
import type { Quantity } from '../units/quantity.ts'
import { quantityText } from '../units/quantity-text.ts'
import { holds, isAmountComparator, marginOf } from './compare.ts'
import type { Finding } from './document.ts'
import type { Requirement } from './requirement.ts'

/** How one reading stands against the requirement. */
export interface MemberResult {
  readonly outcome: Extract<Outcome, 'pass' | 'fail' | 'notDetermined'>
  readonly reason: Reason | null
  readonly measured: Finding['measured']
  readonly margin: Finding['margin']
  /** In base units, for choosing the worst end. */
  readonly spare: number | null
  readonly withinResolution: boolean
  readonly differsByUnit: boolean
}

/** One end of a rule; where the rule does not apply to that end, it says so. */
export type EndResult = Omit<MemberResult, 'outcome'> & { readonly outcome: Outcome }

type Known = Exclude<Requirement, { kind: 'unknown' }>

export function judgeReading(reading: Reading | undefined, requirement: Known, comparator: Comparator): MemberResult {
  if (!reading) return undecided('missing', null)
  if (reading.conflictsWith) return undecided('conflictingEvidence', measuredOf(reading))
  return requirement.kind === 'values' ? judgeChoice(reading, requirement.values, comparator) : judgeAmount(reading, requirement, comparator)
}

function judgeChoice(reading: Reading, values: readonly (string | boolean)[], comparator: Comparator): MemberResult {
  const listed = typeof reading.value !== 'object' && values.includes(reading.value)
  const passes = comparator === 'noneOf' ? !listed : listed
  return { ...undecided(null, measuredOf(reading)), outcome: passes ? 'pass' : 'fail' }
}

function judgeAmount(reading: Reading, { governing, other, selfContradictory }: Extract<Known, { kind: 'amount' }>, comparator: Comparator): MemberResult {
  const { value, resolution = 0 } = reading
  if (typeof value !== 'object' || !isAmountComparator(comparator)) throw new Error('a checked rule compares an amount with an amount')
  const passes = holds(comparator, value.amount, governing.amount)
  const differsByUnit = holds(comparator, value.amount, other.amount) !== passes
  if (selfContradictory && differsByUnit) return { ...undecided('ruleUndecided', measuredOf(reading)), differsByUnit }
  const spare = marginOf(comparator, value.amount, governing.amount)
  const straddles = (tape: number) => holds(comparator, value.amount + tape, governing.amount) !== passes
  return {
    outcome: passes ? 'pass' : 'fail',
    reason: null,
    measured: measuredOf(reading),
    margin: bothTexts({ dimension: value.dimension, amount: spare }),
    spare,
    withinResolution: resolution > 0 && (straddles(resolution) || straddles(-resolution)),
    differsByUnit,
  }
}

export function undecided(reason: Reason | null, measured: Finding['measured']): MemberResult {
  return { outcome: 'notDetermined', reason, measured, margin: null, spare: null, withinResolution: false, differsByUnit: false }
}

function measuredOf({ value, text }: Reading): Finding['measured'] {
  if (typeof value === 'boolean') return { text: value ? 'yes' : 'no', inchPound: null, si: null, nanometres: null }
  if (typeof value !== 'object') return { text, inchPound: null, si: null, nanometres: null }
  return { text, ...bothTexts(value), nanometres: value.dimension === 'length' ? value.amount : null }
}

function bothTexts(quantity: Quantity) {
  return { inchPound: quantityText(quantity, 'inchPound'), si: quantityText(quantity, 'si') }
}
