import type { Reason } from '../catalog/rule.ts'
import type { Dimension } from '../units/dimension.ts'
import { computedLengthText, exactLengthText, quantityText } from '../units/quantity-text.ts'
import type { Inputs } from './inputs.ts'
import { asksOf, type Found, type Need, type Unknown } from './need.ts'
import { isBand, type Part, type QuantityResult, type QuantityTable, type QuantityValue } from './result.ts'
import type { Source } from './source.ts'

/** What a computation answers: a value with the steps to it, or why there is none. */
export type Computation =
  | { readonly value: QuantityValue; readonly steps?: readonly string[]; readonly tables?: readonly QuantityTable[]; readonly notes?: readonly string[] }
  | { readonly reason: Reason; readonly why: string }
  | 'notApplicable'

export interface QuantityDefinition {
  readonly id: string
  readonly title: string
  readonly part: Part
  readonly dimension: Dimension | null
  readonly formula: string
  /** True where a licensed professional has to confirm the result. */
  readonly structural: boolean
  /** True where the method only orders or compares, so that the figure is not one to build by. */
  readonly indicative: boolean
  /** True where an evaluation leaves it out while facts are missing: not every opening is described for it. */
  readonly onlyWhenKnown: boolean
  /** True where it is long to compute or to read, so that an evaluation does without and it is asked for by itself. */
  readonly onRequest: boolean
  /** What a text may be, where only some are possible. */
  readonly choices?: readonly string[]
  readonly sources: readonly Source[]
  /** Everything it may ask for, in the words of `from`. */
  readonly asks: readonly string[]
  readonly evaluate: (inputs: Inputs) => QuantityResult
}

interface Definition<T extends object> {
  readonly id: string
  readonly title: string
  readonly part: Part
  /** The dimension of the value; null for a text. */
  readonly dimension: Dimension | null
  /** The formula in words and symbols, as an estimator would write it. */
  readonly formula: string
  readonly structural?: true
  readonly indicative?: true
  readonly onlyWhenKnown?: true
  readonly onRequest?: true
  readonly choices?: readonly string[]
  /** Published source of the formula itself; figures bring their own. */
  readonly sources?: readonly Source[]
  /** Asked first: where it answers false the quantity does not apply, whatever else is known. */
  readonly appliesTo?: Need<boolean>
  readonly needs: { readonly [K in keyof T]: Need<T[K]> }
  readonly compute: (values: T) => Computation
}

/** Declares a quantity: what it needs, and the formula. Inputs, assumptions, sources and gaps are gathered here. */
export function defineQuantity<T extends object>(definition: Definition<T>): QuantityDefinition {
  const { id, title, part, dimension, formula, structural = false, indicative = false, onlyWhenKnown = false, onRequest = false, choices, sources = [], appliesTo, needs } = definition
  return {
    id, title, part, dimension, formula, structural, indicative, onlyWhenKnown, onRequest, sources, ...(choices ? { choices } : {}),
    asks: asksOf(...(appliesTo ? [appliesTo] : []), ...Object.values<Need<unknown>>(needs)),
    evaluate: evaluator(definition),
  }
}

function evaluator<T extends object>(definition: Definition<T>): QuantityDefinition['evaluate'] {
  const needs = Object.entries<Need<unknown>>(definition.needs)
  return (inputs) => evaluate(definition, needs, inputs)
}

function evaluate<T extends object>(definition: Definition<T>, needs: readonly (readonly [string, Need<unknown>])[], inputs: Inputs): QuantityResult {
  const applies = definition.appliesTo?.find(inputs)
  if (applies?.known && !applies.value) return blank(definition, { status: 'notApplicable', why: `It does not apply where ${applies.used.map(({ from, text }) => `${from} is ${text}`).join(' and ')}.` })
  const found = needs.map(([name, need]) => [name, need.find(inputs)] as const)
  const unknown = [applies, ...found.map(([, need]) => need)].filter((need) => need?.known === false)
  if (unknown.length > 0) return undetermined(definition, unknown, gathered(definition, found))
  const values = Object.fromEntries(found.map(([name, need]) => [name, need.known ? need.value : undefined])) as T
  return settle(definition, definition.compute(values), gathered(definition, found))
}

function undetermined<T extends object>(definition: Definition<T>, unknown: readonly Unknown[], known: Partial<QuantityResult>): QuantityResult {
  if (unknown.some(({ because }) => because?.status === 'notApplicable')) return blank(definition, { status: 'notApplicable', why: unknown.find(({ because }) => because?.why)?.because?.why ?? null })
  const missing = [...new Set(unknown.flatMap((need) => need.missing))]
  const because = unknown.find((need) => need.because)?.because
  return blank(definition, { ...known, missing, reason: missing.length > 0 ? 'missing' : (because?.reason ?? 'missing'), why: because?.why ?? null })
}

function settle<T extends object>(definition: Definition<T>, computed: Computation, with_: Partial<QuantityResult>): QuantityResult {
  if (computed === 'notApplicable') return blank(definition, { status: 'notApplicable' })
  if ('reason' in computed) return blank(definition, { ...with_, reason: computed.reason, why: computed.why })
  const { value, steps = [], tables = [], notes = [] } = computed
  return blank(definition, { ...with_, status: 'computed', value, text: valueText(value, definition.dimension), steps, tables, notes })
}

function gathered<T extends object>(definition: Definition<T>, found: readonly (readonly [string, Found<unknown>])[]) {
  const known = found.flatMap(([name, need]) => (need.known ? [{ name, ...need }] : []))
  return {
    inputs: known.flatMap(({ name, used }) => used.map((input) => ({ name, ...input }))),
    assumptions: [...new Set(known.flatMap(({ assumptions }) => assumptions))],
    sources: distinct([...(definition.sources ?? []), ...known.flatMap(({ sources }) => sources)]),
  }
}

function blank<T extends object>(definition: Definition<T>, rest: Partial<QuantityResult>): QuantityResult {
  const { id, title, part, dimension, formula } = definition
  return {
    id, title, part, dimension, formula, status: 'notDetermined', value: null, text: 'not determined',
    inputs: [], steps: [], tables: [], notes: [], assumptions: [], sources: [], missing: [], reason: null, why: null, ...rest,
  }
}

const wholeTenth_nm = 100_000 // a tenth of a millimetre, as metric tapes and tables go

/** The value in words; a length that no tape shows is given in both systems. */
export function valueText(value: QuantityValue, dimension: Dimension | null): string {
  if (typeof value === 'string') return value
  if (isBand(value)) return `${valueText(value.least, dimension)} to ${valueText(value.greatest, dimension)}`
  if (typeof value !== 'number') return value.map((amount) => valueText(amount, dimension)).join(', ')
  if (dimension === null) return String(value)
  if (dimension === 'length') return lengthText(Math.round(value))
  return quantityText({ dimension, amount: value }, 'inchPound')
}

function lengthText(nanometres: number): string {
  const exact = exactLengthText(nanometres)
  const readable = exact.endsWith('in') || nanometres % wholeTenth_nm === 0
  return readable ? exact : `${computedLengthText(nanometres, 'inchPound')} (${computedLengthText(nanometres, 'si')})`
}

function distinct(sources: readonly Source[]): readonly Source[] {
  return sources.length < 2 ? sources : [...new Map(sources.map((source) => [`${source.title} ${source.locator}`, source])).values()]
}
