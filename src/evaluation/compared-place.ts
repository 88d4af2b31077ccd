import type { Catalog } from '../catalog/catalog.ts'
import { resolveRules, type Place } from '../catalog/resolve.ts'
import type { ResolvedRule, RuleSet } from '../catalog/rule-set.ts'
import { differences, requirementDiffers } from './rule-changes.ts'

/** One place and date by two catalogs, with what may come out otherwise. */
export interface ComparedPlace {
  readonly before: CatalogRules
  readonly after: CatalogRules
  /** Rules that differ in what they ask for. */
  readonly changed: ReadonlySet<string>
  /** Whether a computed quantity may come out otherwise. */
  readonly quantitiesMayDiffer: boolean
}

export interface CatalogRules {
  readonly catalog: Catalog
  readonly ruleSet: RuleSet
}

/** Settles each place and date once for both catalogs. Undefined where one of them has no rules for it. */
export function comparePlaces(before: Catalog, after: Catalog): (place: Place) => ComparedPlace | undefined {
  const known = new Map<string, ComparedPlace | undefined>()
  return (place) => {
    const key = `${place.jurisdiction ?? ''} ${place.publication ?? ''} ${place.asOf}`
    if (!known.has(key)) known.set(key, compared(before, after, place))
    return known.get(key)
  }
}

function compared(before: Catalog, after: Catalog, place: Place): ComparedPlace | undefined {
  const [was, is] = [resolveRules(before, place), resolveRules(after, place)]
  if (!was.ok || !is.ok) return undefined
  const figuresDiffer = before.parameters !== after.parameters || before.tables !== after.tables
  const differing = differences(was.value, is.value).filter(requirementDiffers)
  const everything = figuresDiffer || was.value.adopted !== is.value.adopted
  const ids = everything ? [...was.value.rules, ...is.value.rules].map(idOf) : differing.flatMap((one) => [one.before, one.after].flatMap((rule) => (rule ? [idOf(rule)] : [])))
  return {
    before: { catalog: before, ruleSet: was.value },
    after: { catalog: after, ruleSet: is.value },
    changed: new Set(ids),
    quantitiesMayDiffer: everything || differing.some(({ before: old, after: next }) => isAmount(old) || isAmount(next)),
  }
}

function idOf({ rule }: ResolvedRule): string {
  return rule.rule
}

/** Quantities compute with the amounts of limits and nothing else of a rule. */
function isAmount(resolved: ResolvedRule | undefined): boolean {
  return resolved !== undefined && 'inchPound' in resolved.limit
}
