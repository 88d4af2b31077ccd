import { onceFor } from '../opening/once-for.ts'
import type { Catalog } from './catalog.ts'
import type { RuleSet } from './rule-set.ts'

export type SettledRules = Pick<RuleSet, 'rules' | 'repealed'>

/** Of one catalog, the rule sets asked for last. A county needs a few; the bound keeps a request for every place and day from filling the memory. */
const mostKept = 64

const rulesOf = onceFor<Catalog, Map<string, SettledRules>>(() => new Map())

/** What was settled for the same base on a day of the same interval, as the same object. */
export function keptRules(catalog: Catalog, base: string, asOf: string): SettledRules | undefined {
  const kept = rulesOf(catalog)
  const key = keyOf(catalog, base, asOf)
  const rules = kept.get(key)
  if (rules) {
    kept.delete(key)
    kept.set(key, rules)
  }
  return rules
}

export function keepRules(catalog: Catalog, base: string, asOf: string, rules: SettledRules): void {
  const kept = rulesOf(catalog)
  kept.set(keyOf(catalog, base, asOf), rules)
  const [oldest] = kept.keys()
  if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest)
}

function keyOf(catalog: Catalog, base: string, asOf: string): string {
  const days = turningDays(catalog)
  const passed = days.findIndex((day) => day > asOf)
  return `${base} ${passed < 0 ? days.length : passed}`
}

/** The days on which an amendment begins or ends or an edition is issued: between two of them nothing changes. */
const turningDays = onceFor(({ amendments, publications }: Catalog): readonly string[] => {
  const ofAmendments = amendments.flatMap(({ effectiveFrom, effectiveUntil }) => (effectiveUntil === null ? [effectiveFrom] : [effectiveFrom, effectiveUntil]))
  const ofEditions = [...publications.values()].flatMap(({ editions }) => editions.map(({ issued }) => issued))
  return [...new Set([...ofAmendments, ...ofEditions])].toSorted()
})
