import { amendRules } from '../amend.ts'
import type { FiledDocuments } from '../assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog.ts'
import { pathTo, publishedRules, withReferences } from '../resolve.ts'
import { checkRule } from './rules.ts'

/** Resolves every amended place on every date on which something changes there, and reports what an amendment cannot do. */
export function checkAmendments(filed: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  const fileOf = new Map(filed.amendment.map(({ path, entry }) => [entry.amendment, path]))
  const problems = filed.amendment.flatMap(({ entry }) => {
    const path = pathTo(catalog, entry.jurisdiction) ?? []
    const dates = catalog.amendments.filter(({ jurisdiction }) => path.includes(jurisdiction)).map(({ effectiveFrom }) => effectiveFrom)
    return entry.amends.editions.flatMap((edition) => {
      const editions = withReferences(catalog, { publication: entry.amends.publication, edition })
      return [...new Set(dates)].flatMap((date) => amendRules(catalog, path, editions, date, publishedRules(catalog, { adoption: undefined, editions }, date)).problems)
    })
  })
  const found = [...new Map(problems.map((problem) => [`${problem.path}${problem.pointer}${problem.code}${problem.detail}`, problem])).values()]
  return [...found.map((problem) => ({ ...problem, path: fileOf.get(problem.path) ?? problem.path })), ...checkInsertions(filed, catalog)]
}

function checkInsertions(filed: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  return filed.amendment.flatMap(({ path, entry }) =>
    entry.modifications.flatMap((modification, index) =>
      modification.kind === 'insertion' ? checkRule(modification.new, catalog).map((defect) => ({ ...defect, path, pointer: `/modifications/${index}/new${defect.pointer}` })) : [],
    ),
  )
}
