import type { Table } from '../catalog/reference.ts'
import { onceFor } from '../opening/once-for.ts'
import type { FactValue, Reading } from '../opening/opening.ts'
import { quantityText } from '../units/quantity-text.ts'
import type { Inputs, LimitInForce } from './inputs.ts'
import type { QuantityResult, QuantityTable, UsedInput } from './result.ts'
import type { Source } from './source.ts'

export type Found<T> =
  | { readonly known: true; readonly value: T; readonly used: readonly Omit<UsedInput, 'name'>[]; readonly sources: readonly Source[]; readonly assumptions: readonly string[] }
  | Unknown

/** Not known: what is missing, or why a quantity built upon gave no value. */
export interface Unknown {
  readonly known: false
  readonly missing: readonly string[]
  readonly because?: Pick<QuantityResult, 'status' | 'reason' | 'why'>
}

/** Something a quantity computes with: a fact, a limit in force, a parameter, a table or another quantity. */
export interface Need<T> {
  /** Everything it may ask for, in the words of `from`: "opening.width", "rule weep.spacing", "parameter steel.elastic-modulus". */
  readonly asks: readonly string[]
  readonly find: (inputs: Inputs) => Found<T>
}

/** The quantities that need the same need one thing, which is then found once for all of them. */
function oneEach<T>(make: (id: string) => Need<T>): (id: string) => Need<T> {
  const made = new Map<string, Need<T>>()
  return (id) => {
    const known = made.get(id) ?? make(id)
    made.set(id, known)
    return known
  }
}

/** Facts, in base units: lengths in nanometres, angles in degrees, areal loads in pascals, counts as they are. */
export const fact = {
  amount: oneEach((path): Need<number> => single(path, (value) => (typeof value === 'object' ? value.amount : undefined))),
  flag: oneEach((path): Need<boolean> => single(path, (value) => (typeof value === 'boolean' ? value : undefined))),
  choice: oneEach((path): Need<string> => single(path, (value) => (typeof value === 'string' ? value : undefined))),
  /** The left and right amount; unknown while either end is. */
  ends: (path: string): Need<readonly [left: number, right: number]> => need([path], (inputs) => {
    const [left, right] = [inputs.fact(path)?.[0], inputs.fact(path)?.[1]].map(amountOf)
    if (left === undefined || right === undefined) return { known: false, missing: [path] }
    return found([left, right] as const, { from: path, text: (inputs.fact(path) ?? []).map((reading) => reading?.text).join(' and ') })
  }),
  /** The amount at one end, seen from outside. */
  end: (path: string, end: 'left' | 'right'): Need<number> => need([path], (inputs) => {
    const reading = inputs.fact(path)?.[end === 'left' ? 0 : 1]
    const amount = amountOf(reading)
    return reading === undefined || amount === undefined ? { known: false, missing: [path] } : found(amount, { from: path, text: `${end} ${reading.text}` })
  }),
  /** Whether either end is true; unknown while neither is and one is not known. */
  atEitherEnd: (path: string): Need<boolean> => need([path], (inputs) => {
    const ends = inputs.fact(path) ?? []
    if (ends.some((reading) => reading?.value === true)) return found(true, { from: path, text: 'true' })
    return ends.length > 0 && ends.every((reading) => reading?.value === false) ? found(false, { from: path, text: 'false' }) : { known: false, missing: [path] }
  }),
}

/** The amount that a rule in force allows or asks for; unknown where the rule is not in force or gives no amount. */
export const limit = oneEach((rule): Need<number> => {
  const foundIn = foundFor((inForce: LimitInForce) => found(inForce.quantity.amount, { from: `rule ${rule}`, text: inForce.text }, [inForce.source]))
  return need([`rule ${rule}`], (inputs) => foundIn(inputs.limit(rule)) ?? { known: false, missing: [`rule ${rule}`] })
})

export const parameter = oneEach((id): Need<number> => {
  const foundIn = foundFor(({ quantity, parameter, source }: GivenParameter) => found(quantity.amount, { from: `parameter ${id}`, text: quantityText(quantity, parameter.governing) }, [source]))
  return need([`parameter ${id}`], (inputs) => foundIn(inputs.parameter(id)) ?? { known: false, missing: [`parameter ${id}`] })
})

export const table = oneEach((id): Need<Table> => {
  const foundIn = foundFor(({ table, source }: GivenTable) => found(table, { from: `table ${id}`, text: table.title }, [source]))
  return need([`table ${id}`], (inputs) => foundIn(inputs.table(id)) ?? { known: false, missing: [`table ${id}`] })
})

type GivenParameter = NonNullable<ReturnType<Inputs['parameter']>>
type GivenTable = NonNullable<ReturnType<Inputs['table']>>

/** What is found in a figure of the catalog or a limit in force is the same for every opening, and is put into words once. */
function foundFor<G extends object, T>(wordsOf: (given: G) => Found<T>): (given: G | undefined) => Found<T> | undefined {
  const words = onceFor(wordsOf)
  return (given) => (given === undefined ? undefined : words(given))
}

/** The amount of another quantity, with whatever it was missing. */
export const result = oneEach((id): Need<number> => need([`quantity ${id}`], (inputs) => {
  const computed = inputs.quantity(id)
  if (computed?.status !== 'computed' || typeof computed.value !== 'number') return unknownResult(id, computed)
  return found(computed.value, { from: `quantity ${id}`, text: computed.text })
}))

/** The first table beside the value of another quantity. */
export const resultTable = oneEach((id): Need<QuantityTable> => need([`quantity ${id}`], (inputs) => {
  const computed = inputs.quantity(id)
  const [first] = computed?.tables ?? []
  return computed?.status === 'computed' && first ? found(first, { from: `quantity ${id}`, text: computed.text }) : unknownResult(id, computed)
}))

