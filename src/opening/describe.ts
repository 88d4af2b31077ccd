import type { z } from 'zod'
import { readLength } from '../units/length-text.ts'
import { derive } from './derive.ts'
import { facts } from './facts.ts'
import type { Opening, Readings } from './opening.ts'
import { pointerOf, type Checked, type Problem } from './problem.ts'
import { readFact } from './read-fact.ts'
import { openingSchema, partialOpeningSchema, type OpeningInput } from './schema.ts'
import type { Defaults, SettleCode } from './settle.ts'
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
  let inner = document
  for (const key of path) inner = isRecord(inner) && Object.hasOwn(inner, key) ? inner[key] : undefined
  return inner
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

