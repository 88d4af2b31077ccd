import { closest } from 'fastest-levenshtein'
import type { Catalog } from '../catalog/catalog.ts'
import type { Rule } from '../catalog/rule.ts'
import { describePart, type DescriptionCode } from '../opening/describe.ts'
import { facts } from '../opening/facts.ts'
import { laid } from '../opening/lay.ts'
import type { Opening } from '../opening/opening.ts'
import type { Checked, Problem } from '../opening/problem.ts'
import type { QuantityDefinition } from '../quantities/define.ts'
import type { Inputs, LimitInForce } from '../quantities/inputs.ts'
import type { QuantityResult } from '../quantities/result.ts'
import type { Source } from '../quantities/source.ts'
import { readLength, type LengthUnit } from '../units/length-text.ts'
import { quantityExamples, readQuantity, type Quantity } from '../units/quantity.ts'
import type { Dimension } from '../units/dimension.ts'

/** One thing to compute with, in the words in which answers name their inputs: "opening.width", "rule weep.spacing", "parameter steel.elastic-modulus", "quantity lintel.arching". */
export interface GivenInput {
  readonly from: string
  readonly value: unknown
}

export type GivenCode = DescriptionCode | 'unknownInput' | 'unitMismatch' | 'saidTwice'

/** What was given, read and settled; it goes before what the catalog and the rules in force say. */
export interface Given {
  readonly opening: Opening
  readonly limits: ReadonlyMap<string, LimitInForce>
  readonly parameters: ReadonlyMap<string, NonNullable<ReturnType<Inputs['parameter']>>>
  readonly quantities: ReadonlyMap<string, QuantityResult>
}

interface Known {
  readonly catalog: Pick<Catalog, 'rules' | 'parameters'>
  readonly definitions: readonly QuantityDefinition[]
  readonly lengthUnit: LengthUnit | undefined
}

type Found = Problem<GivenCode>
type At = GivenInput & { readonly pointer: string }

/** Reads everything that was given, and tells every problem at once, at the place where it was given. */
export function readGiven(document: Readonly<Record<string, unknown>>, given: readonly GivenInput[], known: Known): Checked<Given, GivenCode> {
  const inputs = given.map((one, index): At => ({ ...one, pointer: `/given/${index}` }))
  const problems: Found[] = saidTwice(inputs)
  const factInputs = inputs.filter(({ from }) => facts.has(from))
  const opening = describePart(withFacts(document, factInputs, known.lengthUnit))
  if (!opening.ok) problems.push(...opening.problems.map((problem) => ({ ...problem, pointer: pointerOf(problem.pointer, factInputs) })))
  const limits = gather(inputs, 'rule ', (id, one) => limitGiven(id, one, known), problems)
  const parameters = gather(inputs, 'parameter ', (id, one) => parameterGiven(id, one, known), problems)
  const quantities = gather(inputs, 'quantity ', (id, one) => quantityGiven(id, one, known), problems)
  problems.push(...unknownInputs(inputs, known))
  return opening.ok && problems.length === 0 ? { ok: true, value: { opening: opening.value, limits, parameters, quantities } } : { ok: false, problems }
}

/** Inputs in which what was given goes before everything else. */
export function withGiven(inputs: Omit<Inputs, 'quantity'>, given: Given): Omit<Inputs, 'quantity'> {
  return {
    ...inputs,
    limit: (rule) => given.limits.get(rule) ?? inputs.limit(rule),
    parameter: (id) => given.parameters.get(id) ?? inputs.parameter(id),
  }
}

function gather<T>(inputs: readonly At[], prefix: string, read: (id: string, one: At) => T | Found | undefined, problems: Found[]): ReadonlyMap<string, T> {
  const found = new Map<string, T>()
  for (const one of inputs.filter(({ from }) => from.startsWith(prefix))) {
    const id = one.from.slice(prefix.length)
    const value = read(id, one)
    if (isProblem(value)) problems.push(value)
    else if (value !== undefined) found.set(id, value)
  }
  return found
}

function limitGiven(id: string, one: At, { catalog, lengthUnit }: Known): LimitInForce | Found | undefined {
  const rule = catalog.rules.get(id)
  const dimension = rule && dimensionOf(rule)
  if (!rule || dimension === undefined) return undefined
  const quantity = amountIn(one, dimension, lengthUnit)
  return isProblem(quantity) ? quantity : { rule: id, comparator: rule.check.comparator, quantity, text: String(one.value), source: sourceOf(one) }
}

