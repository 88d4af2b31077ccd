import type { z } from 'zod'
import { readLength } from '../units/length-text.ts'
import { derive } from './derive.ts'
import type { FactDefinition } from './fact.ts'
import { facts } from './facts.ts'
import { onceFor } from './once-for.ts'
import type { Opening, Readings } from './opening.ts'
import { pointerOf, type Checked, type Problem } from './problem.ts'
import { openingSchema, partialOpeningSchema, type OpeningInput } from './schema.ts'
import { settleValue, type Defaults, type SettleCode } from './settle.ts'
import { shapeProblems, type ShapeCode } from './shape-problems.ts'

export type DescriptionCode = ShapeCode | SettleCode

/** Reads an opening description: its shape, then every length and amount. Answers every problem at once. */
export function describeOpening(document: unknown): Checked<Opening, DescriptionCode> {
  return describe(openingSchema, document)
}

/** Reads as much of a description as there is: for a single quantity, nothing has to be given. */
export function describePart(document: unknown): Checked<Opening, DescriptionCode> {
  return describe(partialOpeningSchema, document)
}

function describe(schema: z.ZodType, document: unknown): Checked<Opening, DescriptionCode> {
  const parsed = schema.safeParse(document, { reportInput: true })
  const shape = parsed.success ? [] : shapeProblems(schema, parsed.error)
  const { opening, problems } = settle(document, shape)
  return shape.length + problems.length > 0 ? { ok: false, problems: [...shape, ...problems] } : { ok: true, value: opening }
}

/** Settles what has the right shape even when other parts do not, so that nobody mends a document twice. */
function settle(document: unknown, shape: readonly Problem[]): { opening: Opening; problems: readonly Problem<DescriptionCode>[] } {
  const known = isRecord(document) ? (document as Partial<OpeningInput>) : {}
  const problems: Problem<DescriptionCode>[] = []
  const defaults = defaultsOf(known, problems)
  const misshapen = new Set(shape.flatMap(({ pointer }) => partsOf(pointer)))
  const unitMisread = misshapen.has('/lengthUnit')
  const settled = new Map<string, Readings>()
  for (const { path, keys, definition } of places) {
    const wire = at(document, keys)
    if (wire === null || wire === undefined || (misshapen.size > 0 && misshapen.has(pointerOf(keys)))) continue
    const { readings, wrong } = readFact(definition, wire, keys, defaults)
    problems.push(...wrong.filter(({ code }) => !(unitMisread && definition.dimension === 'length' && code === 'unitMissing')))
    if (readings.some((reading) => reading !== undefined)) settled.set(path, readings)
  }
  return { opening: openingOf(known, settled), problems }
}

/** Where in a description each fact stands. */
const places = [...facts].map(([path, definition]) => ({ path, keys: path.split('.'), definition }))

/** A pointer and all that it lies in, so that nothing is settled out of a part that is misshapen. */
function partsOf(pointer: string): readonly string[] {
  return pointer.split('/').map((_, index, keys) => keys.slice(0, index + 1).join('/'))
}

interface ReadFact {
  readonly readings: Readings
  readonly wrong: readonly Problem<SettleCode>[]
}

/** What is written in the same words is settled once and is the same object, by which those who compute from it know it again. */
function readFact(definition: FactDefinition, wire: unknown, keys: readonly string[], defaults: Defaults): ReadFact {
  const known = readBefore(definition)
  const words = `${defaults.lengthUnit ?? ''} ${defaults.resolution ?? ''} ${JSON.stringify(wire)}`
  const before = known.get(words)
  if (before) return before
  const settled = settleFact(definition, wire, keys, defaults)
  const wrong = [...new Set(settled)].flatMap((reading) => (reading?.ok === false ? reading.problems : []))
  const read = { readings: settled.map((reading) => (reading?.ok ? reading.value : undefined)), wrong }
  if (wrong.length > 0 || words.length > longestWords) return read
  if (known.size >= mostWords) known.clear()
  known.set(words, read)
  return read
}

const readBefore = onceFor<FactDefinition, Map<string, ReadFact>>(() => new Map())
/** Bounds what callers can fill the memory with. */
const [mostWords, longestWords] = [64, 200]

/** One fact as one reading, or as [left, right]; a single value of a fact with ends means both. */
export function settleFact(definition: FactDefinition, wire: unknown, path: readonly string[], defaults: Defaults) {
  if (!definition.perEnd) return [settleValue(definition, wire, path, defaults)]
  const ends: readonly unknown[] = Array.isArray(wire) ? wire : [wire]
  const settled = ends.map((end, index) =>
    end === null || end === undefined ? undefined : settleValue(definition, end, Array.isArray(wire) ? [...path, index] : path, defaults),
  )
  return settled.length === 1 ? [settled[0], settled[0]] : settled
}

function defaultsOf({ lengthUnit, lengthResolution }: Partial<OpeningInput>, problems: Problem<DescriptionCode>[]): Defaults {
  const unit = lengthUnit === 'in' || lengthUnit === 'mm' ? { lengthUnit } : {}
  if (typeof lengthResolution !== 'string') return unit
  const tape = readLength(lengthResolution, unit.lengthUnit)
  if (tape.ok && tape.nanometres >= 0) return { ...unit, resolution: tape.nanometres }
  problems.push({ code: 'unreadable', pointer: '/lengthResolution', detail: `"${lengthResolution}" is not what a tape can tell. Write it like 1/16 in or 1 mm` })
  return unit
}

function openingOf({ reference, basis, lengthUnit }: Partial<OpeningInput>, settled: ReadonlyMap<string, Readings>): Opening {
  return {
    ...(typeof reference === 'string' ? { reference } : {}),
    ...(basis ? { basis } : {}),
    unitSystem: lengthUnit === 'mm' ? 'si' : 'inchPound',
    facts: derive(settled),
  }
}

function at(document: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((inner, key) => (isRecord(inner) && Object.hasOwn(inner, key) ? inner[key] : undefined), document)
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

