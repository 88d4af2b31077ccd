import type { FiledDocuments } from '../catalog/assemble.ts'
import type { CatalogProblem } from '../catalog/catalog.ts'
import type { Rule } from '../catalog/rule.ts'
import { quantities } from '../quantities/index.ts'

const ids = new Set(quantities.map(({ id }) => id))

/** A rule that judges a computed quantity must name one that is computed; else it would never apply. */
export function checkQuantities(filed: FiledDocuments): readonly CatalogProblem[] {
  return [
    ...filed.rule.flatMap(({ path, entry }) => checkRule(entry, path, '')),
    ...filed.amendment.flatMap(({ path, entry }) =>
      entry.modifications.flatMap((modification, index) => (modification.kind === 'insertion' ? checkRule(modification.new, path, `/modifications/${index}/new`) : [])),
    ),
  ]
}

function checkRule({ check }: Rule, path: string, pointer: string): readonly CatalogProblem[] {
  if (!('quantity' in check) || ids.has(check.quantity)) return []
  return [{ code: 'unknownQuantity', path, pointer: `${pointer}/check/quantity`, detail: `"${check.quantity}" is not a quantity that is computed` }]
}
