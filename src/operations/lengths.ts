import { z } from 'zod'
import type { FactDefinition } from '../opening/fact.ts'
import { settleValue, type SettleCode } from '../opening/settle.ts'
import type { Checked } from '../opening/problem.ts'
import type { LengthUnit } from '../units/length-text.ts'
import { computedLengthText } from '../units/quantity-text.ts'

export const lengthView = z.strictObject({ inchPound: z.string(), si: z.string(), nanometres: z.number() }).meta({ id: 'LengthView' })

export function viewOfLength(nanometres: number): z.infer<typeof lengthView> {
  return { inchPound: computedLengthText(nanometres, 'inchPound'), si: computedLengthText(nanometres, 'si'), nanometres }
}

const anyLength: FactDefinition = { title: 'Length', help: '', kind: 'quantity', dimension: 'length', perEnd: false, between: ['0 in', '3000 ft'], from: 'detailReview' }

/** Nanometers of a length as people write it. */
export function readLengthInput(wire: unknown, path: readonly (string | number)[], lengthUnit: LengthUnit | undefined): Checked<number, SettleCode> {
  const settled = settleValue(anyLength, wire, path, lengthUnit ? { lengthUnit } : {})
  if (!settled.ok) return settled
  return { ok: true, value: typeof settled.value.value === 'object' ? settled.value.value.amount : 0 }
}
