import type { FactDefinition } from './fact.ts'
import { onceFor } from './once-for.ts'
import type { Reading, Readings } from './opening.ts'
import type { Checked, Problem } from './problem.ts'
import { recent, type Recall } from './recent.ts'
import { settleValue, type Defaults, type SettleCode } from './settle.ts'

export interface ReadFact {
  readonly readings: Readings
  readonly wrong: readonly Problem<SettleCode>[]
}

const recallFor = onceFor<FactDefinition, Recall<ReadFact>>(() => recent())

/** Reads a fact of a document. What is written in the same words is the same object, by which those who compute from it know it again. */
export function readFact(definition: FactDefinition, wire: unknown, path: readonly string[], defaults: Defaults): ReadFact {
  const isCompound = typeof wire === 'object'
  const words = isCompound ? JSON.stringify(wire) : wire
  return recallFor(definition)([words, isCompound, defaults.lengthUnit, defaults.resolution, path], () => readAnew(definition, wire, path, defaults))
}

function readAnew(definition: FactDefinition, wire: unknown, path: readonly string[], defaults: Defaults): ReadFact {
  const ends = settleFact(definition, wire, path, defaults)
  const wrong = [...new Set(ends)].flatMap((reading) => (reading?.ok === false ? reading.problems : []))
  return { readings: ends.map((reading) => (reading?.ok ? reading.value : undefined)), wrong }
}

/** One fact as one reading, or as [left, right]; a single value of a fact with ends means both. */
export function settleFact(definition: FactDefinition, wire: unknown, path: readonly string[], defaults: Defaults): readonly (Checked<Reading, SettleCode> | undefined)[] {
  if (!definition.perEnd) return [settleValue(definition, wire, path, defaults)]
  const ends: readonly unknown[] = Array.isArray(wire) ? wire : [wire]
  const settled = ends.map((end, index) =>
    end === null || end === undefined ? undefined : settleValue(definition, end, Array.isArray(wire) ? [...path, index] : path, defaults),
  )
  return settled.length === 1 ? [settled[0], settled[0]] : settled
}