function parameterGiven(id: string, one: At, { catalog, lengthUnit }: Known) {
  const parameter = catalog.parameters.get(id)
  const dimension = parameter && readQuantity(parameter[parameter.governing])?.dimension
  if (!parameter || dimension === undefined) return undefined
  const quantity = amountIn(one, dimension, lengthUnit)
  return isProblem(quantity) ? quantity : { parameter, quantity, source: sourceOf(one) }
}

function quantityGiven(id: string, one: At, { definitions, lengthUnit }: Known): QuantityResult | Found | undefined {
  const definition = definitions.find((other) => other.id === id)
  if (!definition) return undefined
  const { title, part, dimension, formula, choices } = definition
  const value = dimension === null ? choiceIn(one, choices) : amountIn(one, dimension, lengthUnit)
  if (isProblem(value)) return value
  return {
    id, title, part, dimension, status: 'computed', value: typeof value === 'string' ? value : value.amount, text: String(one.value), formula,
    inputs: [], steps: ['Given, not computed.'], tables: [], notes: [], assumptions: [], sources: [sourceOf(one)], missing: [], reason: null, why: null,
  }
}

/** The dimension that the limits of a rule are in; none where it asks for a value or a yes. */
function dimensionOf({ limits }: Rule): Dimension | undefined {
  const [amount] = limits.flatMap((limit) => ('inchPound' in limit ? [limit[limit.governing]] : []))
  return amount === undefined ? undefined : readQuantity(amount)?.dimension
}

/** A text that a quantity may be; one it cannot be would be taken for the other case in silence. */
function choiceIn({ pointer, value }: At, choices: readonly string[] | undefined): string | Found {
  const text = String(value)
  if (!choices || choices.includes(text)) return text
  return { code: 'notAllowed', pointer: `${pointer}/value`, detail: `"${text}" must be one of ${choices.map((choice) => `"${choice}"`).join(', ')}` }
}

function amountIn({ pointer, value }: At, dimension: Dimension, lengthUnit: LengthUnit | undefined): Quantity | Found {
  const text = String(value)
  const length = dimension === 'length' ? readLength(text, lengthUnit) : undefined
  const quantity = length?.ok ? { dimension, amount: length.nanometres } : readQuantity(text)
  if (quantity && (quantity.dimension === dimension || (dimension === 'ratio' && quantity.dimension === 'count'))) return { dimension, amount: quantity.amount }
  return { code: quantity ? 'unitMismatch' : 'unreadable', pointer: `${pointer}/value`, detail: `"${text}" is not what is asked for here. Write it like ${quantityExamples[dimension]}` }
}

/** Facts by path are laid over the description, so that both are read in one go. */
function withFacts(document: Readonly<Record<string, unknown>>, given: readonly GivenInput[], lengthUnit: LengthUnit | undefined): Readonly<Record<string, unknown>> {
  const described: Readonly<Record<string, unknown>> = { ...(lengthUnit ? { lengthUnit } : {}), ...document }
  return given.reduce((whole, { from, value }) => laid(whole, from.split('.'), () => value), described)
}

/** Where in the request a fact with a problem was given. */
function pointerOf(pointer: string, given: readonly At[]): string {
  const by = given.find(({ from }) => `${pointer}/`.startsWith(`/${from.replaceAll('.', '/')}/`))
  return by ? `${by.pointer}/value${pointer.slice(by.from.length + 1)}` : `/opening${pointer}`
}

function saidTwice(inputs: readonly At[]): Found[] {
  return inputs.filter(({ from }, index) => inputs.findIndex((other) => other.from === from) < index).map(({ from, pointer }) => ({ code: 'saidTwice', pointer: `${pointer}/from`, detail: `"${from}" is given twice. Give it once` }))
}

function unknownInputs(inputs: readonly At[], { catalog, definitions }: Known): readonly Found[] {
  const known = [
    ...facts.keys(),
    ...[...catalog.rules.values()].filter((rule) => dimensionOf(rule) !== undefined).map(({ rule }) => `rule ${rule}`),
    ...[...catalog.parameters.keys()].map((id) => `parameter ${id}`),
    ...definitions.map(({ id }) => `quantity ${id}`),
  ]
  const names = new Set(known)
  return inputs.filter(({ from }) => !names.has(from)).map(({ from, pointer }) => ({
    code: 'unknownInput', pointer: `${pointer}/from`,
    detail: `"${from.slice(0, 80)}" is nothing to compute with. ${from.length <= 80 ? `Did you mean "${closest(from, known)}"? ` : ''}Facts go by their path; a limit, a figure or a quantity by its kind and id, as answers name them`,
  }))
}

function sourceOf({ from }: GivenInput): Source {
  return { title: 'Given in the request', locator: from, evidence: 'memory' }
}

function isProblem(value: unknown): value is Found {
  return typeof value === 'object' && value !== null && 'code' in value
}
