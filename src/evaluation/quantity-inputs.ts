import type { Catalog } from '../catalog/catalog.ts'
import { limitText } from '../catalog/limit-text.ts'
import type { ResolvedRule, RuleSet } from '../catalog/rule-set.ts'
import type { Opening } from '../opening/opening.ts'
import type { Inputs, LimitInForce } from '../quantities/inputs.ts'
import type { Source } from '../quantities/source.ts'
import { readQuantity } from '../units/quantity.ts'

/** What quantities may compute from: this opening, the limits of this rule set, and the figures of the catalog. */
export function quantityInputs(opening: Opening, ruleSet: RuleSet, catalog: Catalog): Omit<Inputs, 'quantity'> {
  const rules = new Map(ruleSet.rules.map((resolved) => [resolved.rule.rule, resolved]))
  return {
    fact: (path) => opening.facts.get(path),
    limit: (rule) => limitOf(rules.get(rule), catalog),
    parameter: (id) => {
      const parameter = catalog.parameters.get(id)
      const quantity = parameter && readQuantity(parameter[parameter.governing])
      return parameter && quantity ? { parameter, quantity, source: sourceOf(parameter, parameter.edition, catalog) } : undefined
    },
    table: (id) => {
      const table = catalog.tables.get(id)
      return table && { table, source: sourceOf(table, table.edition, catalog) }
    },
  }
}

function limitOf(resolved: ResolvedRule | undefined, catalog: Catalog): LimitInForce | undefined {
  if (!resolved || !('inchPound' in resolved.limit)) return undefined
  const { rule, limit, comparator, chain } = resolved
  const quantity = readQuantity(limit[limit.governing])
  const edition = chain[0]?.edition ?? limit.editions.at(-1) ?? ''
  return quantity && { rule: rule.rule, comparator, quantity, text: limitText(limit, comparator), source: sourceOf(limit, edition, catalog) }
}

interface Cited {
  readonly publication: string
  readonly locator: string
  readonly evidence: Source['evidence']
  readonly readIn?: string | undefined
}

function sourceOf({ publication, locator, evidence, readIn }: Cited, edition: string, { publications }: Catalog): Source {
  const title = publications.get(publication)?.title ?? publication
  return { title: `${title}, ${edition}`, locator, evidence, ...(readIn === undefined ? {} : { readIn }) }
}
