import { digestOf } from '../catalog/digest.ts'
import { facts } from '../opening/facts.ts'
import { laid } from '../opening/lay.ts'
import type { FactValue, Reading } from '../opening/opening.ts'
import { grouped } from './grouped.ts'
import type { Observed } from './observed.ts'

/** Every reading of one fact at one end, the one that governs first. */
export interface FactRecord {
  readonly fact: string
  readonly member: 'left' | 'right' | null
  readonly governs: Observed
  readonly earlier: readonly Observed[]
  /** True when an earlier reading says something else than the one that governs, beyond what the tapes can tell. */
  readonly contradicted: boolean
}

/** What was seen, fact by fact and end by end. The latest reading governs; nothing is dropped, and what disagrees is marked. */
export function asBuiltOf(observed: readonly Observed[]): readonly FactRecord[] {
  const places = [...facts.keys()].flatMap((fact) => ([null, 'left', 'right'] as const).map((member) => ({ fact, member })))
  const byPlace = grouped(observed, placeOf)
  return places.flatMap(({ fact, member }) => {
    const [governs, ...earlier] = (byPlace.get(placeOf({ fact, member })) ?? []).toSorted(latestFirst)
    return governs ? [{ fact, member, governs, earlier, contradicted: earlier.some((other) => !agree(governs.reading, other.reading)) }] : []
  })
}

/** The description that the governing readings make, laid over another where there is one. */
export function describedBy(records: readonly FactRecord[], over: Readonly<Record<string, unknown>> = {}): Readonly<Record<string, unknown>> {
  const wires = grouped(records, ({ fact }) => fact)
  return [...wires].reduce<Readonly<Record<string, unknown>>>((described, [fact, ends]) => laid(described, fact.split('.'), (before) => wireOf(fact, ends, before)), over)
}

/** Settled amounts agree as far as both tapes can tell; everything else has to be the same. */
export function agree(one: Reading, other: Reading): boolean {
  if (typeof one.value !== 'object' || typeof other.value !== 'object') return same(one.value, other.value)
  return one.value.dimension === other.value.dimension && Math.abs(one.value.amount - other.value.amount) <= (one.resolution ?? 0) + (other.resolution ?? 0)
}

function same(one: FactValue, other: FactValue): boolean {
  return digestOf(one) === digestOf(other)
}

/** By the clock of whoever read it; of two at the same moment, the one that arrived later. */
function latestFirst(a: Observed, b: Observed): number {
  return Date.parse(b.at) - Date.parse(a.at) || b.sequence - a.sequence
}

function placeOf({ fact, member }: Pick<Observed, 'fact' | 'member'>): string {
  return `${fact} ${member ?? ''}`
}

/** An end that nobody has seen keeps what was there before. */
function wireOf(fact: string, records: readonly FactRecord[], before: unknown): unknown {
  if (facts.get(fact)?.perEnd !== true) return records[0]?.governs.wire
  const [left, right] = Array.isArray(before) ? (before as unknown[]) : [before, before]
  const at = (member: 'left' | 'right') => records.find((record) => record.member === member)?.governs.wire
  return [at('left') ?? left ?? null, at('right') ?? right ?? null]
}
