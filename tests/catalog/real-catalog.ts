import { join } from 'node:path'
import type { Catalog } from '../../src/catalog/catalog.ts'
import { resolveRules, type Place } from '../../src/catalog/resolve.ts'
import type { ResolvedRule, RuleSet } from '../../src/catalog/rule-set.ts'
import { loadCatalog } from '../../src/store/load-catalog.ts'

export const catalogFolder = join(import.meta.dirname, '../../catalog')

/** The catalog that the service is delivered with. */
export async function realCatalog(): Promise<Catalog> {
  const loaded = await loadCatalog(catalogFolder)
  if (!loaded.ok) throw new Error(loaded.problems.map(({ code, path, pointer, detail }) => `${code} ${path}${pointer}: ${detail}`).join('\n'))
  return loaded.catalog
}

export function resolved(catalog: Catalog, place: Place): RuleSet {
  const answer = resolveRules(catalog, place)
  if (!answer.ok) throw new Error(answer.problems.map(({ code, detail }) => `${code}: ${detail}`).join('\n'))
  return answer.value
}

export function ruleIn(ruleSet: RuleSet, id: string): ResolvedRule {
  const found = ruleSet.rules.find(({ rule }) => rule.rule === id)
  if (!found) throw new Error(`${id} is not in force in ${ruleSet.jurisdiction ?? 'the published texts'} on ${ruleSet.asOf}`)
  return found
}