/** The text of another quantity, such as a section. */
export const resultText = oneEach((id): Need<string> => need([`quantity ${id}`], (inputs) => {
  const computed = inputs.quantity(id)
  if (computed?.status !== 'computed' || typeof computed.value !== 'string') return unknownResult(id, computed)
  return found(computed.value, { from: `quantity ${id}`, text: computed.text })
}))

/** The first that is known; taking the second is said as an assumption. */
export const orElse = <T>(first: Need<T>, second: Need<T>, assumption: string): Need<T> => need(asksOf(first, second), (inputs) => {
  const given = first.find(inputs)
  if (given.known) return given
  const assumed = second.find(inputs)
  return assumed.known ? { ...assumed, assumptions: [...assumed.assumptions, assumption] } : given
})

/** Whether a fact is one of these choices: to what a quantity applies. */
export const choiceIs = (path: string, ...choices: readonly string[]): Need<boolean> => combined({ choice: fact.choice(path) }, ({ choice }) => choices.includes(choice))

/** One need made of several; all of them have to be known. */
export const combined = <T extends object, R>(needs: { readonly [K in keyof T]: Need<T[K]> }, combine: (values: T) => R): Need<R> => {
  const names = Object.keys(needs)
  const wanted = Object.values<Need<unknown>>(needs)
  const [first, ...others] = wanted
  const [name = ''] = names
  const findOne = (only: Need<unknown>) => (inputs: Inputs): Found<R> => {
    const found = only.find(inputs)
    return found.known ? { known: true, value: combine({ [name]: found.value } as T), used: found.used, sources: found.sources, assumptions: found.assumptions } : found
  }
  const findAll = (inputs: Inputs): Found<R> => {
    const found = together(wanted.map((one) => one.find(inputs)))
    return found.known ? { known: true, value: combine(named<T>(names, found.value)), used: found.used, sources: found.sources, assumptions: found.assumptions } : found
  }
  return need(asksOf(...wanted), first && others.length === 0 ? findOne(first) : findAll)
}

/** The values of several needs under their names. */
export function named<T extends object>(names: readonly string[], values: readonly unknown[]): T {
  const all: Record<string, unknown> = {}
  names.forEach((name, index) => { all[name] = values[index] })
  return all as T
}

/** What was found for several needs as one list; unknown while one of them is. */
export function together<T>(found: readonly Found<T>[]): Found<readonly T[]> {
  if (!found.every((one) => one.known)) return unknownOfSeveral(found.flatMap((one) => (one.known ? [] : [one])))
  const assumptions = joined(found.map((one) => one.assumptions))
  return {
    known: true,
    value: found.map(({ value }) => value),
    used: joined(found.map(({ used }) => used)),
    sources: joined(found.map(({ sources }) => sources)),
    assumptions: assumptions.length > 1 ? [...new Set(assumptions)] : assumptions,
  }
}

/** Several lists as one; the list itself where no other has anything in it. */
function joined<T>(lists: readonly (readonly T[])[]): readonly T[] {
  let whole: readonly T[] = none
  let own: T[] | undefined
  for (const list of lists) {
    if (list.length === 0) continue
    if (whole.length === 0) whole = list
    else {
      own ??= [...whole]
      for (const one of list) own.push(one)
      whole = own
    }
  }
  return whole
}

/** What several needs may ask for, each once. */
export function asksOf(...needs: readonly Need<unknown>[]): readonly string[] {
  return [...new Set(needs.flatMap(({ asks }) => asks))]
}

/** Undefined where it is not known, for a formula that can do without. */
export const optional = <T>(wanted: Need<T>): Need<T | undefined> => need<T | undefined>(wanted.asks, (inputs) => {
  const given = wanted.find(inputs)
  return given.known ? given : { known: true, value: undefined, used: [], sources: [], assumptions: [] }
})

function unknownResult(id: string, computed: QuantityResult | undefined): Unknown {
  return computed ? { known: false, missing: computed.missing, because: computed } : { known: false, missing: [`quantity ${id}`] }
}

function unknownOfSeveral(unknown: readonly Unknown[]): Unknown {
  const because = unknown.find((part) => part.because?.status === 'notApplicable')?.because ?? unknown.find((part) => part.because)?.because
  return { known: false, missing: [...new Set(unknown.flatMap(({ missing }) => missing))], ...(because ? { because } : {}) }
}

function single<T>(path: string, read: (value: FactValue) => T | undefined): Need<T> {
  return need([path], (inputs) => {
    const reading = inputs.fact(path)?.[0]
    const value = reading && read(reading.value)
    return reading === undefined || value === undefined ? { known: false, missing: [path] } : found(value, { from: path, text: reading.text })
  })
}

function need<T>(asks: readonly string[], find: (inputs: Inputs) => Found<T>): Need<T> {
  return foundOnce({ asks, find })
}

/** Every need has a place of its own in the room for what was found. */
let places = 0

export function roomForFound(): unknown[] {
  return new Array<unknown>(places)
}

/** Found once for the inputs of an evaluation, in which many quantities are made of the same needs. */
export function foundOnce<T>({ asks, find }: Need<T>): Need<T> {
  const place = places++
  return {
    asks,
    find: (inputs) => {
      if (!inputs.found) return find(inputs)
      return (inputs.found[place] ??= find(inputs)) as Found<T>
    },
  }
}

function amountOf(reading: Reading | undefined): number | undefined {
  return typeof reading?.value === 'object' ? reading.value.amount : undefined
}

function found<T>(value: T, used: Omit<UsedInput, 'name'>, sources: readonly Source[] = none): Found<T> {
  return { known: true, value, used: [used], sources, assumptions: none }
}

const none: readonly never[] = []
