import type { Condition } from '../catalog/condition.ts'
import type { Opening, Reading, Readings } from '../opening/opening.ts'
import { readQuantity } from '../units/quantity.ts'
import { holds } from './compare.ts'

/** Kleene's third value: true, false with the facts that decided, or unknown with the facts that are missing or contradict others. */
export type Truth =
  | { readonly is: true }
  | { readonly is: false; readonly decidedBy: readonly string[] }
  | { readonly is: undefined; readonly missing: readonly string[]; readonly conflicting: readonly string[] }

/** Where the readings of a fact are found: the facts of an opening, or of one end of it. */
export interface KnownFacts {
  get(path: string): Readings | undefined
}

/** A condition made ready to be asked of any opening. */
export type Asked = (facts: KnownFacts) => Truth

export function truthOf(condition: Condition, { facts }: Pick<Opening, 'facts'>): Truth {
  return compileCondition(condition)(facts)
}

/** What can be read from the condition alone is read here, so that asking it compares values and nothing else. */
export function compileCondition(condition: Condition): Asked {
  if ('all' in condition) return every(condition.all.map(compileCondition))
  if ('any' in condition) return negated(every(condition.any.map((inner) => negated(compileCondition(inner), inner))), condition)
  if ('not' in condition) return negated(compileCondition(condition.not), condition.not)
  return factTruth(condition)
}

const holding: Truth = { is: true }

function every(parts: readonly Asked[]): Asked {
  return (facts) => {
    const unknown: Extract<Truth, { is: undefined }>[] = []
    for (const part of parts) {
      const truth = part(facts)
      if (truth.is === false) return truth
      if (truth.is === undefined) unknown.push(truth)
    }
    const [first, ...others] = unknown
    return first ? bothUnknown(first, others) : holding
  }
}

function bothUnknown(first: Extract<Truth, { is: undefined }>, others: readonly Extract<Truth, { is: undefined }>[]): Truth {
  if (others.length === 0) return first
  const all = [first, ...others]
  return { is: undefined, missing: [...new Set(all.flatMap(({ missing }) => missing))], conflicting: [...new Set(all.flatMap(({ conflicting }) => conflicting))] }
}

function negated(asked: Asked, of: Condition): Asked {
  const refuted: Truth = { is: false, decidedBy: factsIn(of) }
  return (facts) => {
    const truth = asked(facts)
    if (truth.is === undefined) return truth
    return truth.is ? refuted : holding
  }
}

export function factsIn(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(factsIn)
  if ('any' in condition) return condition.any.flatMap(factsIn)
  return 'not' in condition ? factsIn(condition.not) : [condition.fact]
}

type FactCondition = Extract<Condition, { fact: string }>

/** True when either end satisfies, false when no end can, unknown otherwise. A reading that others contradict decides neither way. */
function factTruth(condition: FactCondition): Asked {
  const { fact } = condition
  const satisfies = comparison(condition)
  const isMetBy = (reading: Reading | undefined) => reading !== undefined && !reading.conflictsWith && satisfies(reading.value)
  const missing: Truth = { is: undefined, missing: [fact], conflicting: [] }
  const conflicting: Truth = { is: undefined, missing: [], conflicting: [fact] }
  const refuted: Truth = { is: false, decidedBy: [fact] }
  return (facts) => {
    const readings = facts.get(fact)
    if (!readings || readings.length === 0) return missing
    let hasGap = false
    for (const reading of readings) {
      if (isMetBy(reading)) return holding
      if (!reading) hasGap = true
    }
    if (hasGap) return missing
    return readings.some((reading) => reading?.conflictsWith) ? conflicting : refuted
  }
}

function comparison(condition: FactCondition): (value: Reading['value']) => boolean {
  if ('is' in condition) return (value) => value === condition.is
  if ('oneOf' in condition) return (value) => typeof value === 'string' && condition.oneOf.includes(value)
  const bound = readQuantity(condition.quantity)
  return (value) => typeof value === 'object' && bound !== undefined && holds(condition.comparator, value.amount, bound.amount)
}
