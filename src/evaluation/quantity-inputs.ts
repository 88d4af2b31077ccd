import type { Catalog } from '../catalog/catalog.ts'
import { limitText } from '../catalog/limit-text.ts'
import type { Comparator, QuantityLimit } from '../catalog/limit.ts'
import type { ResolvedRule, RuleSet } from '../catalog/rule-set.ts'
import { onceFor } from '../opening/once-for.ts'
import type { Opening } from '../opening/opening.ts'
import type { Inputs, LimitInForce } from '../quantities/inputs.ts'
import type { Source } from '../quantities/source.ts'
import { readQuantity, type Quantity } from '../units/quantity.ts'

/** What quantities may compute from: this opening, the limits of this rule set, and the figures of the catalog. */
export function quantityInputs({ facts }: Pick<Opening, 'facts'>, { rules }: Pick<RuleSet, 'rules'>, catalog: Catalog): Omit<Inputs, 'quantity'> {
  const { parameter, table, limitsOf } = figuresOf(catalog)
  return { fact: (path) => facts.get(path), limit: limitsOf(rules), parameter, table }
}

interface Figures extends Pick<Inputs, 'parameter' | 'table'> {
  readonly limitsOf: (rules: readonly ResolvedRule[]) => Inputs['limit']
}

/** The figures of a catalog and the limits of a rule set are read once: an evaluation asks for dozens of them. */
const figuresOf = onceFor(readFigures)

function readFigures(catalog: Catalog): Figures {
  const parameters = new Map([...catalog.parameters].flatMap(([id, parameter]) => {
    const quantity = readQuantity(parameter[parameter.governing])
    return quantity ? [[id, { parameter, quantity, source: sourceOf(parameter, parameter.edition, catalog) }] as const] : []
  }))
  const tables = new Map([...catalog.tables].map(([id, table]) => [id, { table, source: sourceOf(table, table.edition, catalog) }] as const))
  return { parameter: (id) => parameters.get(id), table: (id) => tables.get(id), limitsOf: onceFor((rules: readonly ResolvedRule[]) => readLimits(rules, catalog)) }
}

function readLimits(rules: readonly ResolvedRule[], catalog: Catalog): Inputs['limit'] {
  const byId = new Map(rules.map((resolved) => [resolved.rule.rule, resolved]))
  const read = new Map<string, LimitInForce | undefined>()
  return (rule) => {
    if (!read.has(rule) && byId.has(rule)) read.set(rule, limitOf(byId.get(rule), catalog))
    return read.get(rule)
  }
}

function limitOf(resolved: ResolvedRule | undefined, catalog: Catalog): LimitInForce | undefined {
  if (!resolved || !('inchPound' in resolved.limit)) return undefined
  const { rule, limit, comparator, chain } = resolved
  const [strictest] = strictestFirst(limit, comparator)
  const edition = chain[0]?.edition ?? limit.editions.at(-1) ?? ''
  const text = limit.printedConflict === undefined ? limitText(limit, comparator) : `${limitText(limit, comparator)}, printed so; the stricter figure is taken`
  return strictest && { rule: rule.rule, comparator, quantity: strictest, text, source: sourceOf(limit, edition, catalog) }
}

/** The figure that governs; of a text that contradicts itself both, since building by the stricter one meets either. */
function strictestFirst({ governing, inchPound, si, printedConflict }: QuantityLimit, comparator: Comparator): readonly Quantity[] {
  const printed = printedConflict === undefined ? [governing === 'inchPound' ? inchPound : si] : [inchPound, si]
  const least = comparator === 'notMoreThan' || comparator === 'lessThan'
  return printed.map(readQuantity).filter((quantity) => quantity !== undefined).toSorted((a, b) => (least ? a.amount - b.amount : b.amount - a.amount))
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
