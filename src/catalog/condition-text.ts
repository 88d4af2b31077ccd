import type { Condition } from './condition.ts'
import { tradeUnits } from './limit-text.ts'

const words = { notLessThan: 'is at least', notMoreThan: 'is at most', lessThan: 'is less than', moreThan: 'is more than' } as const

/** A condition as a sentence part: "head.support.kind is one of looseSteelAngle, shelfAngle and opening.width is more than 16 in". */
export function conditionText(condition: Condition): string {
  if ('all' in condition) return condition.all.map(bracketed).join(' and ')
  if ('any' in condition) return condition.any.map(bracketed).join(' or ')
  if ('not' in condition) return `not (${conditionText(condition.not)})`
  if ('is' in condition) return `${condition.fact} is ${String(condition.is)}`
  if ('oneOf' in condition) return `${condition.fact} is one of ${condition.oneOf.join(', ')}`
  return `${condition.fact} ${words[condition.comparator]} ${tradeUnits(condition.quantity)}`
}

function bracketed(condition: Condition): string {
  return 'all' in condition || 'any' in condition ? `(${conditionText(condition)})` : conditionText(condition)
}
