import type { Reason } from '../catalog/rule.ts'
import type { Dimension } from '../units/dimension.ts'
import { computedLengthText, exactLengthText, quantityText } from '../units/quantity-text.ts'
import type { Inputs } from './inputs.ts'
import { asksOf, named, type Found, type Need, type Unknown } from './need.ts'
import { isBand, type Part, type QuantityResult, type QuantityTable, type QuantityValue } from './result.ts'
import type { Source } from './source.ts'

interface Computed {
  readonly value: QuantityValue
  readonly steps?: readonly string[]
  readonly tables?: readonly QuantityTable[]
  readonly notes?: readonly string[]
}

/** What a computation answers: a value with the steps to it, or why there is none. */
export type Computation =
  | Computed
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

type Defined = Omit<Definition<object>, 'needs' | 'compute'>

function evaluator<T extends object>(definition: Definition<T>): QuantityDefinition['evaluate'] {
  const names = Object.keys(definition.needs)
  const needs = Object.values<Need<unknown>>(definition.needs)
  return (inputs) => {
    const applies = definition.appliesTo?.find(inputs)
    if (applies?.known && !applies.value) return notApplicable(definition, `It does not apply where ${applies.used.map(({ from, text }) => `${from} is ${text}`).join(' and ')}.`)
    const found = needs.map((need) => need.find(inputs))
    if (applies?.known === false || found.some(isUnknown)) {
      return undetermined(definition, [...(applies ? [applies] : []), ...found].filter(isUnknown), gathered(definition, names, found))
    }
    const computed = definition.compute(named<T>(names, found.map((need) => (need.known ? need.value : undefined))))
    return computed === 'notApplicable' ? notApplicable(definition, null) : settle(definition, computed, gathered(definition, names, found))
  }
}

function isUnknown(found: Found<unknown>): found is Unknown {
  return !found.known
}

function undetermined(definition: Defined, unknown: readonly Unknown[], known: Gathered): QuantityResult {
  if (unknown.some(({ because }) => because?.status === 'notApplicable')) return notApplicable(definition, unknown.find(({ because }) => because?.why)?.because?.why ?? null)
  const missing = [...new Set(unknown.flatMap((need) => need.missing))]
  const because = unknown.find((need) => need.because)?.because
  return resultOf(definition, known, { status: 'notDetermined', missing, reason: missing.length > 0 ? 'missing' : (because?.reason ?? 'missing'), why: because?.why ?? null })
}

function settle(definition: Defined, computed: Exclude<Computation, string>, known: Gathered): QuantityResult {
  if ('reason' in computed) return resultOf(definition, known, { status: 'notDetermined', missing: none, reason: computed.reason, why: computed.why })
  return resultOf(definition, known, { status: 'computed', missing: none, reason: null, why: null }, computed)
}

/** What a quantity was computed from, gathered from all that it needs. */
type Gathered = Pick<QuantityResult, 'inputs' | 'assumptions' | 'sources'>

const none: readonly never[] = []
const nothingGathered: Gathered = { inputs: none, assumptions: none, sources: none }

function gathered({ sources }: Defined, names: readonly string[], found: readonly Found<unknown>[]): Gathered {
  const inputs: QuantityResult['inputs'][number][] = []
  const assumptions: string[] = []
  const cited: Source[] = sources ? [...sources] : []
  found.forEach((need, index) => {
    if (!need.known) return
    const name = names[index] ?? ''
    for (const { from, text } of need.used) inputs.push({ name, from, text })
    for (const assumption of need.assumptions) if (!assumptions.includes(assumption)) assumptions.push(assumption)
    cited.push(...need.sources)
  })
  return { inputs, assumptions, sources: distinct(cited) }
}

function notApplicable(definition: Defined, why: string | null): QuantityResult {
  return resultOf(definition, nothingGathered, { status: 'notApplicable', missing: none, reason: null, why })
}

type State = Pick<QuantityResult, 'status' | 'missing' | 'reason' | 'why'>

function resultOf({ id, title, part, dimension, formula }: Defined, { inputs, assumptions, sources }: Gathered, { status, missing, reason, why }: State, computed?: Computed): QuantityResult {
  const value = computed ? computed.value : null
  return {
    id, title, part, dimension, formula, status, value, text: value === null ? 'not determined' : valueText(value, dimension),
    inputs, steps: computed?.steps ?? none, tables: computed?.tables ?? none, notes: computed?.notes ?? none, assumptions, sources, missing, reason, why,
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

/** Each place in a text once, as it was last given. */
function distinct(sources: readonly Source[]): readonly Source[] {
  const once: Source[] = []
  for (const source of sources) {
    const at = once.findIndex(({ title, locator }) => title === source.title && locator === source.locator)
    if (at < 0) once.push(source)
    else once[at] = source
  }
  return once
}
