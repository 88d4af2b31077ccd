import type { FactDefinition } from './fact.ts'
import type { Reading, Readings } from './opening.ts'
import type { Checked, Problem } from './problem.ts'
import { settleValue, type Defaults, type SettleCode } from './settle.ts'

export interface ReadFact {
  readonly readings: Readings
  readonly wrong: readonly Problem<SettleCode>[]
}

type ByFact = Map<FactDefinition, Map<unknown, ReadFact>>

/** What was read before, by fact and by what was written; lists and objects by their JSON, apart from texts that look the same. */
interface WrittenBefore {
  readonly plain: ByFact
  readonly compound: ByFact
}

/** Of documents with the same unit and tape. The bounds keep callers from filling the memory. */
const written = new Map<string, WrittenBefore>()
const [mostDefaults, mostWords, longestWord] = [8, 64, 200]

/** Reads facts of one document. What is written in the same words is read once and is the same object, by which those who compute from it know it again. */
export function factReader(defaults: Defaults): (definition: FactDefinition, wire: unknown, path: readonly string[]) => ReadFact {
  const { plain, compound } = writtenWith(defaults)
  return (definition, wire, path) => {
    const isCompound = typeof wire === 'object'
    const word = isCompound ? JSON.stringify(wire) : wire
    const before = isCompound ? compound : plain
    const known = before.get(definition) ?? new Map<unknown, ReadFact>()
    const ready = known.get(word)
    if (ready) return ready
    const read = readFact(definition, wire, path, defaults)
    if (read.wrong.length > 0 || (typeof word === 'string' && word.length > longestWord)) return read
    if (known.size >= mostWords) known.clear()
    before.set(definition, known.set(word, read))
    return read
  }
}

function writtenWith({ lengthUnit = '', resolution = '' }: { readonly lengthUnit?: string; readonly resolution?: number | string }): WrittenBefore {
  const words = `${lengthUnit} ${resolution}`
  const before: WrittenBefore = written.get(words) ?? { plain: new Map(), compound: new Map() }
  if (!written.has(words) && written.size >= mostDefaults) written.clear()
  written.set(words, before)
  return before
}

function readFact(definition: FactDefinition, wire: unknown, path: readonly string[], defaults: Defaults): ReadFact {
  const settled = settleFact(definition, wire, path, defaults)
  const wrong = [...new Set(settled)].flatMap((reading) => (reading?.ok === false ? reading.problems : []))
  return { readings: settled.map((reading) => (reading?.ok ? reading.value : undefined)), wrong }
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
