import { readQuantity, type Quantity } from '../units/quantity.ts'
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
  const [is, was] = [figuresOf(next.limit), figuresOf(than.limit)]
  if (is.length === 0 || was.length === 0) return allowsNoOther(next, than)
  return is.every((figure) => was.every((other) => isAmountAsStrict(figure, next.comparator, other, than.comparator)))
}

/** The figure that governs; both where the text contradicts itself, since either may turn out to govern. */
function figuresOf(limit: Limit): readonly Quantity[] {
  if (!('inchPound' in limit)) return []
  const printed = limit.printedConflict === undefined ? [limit[limit.governing]] : [limit.inchPound, limit.si]
  return printed.map(readQuantity).filter((figure) => figure !== undefined)
}

function isAmountAsStrict(is: Quantity, next: Comparator, was: Quantity, than: Comparator): boolean {
  if (is.dimension !== was.dimension) return false
  if (floors.includes(than)) return floors.includes(next) && isPast(is.amount - was.amount, next, than)
  if (ceilings.includes(than)) return ceilings.includes(next) && isPast(was.amount - is.amount, next, than)
  return next === than && is.amount === was.amount
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
