import { exactLengthText } from '../units/quantity-text.ts'

/** Lengths added up, and the line that shows the addition. */
export function added(...lengths: readonly number[]): { readonly value: number; readonly steps: readonly [string] } {
  const value = lengths.reduce((sum, length) => sum + length, 0)
  return { value, steps: [`${lengths.map(exactLengthText).join(' + ')} = ${exactLengthText(value)}`] }
}
