import { readQuantity } from '../units/quantity.ts'
import type { Comparator, Limit } from './limit.ts'

interface Requirement {
  readonly limit: Limit
  readonly comparator: Comparator
}

const floors: readonly Comparator[] = ['notLessThan', 'moreThan']
const ceilings: readonly Comparator[] = ['notMoreThan', 'lessThan']
const strict: readonly Comparator[] = ['moreThan', 'lessThan']

/** Whether all that satisfies one requirement satisfies the other. What cannot be compared is not shown to be as strict. */
export function isAtLeastAsStrict(next: Requirement, than: Requirement): boolean {
  const [is, was] = [next, than].map(({ limit }) => ('inchPound' in limit ? readQuantity(limit[limit.governing]) : undefined))
  if (!is || !was) return allowsNoOther(next, than)
  if (is.dimension !== was.dimension) return false
  if (floors.includes(than.comparator)) return floors.includes(next.comparator) && isPast(is.amount - was.amount, next.comparator, than.comparator)
  if (ceilings.includes(than.comparator)) return ceilings.includes(next.comparator) && isPast(was.amount - is.amount, next.comparator, than.comparator)
  return next.comparator === than.comparator && is.amount === was.amount
}

function isPast(raisedBy: number, next: Comparator, than: Comparator): boolean {
  return raisedBy > 0 || (raisedBy === 0 && (strict.includes(next) || !strict.includes(than)))
}

/** Of listed values, an allowing list may only shrink and a barring list only grow. */
function allowsNoOther(next: Requirement, than: Requirement): boolean {
  const [is, was] = [next, than].map(({ limit }) => valuesOf(limit))
  if (!is || !was || (next.comparator === 'noneOf') !== (than.comparator === 'noneOf')) return false
  return next.comparator === 'noneOf' ? was.every((value) => is.includes(value)) : is.every((value) => was.includes(value))
}

function valuesOf(limit: Limit): readonly (string | boolean)[] | undefined {
  if ('value' in limit) return [limit.value]
  return 'values' in limit ? limit.values : undefined
}
