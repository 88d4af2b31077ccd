import { LogicEngine } from 'json-logic-engine'
import { Engine, type NestedCondition, type TopLevelCondition } from 'json-rules-engine'
import type { Condition } from '../../src/catalog/condition.ts'
import type { Comparator } from '../../src/catalog/limit.ts'
import type { ResolvedRule } from '../../src/catalog/rule-set.ts'
import { facts as definitions } from '../../src/opening/facts.ts'
import type { Opening } from '../../src/opening/opening.ts'
import type { QuantityResult } from '../../src/quantities/result.ts'
import { readQuantity } from '../../src/units/quantity.ts'

/** What an engine answers: the outcome of every rule, by id. */
export type Outcomes = ReadonlyMap<string, string>

/** The same facts for both engines: plain values in base units, one entry for each end. */
export type PlainFacts = Readonly<Record<string, string | number | boolean>>

/** A comparison of one fact, as all engines have it. */
interface Test {
  readonly fact: string
  readonly operator: 'is' | 'oneOf' | 'noneOf' | Comparator
  readonly value: string | number | boolean | readonly (string | boolean)[]
}

/** A rule without anything but its logic: where it applies, and what it then asks. */
interface PlainRule {
  readonly id: string
  readonly applies: Logic
  readonly asks: Logic
}

type Logic = { readonly all: readonly Logic[] } | { readonly any: readonly Logic[] } | { readonly not: Logic } | Test

export function plainFacts({ facts }: Opening, quantities: ReadonlyMap<string, QuantityResult>): PlainFacts {
  const plain: Record<string, string | number | boolean> = {}
  for (const [path, readings] of facts) readings.forEach((reading, end) => { if (reading) plain[nameOf(path, end)] = typeof reading.value === 'object' ? reading.value.amount : reading.value })
  for (const [id, { value }] of quantities) if (typeof value === 'number') plain[nameOf(id, 0)] = value
  return plain
}

/** The logic of a rule. None where the limit itself depends on the opening, or where conditions go with one end each: those are left out on all sides. */
export function plainRule({ rule, limit, comparator }: ResolvedRule): PlainRule | undefined {
  const of = 'fact' in rule.check ? rule.check.fact : rule.check.quantity
  const amount = 'inchPound' in limit ? readQuantity(limit[limit.governing])?.amount : undefined
  const value = amount ?? ('value' in limit ? [limit.value] : 'values' in limit ? limit.values : undefined)
  const operator = amount !== undefined || comparator === 'noneOf' ? comparator : 'oneOf'
  if (value === undefined || ('printedConflict' in limit && limit.printedConflict) || isPaired(rule)) return undefined
  return { id: rule.rule, applies: rule.appliesWhen ? logicOf(rule.appliesWhen) : { all: [] }, asks: { all: endsOf(of).map((fact) => ({ fact, operator, value })) } }
}

function isPaired({ check, appliesWhen }: ResolvedRule['rule']): boolean {
  return 'fact' in check && hasEnds(check.fact) && JSON.stringify(appliesWhen ?? {}).match(/"fact":"([^"]+)"/g)?.some((text) => hasEnds(text.slice(8, -1))) === true
}

/** A fact with two ends satisfies a condition when either end does. */
function logicOf(condition: Condition): Logic {
  if ('all' in condition) return { all: condition.all.map(logicOf) }
  if ('any' in condition) return { any: condition.any.map(logicOf) }
  if ('not' in condition) return { not: logicOf(condition.not) }
  const any = endsOf(condition.fact).map((fact): Test => {
    if ('is' in condition) return { fact, operator: 'is', value: condition.is }
    if ('oneOf' in condition) return { fact, operator: 'oneOf', value: condition.oneOf }
    return { fact, operator: condition.comparator, value: readQuantity(condition.quantity)?.amount ?? NaN }
  })
  return any.length === 1 && any[0] ? any[0] : { any }
}

function endsOf(path: string): readonly string[] {
  return hasEnds(path) ? [nameOf(path, 0), nameOf(path, 1)] : [nameOf(path, 0)]
}

function hasEnds(path: string): boolean {
  return definitions.get(path)?.perEnd === true
}

function nameOf(path: string, end: number): string {
  return `${path.replaceAll(/[.-]/g, '_')}_${end}`
}

const interpreted: Readonly<Record<Test['operator'], string>> = {
  is: 'equal', oneOf: 'in', noneOf: 'notIn', equalTo: 'equal', notLessThan: 'greaterThanInclusive', notMoreThan: 'lessThanInclusive', lessThan: 'lessThan', moreThan: 'greaterThan',
}

/** json-rules-engine: one rule that says "pass" and one that says "fail"; where neither fires, it does not apply. */
export function interpretedEngine(rules: readonly PlainRule[]): (facts: PlainFacts) => Promise<Outcomes> {
  const engine = new Engine([], { allowUndefinedFacts: true })
  const nested = (logic: Logic): NestedCondition => {
    if ('all' in logic) return { all: logic.all.map(nested) }
    if ('any' in logic) return { any: logic.any.map(nested) }
    return 'not' in logic ? { not: nested(logic.not) } : { fact: logic.fact, operator: interpreted[logic.operator], value: logic.value }
  }
  for (const { id, applies, asks } of rules) {
    engine.addRule({ conditions: nested({ all: [applies, asks] }) as TopLevelCondition, event: { type: 'pass', params: { id } } })
    engine.addRule({ conditions: nested({ all: [applies, { not: asks }] }) as TopLevelCondition, event: { type: 'fail', params: { id } } })
  }
  return async (facts) => {
    const { events } = await engine.run({ ...facts })
    return new Map(events.map(({ type, params }) => [String(params?.['id']), type]))
  }
}

/** json-logic-engine, compiled to one function for all rules. */
export function compiledEngine(rules: readonly PlainRule[]): (facts: PlainFacts) => Outcomes {
  const written = (logic: Logic): object => {
    if ('all' in logic) return logic.all.length === 0 ? { '!': [false] } : { and: logic.all.map(written) }
    if ('any' in logic) return { or: logic.any.map(written) }
    if ('not' in logic) return { '!': [written(logic.not)] }
    const fact = { var: logic.fact }
    switch (logic.operator) {
      case 'oneOf': return { in: [fact, logic.value] }
      case 'noneOf': return { '!': [{ in: [fact, logic.value] }] }
      case 'notLessThan': return { '>=': [fact, logic.value] }
      case 'notMoreThan': return { '<=': [fact, logic.value] }
      case 'lessThan': return { '<': [fact, logic.value] }
      case 'moreThan': return { '>': [fact, logic.value] }
      default: return { '===': [fact, logic.value] }
    }
  }
  const engine = new LogicEngine()
  const decide = engine.build(rules.map(({ applies, asks }) => ({ if: [written(applies), { if: [written(asks), 'pass', 'fail'] }, 'notApplicable'] }))) as (facts: PlainFacts) => readonly string[]
  return (facts) => {
    const outcomes = decide(facts)
    return new Map(rules.map(({ id }, index) => [id, outcomes[index] ?? '']))
  }
}
