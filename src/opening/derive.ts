import type { Quantity } from '../units/quantity.ts'
import { exactLengthText, quantityText } from '../units/quantity-text.ts'
import { onceFor } from './once-for.ts'
import type { FactValue, Reading, Readings } from './opening.ts'
import { recent, type Recall } from './recent.ts'

type Facts = ReadonlyMap<string, Readings>

/** A fact that follows from others, end by end. */
interface Derivation {
  readonly fact: string
  readonly from: readonly string[]
  readonly ends: 1 | 2
  readonly value: (given: readonly FactValue[]) => FactValue | undefined
  /** True when a given value fits although it is not the derived one: two splices fit "at least one". */
  readonly allows?: (given: FactValue) => boolean
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
  {
    fact: 'head.flashing.splices',
    from: ['head.flashing.spliceLap'],
    ends: 1,
    value: () => ({ dimension: 'count', amount: 1 }),
    allows: (given) => typeof given === 'object' && given.amount >= 1,
  },
]

/** Adds the facts that follow from those given. A given fact is never replaced; where the two disagree, it is marked. */
export function derive(given: Facts): Facts {
  const all = new Map(given)
  for (const derivation of derivations) {
    const readings = derivedReadings(given, derivation)
    if (readings.some((reading) => reading !== undefined)) all.set(derivation.fact, readings)
  }
  return all
}

/** From the same readings follows the same object. */
function derivedReadings(given: Facts, derivation: Derivation): Readings {
  const present = given.get(derivation.fact)
  return recallFor(derivation)([present, ...derivation.from.map((path) => given.get(path))], () =>
    Array.from({ length: derivation.ends }, (_, end) => merged(present?.[end], derivedAt(given, derivation, end), derivation.allows)))
}

const recallFor = onceFor<Derivation, Recall<Readings>>(() => recent())

function derivedAt(given: Facts, { from, value }: Derivation, end: number): Reading | undefined {
  const readings = from.map((path) => given.get(path)?.[end])
  const values = readings.flatMap((reading) => (reading ? [reading.value] : []))
  const derived = values.length === from.length ? value(values) : undefined
  if (derived === undefined) return undefined
  const resolution = typeof derived === 'object' && derived.dimension === 'length' ? readings.reduce((sum, reading) => sum + (reading?.resolution ?? 0), 0) : 0
  return { value: derived, text: textOf(derived), derivedFrom: from, ...(resolution > 0 ? { resolution } : {}) }
}

function merged(given: Reading | undefined, derived: Reading | undefined, allows: Derivation['allows']): Reading | undefined {
  if (!given || !derived) return given ?? derived
  return allows?.(given.value) || agree(given, derived) ? given : { ...given, conflictsWith: derived.derivedFrom ?? [] }
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

/** Amounts agree as far as the tapes can tell, and as far as the given figure is printed: 2.67 sq ft is 16 in by 24 in. */
function agree(given: Reading, derived: Reading): boolean {
  if (typeof given.value !== 'object' || typeof derived.value !== 'object') return given.value === derived.value
  const slack = (given.resolution ?? 0) + (derived.resolution ?? 0) + (given.value.dimension === 'length' ? 0 : printedSlack(given.text, given.value.amount))
  return Math.abs(given.value.amount - derived.value.amount) <= slack
}

/** Half a step of the last printed digit; of a fraction, what floating arithmetic may add. */
function printedSlack(text: string, amount: number): number {
  const number = /^\s*(\d*\.?\d+)(?![\d./ ]*\/)/.exec(text)?.[1]
  if (number === undefined) return amount * 1e-9
  const decimals = number.split('.')[1]?.length ?? 0
  return amount * (10 ** -decimals / 2 / Number(number) + 1e-9)
}

function textOf(value: FactValue): string {
  if (typeof value !== 'object') return String(value)
  return value.dimension === 'length' ? exactLengthText(value.amount) : quantityText(value, 'inchPound')
}
