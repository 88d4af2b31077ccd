import type { Condition } from '../catalog/condition.ts'
import type { Opening, Reading } from '../opening/opening.ts'
import { readQuantity } from '../units/quantity.ts'
import { holds } from './compare.ts'

/** Kleene's third value: true, false with the facts that decided, or unknown with the facts that are missing or contradict others. */
export type Truth =
  | { readonly is: true }
  | { readonly is: false; readonly decidedBy: readonly string[] }
  | { readonly is: undefined; readonly missing: readonly string[]; readonly conflicting: readonly string[] }

export function truthOf(condition: Condition, opening: Opening): Truth {
  if ('all' in condition) return every(condition.all.map((inner) => truthOf(inner, opening)))
  if ('any' in condition) return negated(every(condition.any.map((inner) => negated(truthOf(inner, opening), inner))), condition)
  if ('not' in condition) return negated(truthOf(condition.not, opening), condition.not)
  return factTruth(condition, opening)
}

function every(truths: readonly Truth[]): Truth {
  const refuted = truths.find((truth) => truth.is === false)
  if (refuted) return refuted
  const unknown = truths.filter((truth) => truth.is === undefined)
  if (unknown.length === 0) return { is: true }
  const [missing, conflicting] = [unknown.flatMap((truth) => truth.missing), unknown.flatMap((truth) => truth.conflicting)]
  return { is: undefined, missing: [...new Set(missing)], conflicting: [...new Set(conflicting)] }
}

function negated(truth: Truth, of: Condition): Truth {
  if (truth.is === undefined) return truth
  return truth.is ? { is: false, decidedBy: factsIn(of) } : { is: true }
}

export function factsIn(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(factsIn)
  if ('any' in condition) return condition.any.flatMap(factsIn)
  return 'not' in condition ? factsIn(condition.not) : [condition.fact]
}

type FactCondition = Extract<Condition, { fact: string }>

/** True when either end satisfies, false when no end can, unknown otherwise. A reading that others contradict decides neither way. */
function factTruth(condition: FactCondition, opening: Opening): Truth {
  const readings = opening.facts.get(condition.fact) ?? []
  if (readings.some((reading) => reading && !reading.conflictsWith && satisfies(condition, reading))) return { is: true }
  if (readings.length === 0 || readings.includes(undefined)) return { is: undefined, missing: [condition.fact], conflicting: [] }
  if (readings.some((reading) => reading?.conflictsWith)) return { is: undefined, missing: [], conflicting: [condition.fact] }
  return { is: false, decidedBy: [condition.fact] }
}

function satisfies(condition: FactCondition, { value }: Reading): boolean {
  if ('is' in condition) return value === condition.is
  if ('oneOf' in condition) return typeof value === 'string' && condition.oneOf.includes(value)
  const bound = readQuantity(condition.quantity)
  return typeof value === 'object' && bound !== undefined && holds(condition.comparator, value.amount, bound.amount)
}
