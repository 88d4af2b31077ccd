import { closest } from 'fastest-levenshtein'
import type { Problem } from '../opening/problem.ts'
import { describePart } from '../opening/describe.ts'
import { facts } from '../opening/facts.ts'
import { laid } from '../opening/lay.ts'
import type { Reading } from '../opening/opening.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import type { UnreadEntry } from './entry.ts'

export type Observation = NonNullable<UnreadEntry['observation']>

/** One reading of one fact, at one end where it has two, with who read it and when. */
export interface Observed {
  readonly entry: string
  readonly fact: string
  /** Null where the fact has no ends. */
  readonly member: 'left' | 'right' | null
  readonly reading: Reading
  /** As it stands in a description; lengths with their unit. */
  readonly wire: unknown
  readonly method: Observation['method']
  readonly holdPoint: HoldPoint
  readonly at: string
  readonly by: string
  readonly sequence: number
}

/** What is wrong with an observation: an unknown fact, an end that it has not, a value that cannot be read. */
export function observationProblems(observation: Observation): readonly Problem[] {
  const definition = facts.get(observation.fact)
  if (!definition) return [{ code: 'unknownFact', pointer: '/fact', detail: `"${observation.fact}" is not a fact. Did you mean "${closest(observation.fact, [...facts.keys()])}"?` }]
  if (observation.member && !definition.perEnd) return [{ code: 'notAllowed', pointer: '/member', detail: `"${definition.title}" has no left and right.` }]
  const read = describePart(documentWith(observation))
  return read.ok ? [] : read.problems.map(({ code, detail }) => ({ code, pointer: '/value', detail }))
}

/** The readings that an observation stands for: one, or one for each end where it says none. */
export function observedIn(observation: Observation, about: Omit<Observed, 'fact' | 'member' | 'reading' | 'wire' | 'method' | 'holdPoint'>): readonly Observed[] {
  const read = describePart(documentWith(observation))
  const definition = facts.get(observation.fact)
  if (!read.ok || !definition) throw new Error(`observation ${about.entry} was taken in and cannot be read`)
  const readings = read.value.facts.get(observation.fact) ?? []
  const { fact, method, holdPoint, lengthUnit } = observation
  return readings.flatMap((reading, index) => {
    if (!reading) return []
    const member = definition.perEnd ? (index === 0 ? ('left' as const) : ('right' as const)) : null
    return [{ ...about, fact, member, reading, method, holdPoint, wire: wireOf(observation.value, definition.dimension === 'length' ? (lengthUnit ?? undefined) : undefined) }]
  })
}

/** A description that holds this one value, so that it is read by the same rules as every other. */
function documentWith({ fact, member, value, lengthUnit }: Observation): object {
  const wire = member ? (member === 'left' ? [value, null] : [null, value]) : value
  return laid(lengthUnit ? { lengthUnit } : {}, fact.split('.'), () => wire)
}

/** A length written without a unit takes it along, since the description it goes into may have another. */
function wireOf(value: unknown, lengthUnit: string | undefined): unknown {
  const bare = typeof value === 'number' || (typeof value === 'string' && /^[\d\s./-]+$/.test(value))
  return lengthUnit !== undefined && bare ? `${String(value)} ${lengthUnit}` : value
}
