import type { Amendment, Modification } from '../amendment.ts'
import type { FiledDocuments } from '../assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog.ts'
import type { Limit } from '../limit.ts'
import type { Rule } from '../rule.ts'
import type { Defect } from './conditions.ts'
import { checkRequirement, checkRule } from './rules.ts'

/** What shows in an amendment by itself, before it meets the rules that it changes. */
export function checkModifications({ amendment: amendments }: FiledDocuments, catalog: Catalog): readonly CatalogProblem[] {
  return amendments.flatMap(({ path, entry }) =>
    [
      ...checkAmended(entry, catalog),
      ...checkSuperseded(entry, catalog),
      ...entry.modifications.flatMap((modification, index) => [
        ...checkId(modification, entry.modifications.slice(0, index), `/modifications/${index}`),
        ...checkNew(modification, entry, `/modifications/${index}/new`, catalog),
      ]),
    ].map((defect) => ({ ...defect, path })),
  )
}

function checkAmended({ amends: { publication, editions } }: Amendment, { publications }: Catalog): readonly Defect[] {
  const known = publications.get(publication)?.editions.map(({ edition }) => edition) ?? []
  const unknown = editions.filter((edition) => !known.includes(edition))
  return unknown.map((edition) => ({ code: 'unknownPublication', pointer: '/amends/editions', detail: `"${publication}" has no edition "${edition}"` }))
}

function checkSuperseded({ jurisdiction, supersedes }: Amendment, { amendments }: Catalog): readonly Defect[] {
  const own = amendments.filter((other) => other.jurisdiction === jurisdiction).map(({ amendment }) => amendment)
  return supersedes.flatMap((id, index): readonly Defect[] =>
    own.includes(id) ? [] : [{ code: 'unknownTarget', pointer: `/supersedes/${index}`, detail: `"${id}" is not an amendment of ${jurisdiction}` }],
  )
}

function checkId({ modification }: Modification, earlier: readonly Modification[], pointer: string): readonly Defect[] {
  if (earlier.every((other) => other.modification !== modification)) return []
  return [{ code: 'duplicate', pointer: `${pointer}/modification`, detail: `modification "${modification}" is already in this amendment. Ids are used once.` }]
}

function checkNew(modification: Modification, { amends }: Amendment, pointer: string, catalog: Catalog): readonly Defect[] {
  if (modification.kind === 'insertion') return checkRule(modification.new, catalog).map((defect) => ({ ...defect, pointer: `${pointer}${defect.pointer}` }))
  if (modification.kind !== 'substitution' || 'text' in modification.new) return []
  const rule = ruleNamed(modification.target.rule, catalog)
  const current = rule && (limitFor(rule, amends) ?? rule.limits.at(-1))
  return current ? checkRequirement(rule, { ...citationOf(current), comparator: current.comparator, ...modification.new }, pointer, catalog) : []
}

/** A rule of the catalog, or one that an amendment inserts. */
function ruleNamed(id: string, { rules, amendments }: Catalog): Rule | undefined {
  const inserted = amendments.flatMap(({ modifications }) => modifications.flatMap((one) => (one.kind === 'insertion' ? [one.new] : [])))
  return rules.get(id) ?? inserted.find(({ rule }) => rule === id)
}

function limitFor({ limits }: Rule, amends: Amendment['amends']): Limit | undefined {
  return limits.find(({ publication, editions }) => publication === amends.publication && editions.some((edition) => amends.editions.includes(edition)))
}

function citationOf({ publication, editions, evidence, lastReviewed }: Limit) {
  return { publication, editions, evidence, lastReviewed }
}
