import type { Filed, FiledDocuments } from '../catalog/assemble.ts'
import type { Catalog, CatalogProblem } from '../catalog/catalog.ts'
import { editionIdOf } from '../catalog/identifier.ts'
import { isInForce } from '../catalog/in-force.ts'
import { resolveRules } from '../catalog/resolve.ts'
import type { Rule, RuleExample } from '../catalog/rule.ts'
import type { ResolvedRule } from '../catalog/rule-set.ts'
import { describePart } from '../opening/describe.ts'
import { facts } from '../opening/facts.ts'
import { laid } from '../opening/lay.ts'
import type { Opening } from '../opening/opening.ts'
import type { Checked } from '../opening/problem.ts'
import type { QuantityResult } from '../quantities/result.ts'
import { readQuantity } from '../units/quantity.ts'
import { quantityText } from '../units/quantity-text.ts'
import type { Finding } from './document.ts'
import { judge } from './judge.ts'

/** Runs every example of every rule and amendment. One that does not come out as stated refuses the catalog. */
export function checkExamples(filed: Pick<FiledDocuments, 'rule' | 'amendment'>, catalog: Catalog): readonly CatalogProblem[] {
  return [
    ...filed.rule.flatMap(({ path, entry }) => entry.examples.flatMap((example, index) => report(path, `/examples/${index}`, example, runOnRule(entry, example, catalog)))),
    ...filed.amendment.flatMap(({ path, entry }) => [
      ...entry.modifications.flatMap((modification, at) =>
        modification.kind === 'insertion' ? modification.new.examples.flatMap((example, index) => report(path, `/modifications/${at}/new/examples/${index}`, example, runOnRule(modification.new, example, catalog))) : [],
      ),
      ...checkPlaceExamples({ path, entry }, catalog),
    ]),
  ]
}

/** Runs the examples of an amendment on what is in force in its place; those it no longer speaks for are left out. `concerns` narrows it. */
export function checkPlaceExamples({ path, entry }: Filed<'amendment'>, catalog: Catalog, concerns: (example: PlaceExample) => boolean = () => true): readonly CatalogProblem[] {
  const superseding = catalog.amendments.filter(({ supersedes }) => supersedes.includes(entry.amendment))
  return entry.examples.flatMap((example, index) => {
    const speaks = !superseding.some((other) => isInForce(other, example.asOf))
    return speaks && concerns(example) ? report(path, `/examples/${index}`, example, runOnPlace(entry.jurisdiction, example, catalog)) : []
  })
}

interface Expected {
  readonly name: string
  readonly outcome: string
  readonly reason?: string | undefined
  readonly margin?: string | undefined
}

function report(path: string, pointer: string, expected: Expected, answer: Checked<Finding | 'repealed'>): readonly CatalogProblem[] {
  const told = answer.ok ? differenceFrom(expected, answer.value) : answer.problems.map(({ detail }) => detail).join('; ')
  return told === undefined ? [] : [{ code: 'exampleFailed', path, pointer, detail: `"${expected.name}": ${told}` }]
}

function differenceFrom({ outcome, reason, margin }: Expected, answer: Finding | 'repealed'): string | undefined {
  if (answer === 'repealed') return outcome === 'repealed' ? undefined : `expected ${outcome}, but the rule is repealed`
  if (answer.outcome !== outcome) return `expected ${outcome}, answered ${answer.outcome}${answer.missing.length > 0 ? ` (missing ${answer.missing.join(', ')})` : ''}`
  if (reason !== undefined && answer.reason !== reason) return `expected reason ${reason}, answered ${answer.reason ?? 'none'}`
  return margin === undefined || isMargin(margin, answer) ? undefined : `expected a margin of ${margin}, answered ${answer.margin?.si ?? 'none'}`
}

function isMargin(text: string, { margin }: Finding): boolean {
  const wanted = readQuantity(text)
  return wanted !== undefined && quantityText(wanted, 'si') === margin?.si
}

function runOnRule(rule: Rule, example: RuleExample, catalog: Catalog): Checked<Finding> {
  const limit = example.edition === undefined ? rule.limits.at(-1) : rule.limits.find(({ publication, editions }) => editions.some((edition) => editionIdOf(publication, edition) === example.edition))
  if (!limit) return { ok: false, problems: [{ code: 'unknownEdition', pointer: '', detail: `no limit is for "${example.edition ?? ''}"` }] }
  return run({ rule, limit, comparator: limit.comparator ?? rule.check.comparator, chain: [] }, example, catalog)
}

export type PlaceExample = Pick<RuleExample, 'facts' | 'quantities'> & { readonly rule: string; readonly asOf: string; readonly edition?: string | undefined }

function runOnPlace(jurisdiction: string, example: PlaceExample, catalog: Catalog): Checked<Finding | 'repealed'> {
  const set = resolveRules(catalog, { jurisdiction, asOf: example.asOf, edition: example.edition }, new Set([example.rule]))
  if (!set.ok) return set
  const resolved = set.value.rules.find(({ rule }) => rule.rule === example.rule)
  if (resolved) return run(resolved, example, catalog)
  if (set.value.repealed.some(({ rule }) => rule.rule === example.rule)) return { ok: true, value: 'repealed' }
  return { ok: false, problems: [{ code: 'unknownRule', pointer: '', detail: `"${example.rule}" is not in force there on ${example.asOf}` }] }
}

function run(resolved: ResolvedRule, example: Pick<RuleExample, 'facts' | 'quantities'>, catalog: Catalog): Checked<Finding> {
  const opening = openingOf(example.facts)
  if (!opening.ok) return opening
  const quantities = quantitiesOf(resolved.rule, example.quantities ?? {})
  return { ok: true, value: judge(resolved, { opening: opening.value, quantities, catalog, adopted: true, holdPoint: null }) }
}

/** The facts of an example as a description of their own, read by the rules for every other. */
function openingOf(given: RuleExample['facts']): Checked<Opening> {
  const unknown = Object.keys(given).find((path) => !facts.has(path))
  if (unknown !== undefined) return { ok: false, problems: [{ code: 'unknownFact', pointer: unknown, detail: `"${unknown}" is not a fact of an opening` }] }
  const described = describePart(Object.entries(given).reduce<object>((document, [path, wire]) => laid(document, path.split('.'), () => wire), {}))
  return described.ok ? described : { ok: false, problems: described.problems.map((problem) => ({ ...problem, detail: `${problem.pointer.slice(1).replaceAll('/', '.')} ${problem.detail}` })) }
}

/** A computed quantity as an example states it; left out, it is one that could not be computed. */
function quantitiesOf(rule: Rule, given: Readonly<Record<string, string>>): ReadonlyMap<string, QuantityResult> {
  if (!('quantity' in rule.check)) return new Map()
  const id = rule.check.quantity
  const quantity = given[id] === undefined ? undefined : readQuantity(given[id])
  const result: QuantityResult = {
    id, title: id, part: rule.part, dimension: quantity?.dimension ?? null, status: quantity ? 'computed' : 'notDetermined', value: quantity?.amount ?? null, text: given[id] ?? '',
    formula: '', inputs: [], steps: [], tables: [], notes: [], assumptions: [], sources: [], missing: [], reason: quantity ? null : 'missing', why: null,
  }
  return new Map([[id, result]])
}
