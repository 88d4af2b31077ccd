import type { Comparator } from '../catalog/limit.ts'

type AmountComparator = Extract<Comparator, 'notLessThan' | 'notMoreThan' | 'lessThan' | 'moreThan' | 'equalTo'>

export function isAmountComparator(comparator: Comparator): comparator is AmountComparator {
  return comparator !== 'oneOf' && comparator !== 'noneOf'
}

/** Exact: there is no hidden tolerance. */
export function holds(comparator: AmountComparator, measured: number, limit: number): boolean {
  switch (comparator) {
    case 'notLessThan': return measured >= limit
    case 'notMoreThan': return measured <= limit
    case 'lessThan': return measured < limit
    case 'moreThan': return measured > limit
    case 'equalTo': return measured === limit
  }
}

/** How much is spare (positive) or short (negative). */
export function marginOf(comparator: AmountComparator, measured: number, limit: number): number {
  if (comparator === 'equalTo') return measured === limit ? 0 : -Math.abs(measured - limit)
  return comparator === 'notLessThan' || comparator === 'moreThan' ? measured - limit : limit - measured
}
