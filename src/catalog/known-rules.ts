import type { Catalog } from './catalog.ts'
import type { Rule } from './rule.ts'

/** The rules of a catalog and those that its amendments insert, whether in force somewhere or not. */
export function knownRules({ rules, amendments }: Pick<Catalog, 'rules' | 'amendments'>): ReadonlyMap<string, Rule> {
  const inserted = amendments.flatMap(({ modifications }) => modifications.flatMap((one) => (one.kind === 'insertion' ? [one.new] : [])))
  return new Map([...inserted.toReversed().map((rule) => [rule.rule, rule] as const), ...rules])
}
