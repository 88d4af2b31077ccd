import type { Amendment } from '../amendment.ts'
import type { Filed } from '../assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog.ts'
import { knownRules } from '../known-rules.ts'
import type { Limit } from '../limit.ts'
import type { Modification } from '../modification.ts'
import type { Rule } from '../rule.ts'
import type { Substitution } from '../substitution.ts'
import { checkCondition, checkValues, type Defect } from './conditions.ts'
import { checkRequirement, checkRule } from './rules.ts'

/** What shows in an amendment by itself, before it meets the rules that it changes. */
export function checkModifications(filed: readonly Filed<'amendment'>[], catalog: Catalog): readonly CatalogProblem[] {
  const rules = knownRules(catalog)
  return filed.flatMap(({ path, entry }) =>
    [
      ...checkAmended(entry, catalog),
      ...checkEvidence(entry),
      ...checkSuperseded(entry, catalog),
      ...checkIds(entry),
      ...entry.modifications.flatMap((modification, index) => checkNew(modification, entry, `/modifications/${index}/new`, { catalog, rules })),
    ].map((defect) => ({ ...defect, path })),
  )
}

function checkAmended({ amends: { publication, editions } }: Amendment, { publications }: Catalog): readonly Defect[] {
  const known = publications.get(publication)?.editions.map(({ edition }) => edition) ?? []
  const unknown = editions.filter((edition) => !known.includes(edition))
  return unknown.map((edition) => ({ code: 'unknownPublication', pointer: '/amends/editions', detail: `"${publication}" has no edition "${edition}"` }))
}

/** Whoever read an instrument of somebody else says where. */
function checkEvidence({ evidence, readIn, instrument }: Amendment): readonly Defect[] {
  if (evidence === undefined || evidence === 'memory' || readIn !== undefined || instrument.href !== undefined) return []
  return [{ code: 'sourceMissing', pointer: '', detail: `evidence "${evidence}" needs "readIn": the address at which the instrument was read` }]
}

/** Only what came before can be superseded, so that no two amendments take each other away. */
function checkSuperseded({ amendment: own, jurisdiction, effectiveFrom, supersedes }: Amendment, { amendments }: Catalog): readonly Defect[] {
  const mine = new Map(amendments.filter((other) => other.jurisdiction === jurisdiction && other.amendment !== own).map((other) => [other.amendment, other]))
  return supersedes.flatMap((id, index): readonly Defect[] => {
    const superseded = mine.get(id)
    const pointer = `/supersedes/${index}`
    if (!superseded) return [{ code: 'unknownTarget', pointer, detail: id === own ? 'An amendment cannot supersede itself' : `"${id}" is not an amendment of ${jurisdiction}` }]
    if (superseded.effectiveFrom <= effectiveFrom && !superseded.supersedes.includes(own)) return []
    return [{ code: 'unknownTarget', pointer, detail: `"${id}" is not earlier: it is in force from ${superseded.effectiveFrom} on` }]
  })
}

function checkIds({ modifications }: Amendment): readonly Defect[] {
  const seen = new Set<string>()
  return modifications.flatMap(({ modification: id }, index): readonly Defect[] => {
    const taken = seen.has(id)
    seen.add(id)
    return taken ? [{ code: 'duplicate', pointer: `/modifications/${index}/modification`, detail: `modification "${id}" is already in this amendment. Ids are used once.` }] : []
  })
}

interface Known {
  readonly catalog: Catalog
  readonly rules: ReadonlyMap<string, Rule>
}

function checkNew(modification: Modification, { amends }: Amendment, pointer: string, { catalog, rules }: Known): readonly Defect[] {
  if (modification.kind === 'insertion') return checkRule(modification.new, catalog).map((defect) => ({ ...defect, pointer: `${pointer}${defect.pointer}` }))
  if (modification.kind !== 'substitution') return []
  const rule = rules.get(modification.target.rule)
  const current = rule && (limitFor(rule, amends) ?? rule.limits.at(-1))
  return current ? checkReplacement(modification, rule, current, { pointer, catalog }) : []
}

function checkReplacement({ new: next }: Substitution, rule: Rule, current: Limit, { pointer, catalog }: { pointer: string; catalog: Catalog }): readonly Defect[] {
  if ('appliesWhen' in next) return next.appliesWhen ? checkCondition(next.appliesWhen, `${pointer}/appliesWhen`) : []
  if ('add' in next) return 'fact' in rule.check ? checkValues(rule.check.fact, next.add ?? [], `${pointer}/add`) : []
  if (!('inchPound' in next || 'value' in next || 'values' in next)) return []
  return checkRequirement(rule, { ...citationOf(current), comparator: current.comparator, ...next }, pointer, catalog)
}

function limitFor({ limits }: Rule, amends: Amendment['amends']): Limit | undefined {
  return limits.find(({ publication, editions }) => publication === amends.publication && editions.some((edition) => amends.editions.includes(edition)))
}

function citationOf({ publication, editions, evidence, lastReviewed }: Limit) {
  return { publication, editions, evidence, lastReviewed }
}
