import type { FiledDocuments } from '../catalog/assemble.ts'
import type { CatalogProblem } from '../catalog/catalog.ts'
import type { Limit } from '../catalog/limit.ts'
import type { Rule } from '../catalog/rule.ts'
import { quantities } from '../quantities/index.ts'
import type { Dimension } from '../units/dimension.ts'
import { readQuantity } from '../units/quantity.ts'

const dimensions = new Map(quantities.map(({ id, dimension }) => [id, dimension]))

/** A rule that judges a computed quantity must name one that is computed, or it would never apply; and its limits must be of the same kind. */
export function checkQuantities(filed: FiledDocuments): readonly CatalogProblem[] {
  return [
    ...filed.rule.flatMap(({ path, entry }) => checkRule(entry, path, '')),
    ...filed.amendment.flatMap(({ path, entry }) =>
      entry.modifications.flatMap((modification, index) => (modification.kind === 'insertion' ? checkRule(modification.new, path, `/modifications/${index}/new`) : [])),
    ),
  ]
}

function checkRule({ check, limits }: Rule, path: string, pointer: string): readonly CatalogProblem[] {
  if (!('quantity' in check)) return []
  const dimension = dimensions.get(check.quantity)
  if (dimension === undefined) return [{ code: 'unknownQuantity', path, pointer: `${pointer}/check/quantity`, detail: `"${check.quantity}" is not a quantity that is computed` }]
  return limits.flatMap((limit, index) => (isOf(dimension, limit) ? [] : [{ code: 'unitMismatch', path, pointer: `${pointer}/limits/${index}`, detail: `${check.quantity} is a ${dimension ?? 'text'}, and the limit is not` }]))
}

function isOf(dimension: Dimension | null, limit: Limit): boolean {
  if (!('inchPound' in limit)) return dimension !== null && !('value' in limit) && !('values' in limit)
  const stated = readQuantity(limit[limit.governing])?.dimension
  return stated === dimension || (stated === 'count' && dimension === 'ratio')
}
