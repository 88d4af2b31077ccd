import { facts } from '../../opening/facts.ts'
import type { Catalog } from '../catalog.ts'
import type { Limit } from '../limit.ts'
import type { Rule, RuleExample } from '../rule.ts'
import { checkCondition, checkValues, unknownFact, type Defect } from './conditions.ts'
import { checkPair } from './pair.ts'

/** Everything about one rule that can be checked without judging an opening. */
export function checkRule(rule: Rule, catalog: Catalog): readonly Defect[] {
  const path = 'fact' in rule.check ? rule.check.fact : undefined
  return [
    ...(path !== undefined && !facts.has(path) ? [unknownFact(path, '/check/fact')] : []),
    ...(rule.appliesWhen ? checkCondition(rule.appliesWhen, '/appliesWhen') : []),
    ...rule.limits.flatMap((limit, index) => checkLimit(rule, limit, `/limits/${index}`, catalog)),
    ...(rule.related ?? []).flatMap((id, index) => missingFrom(catalog.rules, id, 'unknownRule', `/related/${index}`)),
    ...(rule.cautions ?? []).flatMap((id, index) => missingFrom(catalog.cautions, id, 'unknownCaution', `/cautions/${index}`)),
    ...checkExampleKinds(rule),
  ]
}

function checkLimit(rule: Rule, limit: Limit, pointer: string, catalog: Catalog): readonly Defect[] {
  return [...checkCitation(limit, pointer, catalog), ...checkRequirement(rule, limit, pointer, catalog)]
}

/** Whether a limit can be compared with what the rule checks, wherever it comes from. */
export function checkRequirement(rule: Rule, limit: Limit, pointer: string, catalog: Catalog): readonly Defect[] {
  return [...checkComparator(rule, limit, pointer), ...checkAmount(rule, limit, pointer, catalog)]
}

function checkCitation({ publication, editions, evidence, readIn }: Limit, pointer: string, catalog: Catalog): readonly Defect[] {
  const known = catalog.publications.get(publication)?.editions.map(({ edition }) => edition)
  const defects: Defect[] = known
    ? editions.filter((edition) => !known.includes(edition)).map((edition) => ({ code: 'unknownPublication', pointer: `${pointer}/editions`, detail: `"${publication}" has no edition "${edition}"` }))
    : [{ code: 'unknownPublication', pointer: `${pointer}/publication`, detail: `"${publication}" has no file in publications/` }]
  const sourceMissing: Defect = { code: 'sourceMissing', pointer, detail: `evidence "${evidence}" needs "readIn": the address at which the figure was read` }
  return evidence !== 'memory' && readIn === undefined ? [...defects, sourceMissing] : defects
}

const ofValues = ['equalTo', 'oneOf', 'noneOf']

function checkComparator(rule: Rule, limit: Limit, pointer: string): readonly Defect[] {
  const comparator = limit.comparator ?? rule.check.comparator
  const needsValues = 'value' in limit || 'values' in limit
  if (needsValues ? ofValues.includes(comparator) : comparator !== 'oneOf' && comparator !== 'noneOf') return []
  return [{ code: 'comparatorMismatch', pointer, detail: `"${comparator}" cannot compare with this kind of limit` }]
}

function checkAmount(rule: Rule, limit: Limit, pointer: string, catalog: Catalog): readonly Defect[] {
  const path = 'fact' in rule.check ? rule.check.fact : undefined
  if ('inchPound' in limit) {
    const defect = checkPair(limit, path === undefined ? undefined : facts.get(path)?.dimension)
    return defect ? [{ ...defect, pointer }] : []
  }
  if ('proportion' in limit) return facts.has(limit.of) ? [] : [unknownFact(limit.of, `${pointer}/of`)]
  if ('table' in limit) return catalog.tables.get(limit.table)?.lookup ? [] : [{ code: 'unknownTable', pointer: `${pointer}/table`, detail: `there is no table "${limit.table}" with a lookup` }]
  return path === undefined ? [] : checkValues(path, 'value' in limit ? [limit.value] : limit.values, pointer)
}

function missingFrom(known: ReadonlyMap<string, unknown>, id: string, code: Defect['code'], pointer: string): readonly Defect[] {
  return known.has(id) ? [] : [{ code, pointer, detail: `"${id}" is not in the catalog` }]
}

/** A rule shows that it can pass, fail and be undecided; that it may not apply; and what happens exactly on its limit. */
function checkExampleKinds(rule: Rule): readonly Defect[] {
  const wanted: readonly (readonly [string, (example: RuleExample) => boolean])[] = [
    ['pass', ({ outcome }) => outcome === 'pass'],
    ['fail', ({ outcome }) => outcome === 'fail'],
    ['notDetermined', ({ outcome }) => outcome === 'notDetermined'],
    ...(rule.appliesWhen ? [['notApplicable', ({ outcome }: RuleExample) => outcome === 'notApplicable'] as const] : []),
    ...(rule.limits.some((limit) => 'inchPound' in limit) ? [['exactly on the limit (margin zero)', ({ margin }: RuleExample) => margin !== undefined && /^0\b/.test(margin)] as const] : []),
  ]
  return wanted.filter(([, matches]) => !rule.examples.some(matches)).map(([kind]) => ({ code: 'exampleMissing', pointer: '/examples', detail: `there is no example for: ${kind}` }))
}
