import type { Table } from '../catalog/reference.ts'
import type { FactValue, Reading } from '../opening/opening.ts'
import { quantityText } from '../units/quantity-text.ts'
import type { Inputs } from './inputs.ts'
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

/** Facts, in base units: lengths in nanometres, angles in degrees, areal loads in pascals, counts as they are. */
export const fact = {
  amount: (path: string): Need<number> => single(path, (value) => (typeof value === 'object' ? value.amount : undefined)),
  flag: (path: string): Need<boolean> => single(path, (value) => (typeof value === 'boolean' ? value : undefined)),
  choice: (path: string): Need<string> => single(path, (value) => (typeof value === 'string' ? value : undefined)),
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
export const limit = (rule: string): Need<number> => need([`rule ${rule}`], (inputs) => {
  const inForce = inputs.limit(rule)
  if (!inForce) return { known: false, missing: [`rule ${rule}`] }
  return found(inForce.quantity.amount, { from: `rule ${rule}`, text: inForce.text }, [inForce.source])
})

export const parameter = (id: string): Need<number> => need([`parameter ${id}`], (inputs) => {
  const given = inputs.parameter(id)
  if (!given) return { known: false, missing: [`parameter ${id}`] }
  return found(given.quantity.amount, { from: `parameter ${id}`, text: quantityText(given.quantity, given.parameter.governing) }, [given.source])
})

export const table = (id: string): Need<Table> => need([`table ${id}`], (inputs) => {
  const given = inputs.table(id)
  return given ? found(given.table, { from: `table ${id}`, text: given.table.title }, [given.source]) : { known: false, missing: [`table ${id}`] }
})

/** The amount of another quantity, with whatever it was missing. */
export const result = (id: string): Need<number> => need([`quantity ${id}`], (inputs) => {
  const computed = inputs.quantity(id)
  if (computed?.status !== 'computed' || typeof computed.value !== 'number') return unknownResult(id, computed)
  return found(computed.value, { from: `quantity ${id}`, text: computed.text })
})

/** The first table beside the value of another quantity. */
export const resultTable = (id: string): Need<QuantityTable> => need([`quantity ${id}`], (inputs) => {
  const computed = inputs.quantity(id)
  const [first] = computed?.tables ?? []
  return computed?.status === 'computed' && first ? found(first, { from: `quantity ${id}`, text: computed.text }) : unknownResult(id, computed)
})

/** The text of another quantity, such as a section. */
export const resultText = (id: string): Need<string> => need([`quantity ${id}`], (inputs) => {
  const computed = inputs.quantity(id)
  if (computed?.status !== 'computed' || typeof computed.value !== 'string') return unknownResult(id, computed)
  return found(computed.value, { from: `quantity ${id}`, text: computed.text })
})

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
export const combined = <T extends object, R>(needs: { readonly [K in keyof T]: Need<T[K]> }, combine: (values: T) => R): Need<R> => need(asksOf(...Object.values<Need<unknown>>(needs)), (inputs) => {
  const found = together(Object.values<Need<unknown>>(needs).map((wanted) => wanted.find(inputs)))
  if (!found.known) return found
  return { ...found, value: combine(Object.fromEntries(Object.keys(needs).map((name, index) => [name, found.value[index]])) as T) }
})

/** What was found for several needs as one list; unknown while one of them is. */
export function together<T>(found: readonly Found<T>[]): Found<readonly T[]> {
  const value: T[] = []
  const used: Omit<UsedInput, 'name'>[] = []
  const sources: Source[] = []
  const assumptions = new Set<string>()
  for (const one of found) {
    if (!one.known) return unknownOfSeveral(found.flatMap((other) => (other.known ? [] : [other])))
    value.push(one.value)
    used.push(...one.used)
    sources.push(...one.sources)
    for (const assumption of one.assumptions) assumptions.add(assumption)
  }
  return { known: true, value, used, sources, assumptions: [...assumptions] }
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
  return { asks, find }
}

function amountOf(reading: Reading | undefined): number | undefined {
  return typeof reading?.value === 'object' ? reading.value.amount : undefined
}

function found<T>(value: T, used: Omit<UsedInput, 'name'>, sources: readonly Source[] = []): Found<T> {
  return { known: true, value, used: [used], sources, assumptions: [] }
}
