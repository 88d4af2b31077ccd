import { expect, test } from 'vitest'
import type { Catalog } from '../src/catalog/catalog.ts'
import { editionsById, resolveRules } from '../src/catalog/resolve.ts'
import type { ResolvedRule, RuleSet } from '../src/catalog/rule-set.ts'
import { evaluate } from '../src/evaluation/evaluate.ts'
import { describeOpening } from '../src/opening/describe.ts'
import { realCatalog } from './catalog/real-catalog.ts'
import { corpus, type Described } from './corpus.ts'

const asOf = '2026-12-31'
const catalog = await realCatalog()
const openings = corpus(catalog)

test('every description of the corpus can be read', () => {
  expect(openings.flatMap(problemsOf)).toEqual([])
})

/** A rule that is silent here needs a way to build that it speaks to: add one to fixtures/corpus-variations.yaml. */
test('every rule in force in some edition or jurisdiction passes at least once and fails at least once', () => {
  expect(silentRules(catalog, openings)).toEqual([])
})

test('a rule that nothing can meet, and one that everything meets, would be found', () => {
  const { rules, ...rest } = catalog
  const sill = rules.get('sill.projection')
  if (!sill) throw new Error('the rule that is changed here has gone')
  const changed = (inchPound: string) => new Map([['sill.projection', { ...sill, limits: sill.limits.map((limit) => ({ ...limit, inchPound, governing: 'inchPound' as const })) }]])
  const few = openings.slice(0, 40)
  expect(silentRules({ ...rest, amendments: [], rules: changed('1000 [ft_i]') }, few)).toEqual(['sill.projection never answers pass'])
  expect(silentRules({ ...rest, amendments: [], rules: changed('-1000 [ft_i]') }, few)).toEqual(['sill.projection never answers fail'])
})

function problemsOf({ name, description }: Described): readonly string[] {
  const opening = describeOpening(description)
  return opening.ok ? [] : opening.problems.map(({ pointer, detail }) => `${name}: ${pointer} ${detail}`)
}

function silentRules(from: Catalog, descriptions: readonly Described[]): readonly string[] {
  const ruleSet = allRules(from)
  const seen = new Map(ruleSet.rules.map(({ rule }) => [rule.rule, new Set<string>()]))
  for (const { description } of descriptions) {
    const opening = describeOpening(description)
    if (!opening.ok) continue
    for (const { rule, outcome } of evaluate(opening.value, ruleSet, from, null).findings) seen.get(rule)?.add(outcome)
  }
  return [...seen].flatMap(([rule, outcomes]) => ['pass', 'fail'].filter((wanted) => !outcomes.has(wanted)).map((wanted) => `${rule} never answers ${wanted}`))
}

/** The rules of every edition and every amended place side by side, so that each opening is judged by all of them at once. */
function allRules(from: Catalog): RuleSet {
  const published = [...editionsById(from).keys()].map((edition) => ({ jurisdiction: null, asOf, edition }))
  const amended = from.amendments.map(({ jurisdiction, amends, effectiveFrom }) => ({ jurisdiction, asOf: effectiveFrom, publication: amends.publication }))
  const rules = new Map<string, ResolvedRule>()
  for (const place of [...published, ...amended]) {
    const resolved = resolveRules(from, place)
    if (!resolved.ok) throw new Error(resolved.problems.map(({ detail }) => detail).join(' '))
    for (const one of resolved.value.rules) rules.set(one.rule.rule, one)
  }
  return { jurisdiction: null, resolvedAt: null, asOf, adoption: null, editions: [], adopted: true, inPart: false, rules: [...rules.values()], repealed: [] }
}
