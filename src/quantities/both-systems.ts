import { computedLengthText, quantityText } from '../units/quantity-text.ts'
import type { Quantity } from '../units/quantity.ts'

/** A computed amount in both unit systems, the inch-pound one first: "6.75 /ft2 (72.66 /m2)". */
export function inBothSystems({ dimension, amount }: Quantity): string {
  if (dimension === 'length') return `${computedLengthText(Math.round(amount), 'inchPound')} (${computedLengthText(Math.round(amount), 'si')})`
  return `${quantityText({ dimension, amount }, 'inchPound')} (${quantityText({ dimension, amount }, 'si')})`
}

/** A count or a ratio to four figures. */
export function figuresText(count: number): string {
  return quantityText({ dimension: 'count', amount: count }, 'inchPound')
}
