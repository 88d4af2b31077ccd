import type { FiledDocuments } from '../catalog/assemble.ts'
import type { CatalogProblem } from '../catalog/catalog.ts'
import { knownRules } from '../catalog/known-rules.ts'
import type { Limit } from '../catalog/limit.ts'
import type { Modification } from '../catalog/modification.ts'
import type { Rule } from '../catalog/rule.ts'
import { everydayQuantities } from '../quantities/index.ts'
import type { Dimension } from '../units/dimension.ts'
import { readQuantity } from '../units/quantity.ts'

type Rules = ReadonlyMap<string, Rule>
type Defect = Omit<CatalogProblem, 'path'>

const dimensions = new Map(everydayQuantities.map(({ id, dimension }) => [id, dimension]))

/** A rule that judges a computed quantity must name one that is computed, or it would never apply; and its limits must be of the same kind. */
export function checkQuantities(filed: Pick<FiledDocuments, 'rule' | 'amendment'>, rules: Rules = rulesIn(filed)): readonly CatalogProblem[] {
  return [
    ...filed.rule.flatMap(({ path, entry }) => checkRule(entry, '').map((defect) => ({ ...defect, path }))),
    ...filed.amendment.flatMap(({ path, entry }) =>
      entry.modifications.flatMap((modification, index) => checkModification(modification, `/modifications/${index}/new`, rules).map((defect) => ({ ...defect, path }))),
    ),
  ]
}

function rulesIn({ rule, amendment }: Pick<FiledDocuments, 'rule' | 'amendment'>): Rules {
  return knownRules({ rules: new Map(rule.map(({ entry }) => [entry.rule, entry])), amendments: amendment.map(({ entry }) => entry) })
}

function checkModification(modification: Modification, pointer: string, rules: Rules): readonly Defect[] {
  if (modification.kind === 'insertion') return checkRule(modification.new, pointer)
  if (modification.kind !== 'substitution' || !('inchPound' in modification.new || 'value' in modification.new || 'values' in modification.new)) return []
  const check = rules.get(modification.target.rule)?.check
  return check && 'quantity' in check ? checkLimit(check.quantity, modification.new, pointer) : []
}

function checkRule({ check, limits }: Rule, pointer: string): readonly Defect[] {
  if (!('quantity' in check)) return []
  if (!dimensions.has(check.quantity)) return [{ code: 'unknownQuantity', pointer: `${pointer}/check/quantity`, detail: `"${check.quantity}" is not a quantity that is computed` }]
  return limits.flatMap((limit, index) => checkLimit(check.quantity, limit, `${pointer}/limits/${index}`))
}

function checkLimit(quantity: string, limit: object, pointer: string): readonly Defect[] {
  const dimension = dimensions.get(quantity)
  return dimension === undefined || isOf(dimension, limit as Limit) ? [] : [{ code: 'unitMismatch', pointer, detail: `${quantity} is a ${dimension ?? 'text'}, and the limit is not` }]
}

function isOf(dimension: Dimension | null, limit: Limit): boolean {
  if (!('inchPound' in limit)) return dimension !== null && !('value' in limit) && !('values' in limit)
  const stated = readQuantity(limit[limit.governing])?.dimension
  return stated === dimension || (stated === 'count' && dimension === 'ratio')
}
