import { asksOf, combined, foundOnce, optional, type Found, type Need } from './need.ts'

/** The greatest of those that are known; unknown only while none is. */
export const greatest = (...wanted: readonly Need<number>[]): Need<number> => best(wanted, (value, other) => value > other)

/** The one that is best of those that are known; unknown only while none is. */
export function best<T>(wanted: readonly Need<T>[], isBetter: (value: T, other: T) => boolean): Need<T> {
  return foundOnce({
    asks: asksOf(...wanted),
    find: (inputs) => {
      const found = wanted.map((need) => need.find(inputs))
      const [first, ...others] = found.flatMap((one) => (one.known ? [one] : []))
      if (!first) return { known: false, missing: [...new Set(found.flatMap((one) => (one.known ? [] : one.missing)))] }
      const known = [first, ...others]
      const { value } = others.reduce((winner, one) => (isBetter(one.value, winner.value) ? one : winner), first)
      const used = new Map(known.flatMap((one) => one.used.map((input) => [input.from, input] as const)))
      return { known: true, value, used: [...used.values()], sources: known.flatMap(({ sources }) => sources), assumptions: known.flatMap(({ assumptions }) => assumptions) }
    },
  })
}

/** The first that is known, where each is as good a source as the other; what is missing is what the last one lacks. */
export function firstKnown<T>(...wanted: readonly [Need<T>, ...Need<T>[]]): Need<T> {
  return foundOnce({
    asks: asksOf(...wanted),
    find: (inputs) => {
      const [first, ...others] = wanted
      return others.reduce((found, other) => (found.known ? found : other.find(inputs)), first.find(inputs))
    },
  })
}

/** One thing where the condition holds and another where it does not; only the one that counts is asked for. */
export function whether<T>(condition: Need<boolean>, then: Need<T>, otherwise: Need<T>): Need<T> {
  return foundOnce({
    asks: asksOf(condition, then, otherwise),
    find: (inputs) => {
      const holds = condition.find(inputs)
      return holds.known ? alsoUsing(holds, (holds.value ? then : otherwise).find(inputs)) : holds
    },
  })
}

/** Whether it is known at all. */
export const isKnown = (wanted: Need<unknown>): Need<boolean> => combined({ value: optional(wanted) }, ({ value }) => value !== undefined)

/** Says what is assumed in taking it. */
export function assuming<T>(wanted: Need<T>, assumption: string): Need<T> {
  return foundOnce({
    asks: wanted.asks,
    find: (inputs) => {
      const given = wanted.find(inputs)
      return given.known ? { ...given, assumptions: [...given.assumptions, assumption] } : given
    },
  })
}

/** Each input and source shown once, where a need is made of parts that go by the same ones. */
export function shownOnce<T>(wanted: Need<T>): Need<T> {
  return foundOnce({
    asks: wanted.asks,
    find: (inputs) => {
      const given = wanted.find(inputs)
      if (!given.known) return given
      const used = new Map(given.used.map((input) => [`${input.from} ${input.text}`, input] as const))
      return { ...given, used: [...used.values()], assumptions: [...new Set(given.assumptions)] }
    },
  })
}

/** Not known where the condition is not, or is false. */
export function onlyWhere<T>(condition: Need<boolean>, wanted: Need<T>): Need<T> {
  return foundOnce({
    asks: asksOf(condition, wanted),
    find: (inputs) => {
      const holds = condition.find(inputs)
      if (!holds.known) return holds
      return holds.value ? alsoUsing(holds, wanted.find(inputs)) : { known: false, missing: [] }
    },
  })
}

/** Not known where it is 0 or less: a rule that asks for "more than 0" gives no length to go by. */
export function positive(wanted: Need<number>): Need<number> {
  return foundOnce({
    asks: wanted.asks,
    find: (inputs) => {
      const given = wanted.find(inputs)
      return given.known && given.value <= 0 ? { known: false, missing: given.used.map(({ from }) => from) } : given
    },
  })
}

/** A value to go on with where nobody gave one; always the second of an `orElse`, which says it. */
export function taken<T>(value: T): Need<T> {
  return { asks: [], find: () => ({ known: true, value, used: [], sources: [], assumptions: [] }) }
}

function alsoUsing<T>(holds: Extract<Found<boolean>, { known: true }>, given: Found<T>): Found<T> {
  if (!given.known) return given
  return { ...given, used: [...holds.used, ...given.used], sources: [...holds.sources, ...given.sources], assumptions: [...holds.assumptions, ...given.assumptions] }
}
