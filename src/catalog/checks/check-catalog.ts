import type { Assembly } from '../assemble.ts'
import type { CatalogProblem } from '../catalog.ts'
import { checkAmendments } from './amendments.ts'
import { checkJurisdictions } from './jurisdictions.ts'
import { checkReferences } from './references.ts'
import { checkRule } from './rules.ts'

/** Every defect of a catalog that shows without judging an opening. A catalog with any is never put to use. */
export function checkCatalog({ catalog, filed, problems }: Assembly): readonly CatalogProblem[] {
  return [
    ...problems,
    ...filed.rule.flatMap(({ path, entry }) => [...checkPlace(path, entry.rule), ...checkRule(entry, catalog).map((defect) => ({ ...defect, path }))]),
    ...checkReferences(filed, catalog),
    ...checkJurisdictions(filed, catalog),
    ...checkAmendments(filed, catalog),
  ]
}

/** One id, one path: rule "lintel.bearing-length" stands in rules/lintel/bearing-length.yaml. */
function checkPlace(path: string, rule: string): readonly CatalogProblem[] {
  const expected = `rules/${rule.replace('.', '/')}.`
  return path.includes(expected) ? [] : [{ code: 'misplacedFile', path, pointer: '/rule', detail: `rule "${rule}" belongs in ${expected}yaml` }]
}
