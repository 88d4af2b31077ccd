import type { UnitSystem } from '../units/dimension.ts'
import type { Quantity } from '../units/quantity.ts'

export type FactValue = Quantity | boolean | string

/** One value of one fact, settled into base units, with the words in which it was given. */
export interface Reading {
  readonly value: FactValue
  readonly text: string
  /** What the tape could tell, in nanometres. */
  readonly resolution?: number
  /** The facts it was worked out from, when nobody gave it. */
  readonly derivedFrom?: readonly string[]
  /** The facts from which another value follows than the one given. */
  readonly conflictsWith?: readonly string[]
}

/** One reading, or a left and a right one seen from outside; undefined where nothing is known. */
export type Readings = readonly (Reading | undefined)[]

/** An opening with every length settled and every fact under its path. Facts that are not known are not in the map. */
export interface Opening {
  readonly reference?: string
  readonly basis?: 'asDesigned' | 'asBuilt'
  /** The system in which the document gives its lengths; answers lead with it. */
  readonly unitSystem: UnitSystem
  readonly facts: ReadonlyMap<string, Readings>
}

/** The one value of a fact without ends, or undefined when it is not known. */
export function valueOf(opening: Opening, path: string): FactValue | undefined {
  return opening.facts.get(path)?.[0]?.value
}
