import { z } from 'zod'
import { evaluation, type Evaluation } from '../evaluation/document.ts'
import { digestOfAssessment, evaluateInFull, type FullEvaluation } from '../evaluation/evaluate.ts'
import { describeOpening } from '../opening/describe.ts'
import { holdPointId } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import { openingSchema } from '../opening/schema.ts'
import { failure, parseInput, type Answer, type Dependencies, type Operation } from './operation.ts'
import { place, resolvePlace, type Place } from './place.ts'

/** What is said beside the opening wherever one is evaluated. */
export const around = {
  ...place,
  holdPoint: holdPointId.nullish().meta({ description: 'Where the work stands. What an earlier operation hid then counts as covered.' }),
}
const input = z.strictObject({ opening: openingSchema, ...around })
/** The opening is read by its own parser, which also settles lengths, so that all problems are told at once. */
export const unread = z.strictObject({ opening: z.unknown().optional(), ...around })

export const evaluateOpening: Operation<typeof input, typeof evaluation> = {
  name: 'evaluateOpening',
  summary: 'Evaluate one opening',
  description: 'Applies the rules of a place and date to an opening, and computes what the crew needs to build it. Nothing is kept.',
  input,
  output: evaluation,
  run: (deps, raw) => {
    const evaluated = evaluateAs(unread, deps, raw)
    return evaluated.ok ? { ok: true, value: stamped(deps, evaluated.value.full) } : evaluated
  },
}

/** The evaluation document: what was found, with an id, the moment and the digest, which is worked out when it is read: many ask GraphQL for less. */
export function stamped({ newId, now }: Dependencies, { assessment }: FullEvaluation): Evaluation {
  let digest: string | undefined
  return { id: newId(), evaluatedAt: now().toISOString(), ...assessment, get digest() { return (digest ??= digestOfAssessment(assessment)) } }
}

type Around = Place & { readonly holdPoint?: z.output<typeof holdPointId> | null | undefined }

/** What comes with an opening, read by its schema, and the opening, read by its own parser; every problem with either is told at once. */
export function readWithOpening<R>(schema: z.ZodType<R>, raw: unknown): Answer<{ readonly request: R; readonly opening: Opening }> {
  const request = parseInput(schema, raw)
  const opening = describeOpening(typeof raw === 'object' && raw !== null && Object.hasOwn(raw, 'opening') ? (raw as { readonly opening: unknown }).opening : undefined)
  if (request.ok && opening.ok) return { ok: true, value: { request: request.value, opening: opening.value } }
  const inOpening = opening.ok ? [] : opening.problems.map((problem) => ({ ...problem, pointer: `/opening${problem.pointer}` }))
  return failure('invalidInput', [...(request.ok ? [] : request.problems), ...inOpening])
}

/** A request to evaluate an opening, read and answered in full. */
export function evaluateAs<R extends Around>(schema: z.ZodType<R>, deps: Dependencies, raw: unknown): Answer<{ readonly request: R; readonly opening: Opening; readonly full: FullEvaluation }> {
  const read = readWithOpening(schema, raw)
  if (!read.ok) return read
  const { request, opening } = read.value
  const ruleSet = resolvePlace(deps, request)
  return ruleSet.ok ? { ok: true, value: { request, opening, full: evaluateInFull(opening, ruleSet.value, deps.catalog, request.holdPoint ?? null) } } : ruleSet
}
