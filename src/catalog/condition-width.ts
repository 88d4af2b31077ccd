import { readQuantity } from '../units/quantity.ts'
import type { Condition } from './condition.ts'

/** More comparisons than any condition of a code needs; one that is built to need more is not told. */
const mostComparisons = 10_000

/**
 * Whether a rule applies wherever it did before; no condition means everywhere. It follows the form of the conditions, so
 * that it errs on the side of "cannot be told", which is no.
 */
export function appliesAsWidely(next: Condition | undefined, than: Condition | undefined): boolean {
  if (next === undefined) return true
  return than !== undefined && isAsWide(next, than, { left: mostComparisons })
}

function isAsWide(next: Condition, than: Condition, comparisons: { left: number }): boolean {
  comparisons.left -= 1
  if (comparisons.left < 0) return false
  if ('any' in than) return than.any.every((one) => isAsWide(next, one, comparisons))
  if ('all' in next) return next.all.every((one) => isAsWide(one, than, comparisons))
  if ('all' in than && than.all.some((one) => isAsWide(next, one, comparisons))) return true
  if ('any' in next) return next.any.some((one) => isAsWide(one, than, comparisons))
  if ('not' in next) return 'not' in than && isAsWide(than.not, next.not, comparisons)
  return 'fact' in than && factAsWide(next, than)
}

type OfFact = Extract<Condition, { fact: string }>

function factAsWide(next: OfFact, than: OfFact): boolean {
  if (next.fact !== than.fact) return false
  if ('comparator' in next || 'comparator' in than) return 'comparator' in next && 'comparator' in than && boundAsWide(next, than)
  const allowed = valuesOf(next)
  return valuesOf(than).every((value) => allowed.includes(value))
}

type Bound = Extract<OfFact, { comparator: string }>
type Values = Exclude<OfFact, Bound>

function boundAsWide(next: Bound, than: Bound): boolean {
  const [is, was] = [next, than].map(({ quantity }) => readQuantity(quantity))
  if (!is || is.dimension !== was?.dimension || isFloor(next) !== isFloor(than)) return false
  const loosened = isFloor(next) ? was.amount - is.amount : is.amount - was.amount
  return loosened > 0 || (loosened === 0 && (!isStrict(next) || isStrict(than)))
}

function valuesOf(condition: Values): readonly (boolean | string)[] {
  return 'is' in condition ? [condition.is] : condition.oneOf
}

function isFloor({ comparator }: Bound): boolean {
  return comparator === 'notLessThan' || comparator === 'moreThan'
}

function isStrict({ comparator }: Bound): boolean {
  return comparator === 'lessThan' || comparator === 'moreThan'
}
