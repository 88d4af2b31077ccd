import { facts } from '../../opening/facts.ts'
import { readQuantity } from '../../units/quantity.ts'
import type { CatalogCode } from '../catalog.ts'
import type { Condition } from '../condition.ts'

export interface Defect {
  readonly code: CatalogCode
  readonly pointer: string
  readonly detail: string
}

/** Facts that a condition names must exist, and the values it compares with must be ones they can have. */
export function checkCondition(condition: Condition, pointer: string): readonly Defect[] {
  if ('all' in condition) return condition.all.flatMap((inner, index) => checkCondition(inner, `${pointer}/all/${index}`))
  if ('any' in condition) return condition.any.flatMap((inner, index) => checkCondition(inner, `${pointer}/any/${index}`))
  if ('not' in condition) return checkCondition(condition.not, `${pointer}/not`)
  if ('is' in condition) return checkValues(condition.fact, [condition.is], `${pointer}/is`)
  if ('oneOf' in condition) return checkValues(condition.fact, condition.oneOf, `${pointer}/oneOf`)
  return checkAmount(condition.fact, condition.quantity, `${pointer}/quantity`)
}

/** True, false or listed choices only, so that a misspelled value never makes a rule silently not apply. */
export function checkValues(path: string, values: readonly (string | boolean)[], pointer: string): readonly Defect[] {
  const fact = facts.get(path)
  if (!fact) return [unknownFact(path, pointer)]
  const allowed: readonly (string | boolean)[] | undefined = fact.kind === 'boolean' ? [true, false] : fact.choices
  const wrong = values.filter((value) => allowed !== undefined && !allowed.includes(value))
  if (allowed === undefined && fact.kind !== 'section') return [{ code: 'comparatorMismatch', pointer, detail: `"${path}" is an amount; compare it with a quantity` }]
  return wrong.map((value) => ({ code: 'unknownFact', pointer, detail: `"${String(value)}" is not a value of ${path}. Allowed: ${allowed?.join(', ') ?? ''}` }))
}

function checkAmount(path: string, text: string, pointer: string): readonly Defect[] {
  const fact = facts.get(path)
  if (!fact) return [unknownFact(path, pointer)]
  const quantity = readQuantity(text)
  if (quantity && quantity.dimension === fact.dimension) return []
  return [{ code: 'unitMismatch', pointer, detail: `"${text}" is not a ${fact.dimension ?? fact.kind}, as "${path}" is` }]
}

export function unknownFact(path: string, pointer: string): Defect {
  return { code: 'unknownFact', pointer, detail: `"${path}" is not a fact of an opening; the list of facts has them all` }
}
