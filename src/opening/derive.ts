import type { Quantity } from '../units/quantity.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import type { FactValue, Reading, Readings } from './opening.ts'

type Facts = ReadonlyMap<string, Readings>

/** A fact that follows from others, end by end. */
interface Derivation {
  readonly fact: string
  readonly from: readonly string[]
  readonly ends: 1 | 2
  readonly value: (given: readonly FactValue[]) => FactValue | undefined
}

const derivations: readonly Derivation[] = [
  presence('head.flashing.endDamPresent', 'head.flashing.endDamHeight'),
  presence('sill.flashing.endDamPresent', 'sill.flashing.endDamHeight'),
  {
    fact: 'head.flashing.extensionPastSupport',
    from: ['head.flashing.extensionPastJamb', 'head.support.bearing'],
    ends: 2,
    value: ([pastJamb, bearing]) => combined('length', pastJamb, bearing, (a, b) => a - b),
  },
  {
    fact: 'ties.areaPerTie',
    from: ['ties.horizontalSpacing', 'ties.verticalSpacing'],
    ends: 1,
    value: ([horizontal, vertical]) => combined('area', horizontal, vertical, (a, b) => (a / 1e6) * (b / 1e6)),
  },
  {
    fact: 'head.flashing.frontEdge',
    from: ['head.flashing.projection'],
    ends: 1,
    value: ([projection]) => (typeof projection === 'object' ? edgeAt(projection.amount) : undefined),
  },
]

/** Adds the facts that follow from those given. A given fact is never replaced; where the two disagree, it is marked. */
export function derive(given: Facts): Facts {
  const all = new Map(given)
  for (const derivation of derivations) {
    const present = given.get(derivation.fact) ?? []
    const readings = Array.from({ length: derivation.ends }, (_, end) => merged(present[end], derivedAt(given, derivation, end)))
    if (readings.some((reading) => reading !== undefined)) all.set(derivation.fact, readings)
  }
  return all
}

function derivedAt(given: Facts, { from, value }: Derivation, end: number): Reading | undefined {
  const readings = from.map((path) => given.get(path)?.[end])
  const values = readings.flatMap((reading) => (reading ? [reading.value] : []))
  const derived = values.length === from.length ? value(values) : undefined
  return derived === undefined ? undefined : { value: derived, text: textOf(derived), derivedFrom: from }
}

function merged(given: Reading | undefined, derived: Reading | undefined): Reading | undefined {
  if (!given || !derived) return given ?? derived
  return same(given.value, derived.value) ? given : { ...given, conflictsWith: derived.derivedFrom ?? [] }
}

function presence(fact: string, height: string): Derivation {
  return { fact, from: [height], ends: 2, value: ([given]) => (typeof given === 'object' ? given.amount > 0 : undefined) }
}

function combined(dimension: Quantity['dimension'], a: FactValue | undefined, b: FactValue | undefined, combine: (a: number, b: number) => number): Quantity | undefined {
  return typeof a === 'object' && typeof b === 'object' ? { dimension, amount: combine(a.amount, b.amount) } : undefined
}

function edgeAt(projection: number): string {
  if (projection === 0) return 'flushWithFace'
  return projection > 0 ? 'pastFace' : 'shortOfFace'
}

function same(a: FactValue, b: FactValue): boolean {
  return typeof a === 'object' && typeof b === 'object' ? a.amount === b.amount : a === b
}

function textOf(value: FactValue): string {
  if (typeof value !== 'object') return String(value)
  return value.dimension === 'length' ? exactLengthText(value.amount) : quantityText(value, 'inchPound')
}
