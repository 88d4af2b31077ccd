import { existsSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { parameter as parameterSchema, table as tableSchema, type Parameter, type Table } from '../../src/catalog/reference.ts'
import type { Comparator } from '../../src/catalog/limit.ts'
import { settleFact } from '../../src/opening/read-fact.ts'
import { facts as factDefinitions } from '../../src/opening/facts.ts'
import type { Readings } from '../../src/opening/opening.ts'
import type { QuantityDefinition } from '../../src/quantities/define.ts'
import type { Inputs } from '../../src/quantities/inputs.ts'
import type { QuantityResult, QuantityValue } from '../../src/quantities/result.ts'
import type { Source } from '../../src/quantities/source.ts'
import { readQuantity, type Quantity } from '../../src/units/quantity.ts'

/** What a test knows. Anything left out is not known; parameters and tables are those of the catalog unless given. */
export interface Given {
  /** By path, in the words of an opening description: "4 in", true, "running", or [left, right] with null for not known. */
  readonly facts?: Readonly<Record<string, unknown>>
  /** By rule: "4 in", or the text with another comparator than "at least". */
  readonly limits?: Readonly<Record<string, string | { readonly text: string; readonly comparator: Comparator } | undefined>>
  /** By id: "22000 [psi]"; null for one that the catalog lacks. */
  readonly parameters?: Readonly<Record<string, string | null>>
  readonly tables?: Readonly<Record<string, Table | null>>
  /** Quantities taken as computed: a text with its unit, or a plain text such as a section. */
  readonly quantities?: Readonly<Record<string, string>>
}

export function inputsOf(given: Given): Inputs {
  return {
    fact: (path) => readingsOf(path, given.facts?.[path]),
    limit: (rule) => limitOf(rule, given.limits?.[rule]),
    parameter: (id) => parameterOf(id, given.parameters?.[id]),
    table: (id) => tableOf(id, given.tables?.[id]),
    quantity: (id) => (given.quantities?.[id] === undefined ? undefined : takenAsComputed(id, given.quantities[id])),
    found: [],
  }
}

/** Evaluates one quantity; those it builds on are the given ones, else the definitions passed along. */
export function evaluate(definition: QuantityDefinition, given: Given, buildsOn: readonly QuantityDefinition[] = []): QuantityResult {
  const inputs = inputsOf(given)
  const quantity = (id: string): QuantityResult | undefined => inputs.quantity(id) ?? buildsOn.find((other) => other.id === id)?.evaluate({ ...inputs, quantity })
  return definition.evaluate({ ...inputs, quantity })
}

/** The amount of a text in base units, for what a test expects: amount("43 11/16 in"). */
export function amount(text: string): number {
  return quantityOf(text).amount
}

/** The numeric value of a result; anything else fails the test with the reason. */
export function valueOf(result: QuantityResult): number {
  if (typeof result.value !== 'number') throw new Error(`${result.id} is ${result.status}: ${result.missing.join(', ')} ${result.why ?? ''}`)
  return result.value
}

function readingsOf(path: string, wire: unknown): Readings | undefined {
  const definition = factDefinitions.get(path)
  if (!definition) throw new Error(`no fact ${path}`)
  if (wire === undefined || wire === null) return undefined
  const given: readonly unknown[] = Array.isArray(wire) ? wire : [wire]
  if (definition.choices && !given.every((one) => one === null || (typeof one === 'string' && definition.choices?.includes(one)))) throw new Error(`${path} cannot be ${JSON.stringify(wire)}`)
  return settleFact(definition, wire, path.split('.'), {}).map((settled) => {
    if (settled?.ok === false) throw new Error(settled.problems.map(({ detail }) => detail).join('; '))
    return settled?.value
  })
}

function limitOf(rule: string, given: string | { readonly text: string; readonly comparator: Comparator } | undefined) {
  if (given === undefined) return undefined
  const { text, comparator } = typeof given === 'string' ? { text: given, comparator: 'notLessThan' as const } : given
  return { rule, comparator, quantity: quantityOf(text), text, source: sourceOf(`limit of ${rule}`) }
}

function parameterOf(id: string, given: string | null | undefined) {
  if (given === null) return undefined
  const parameter = fromCatalog(`parameters/${id}`, parameterSchema)
  if (!parameter) return undefined
  const changed: Parameter = given === undefined ? parameter : { ...parameter, governing: 'inchPound', inchPound: given, si: given }
  return { parameter: changed, quantity: quantityOf(changed[changed.governing]), source: sourceOf(parameter.publication, parameter) }
}

function tableOf(id: string, given: Table | null | undefined) {
  const table = given === undefined ? fromCatalog(`tables/${id}`, tableSchema) : given
  return table ? { table, source: sourceOf(table.publication, table) } : undefined
}

const read = new Map<string, unknown>()

function fromCatalog<T>(name: string, schema: { parse: (content: unknown) => T }): T | undefined {
  const file = new URL(`../../catalog/${name}.yaml`, import.meta.url)
  if (!existsSync(file)) return undefined
  const content = read.get(name) ?? schema.parse(parse(readFileSync(file, 'utf8')))
  read.set(name, content)
  return content as T
}

function takenAsComputed(id: string, text: string): QuantityResult {
  const value: QuantityValue = /^[-\d.]/.test(text) ? amount(text) : text
  return {
    id, title: id, part: 'head', dimension: null, status: 'computed', value, text, formula: 'given by the test',
    inputs: [], steps: [], tables: [], notes: [], assumptions: [], sources: [], missing: [], reason: null, why: null,
  }
}

function quantityOf(text: string): Quantity {
  const quantity = readQuantity(text)
  if (!quantity) throw new Error(`"${text}" is not an amount`)
  return quantity
}

function sourceOf(title: string, about: Partial<Pick<Source, 'locator' | 'evidence'>> = {}): Source {
  return { title, locator: about.locator ?? 'given by the test', evidence: about.evidence ?? 'memory' }
}
