import { z } from 'zod'
import type { Evaluation } from '../evaluation/document.ts'
import { digestOfAssessment, evaluateInFull, type FullEvaluation } from '../evaluation/evaluate.ts'
import { describeOpening } from '../opening/describe.ts'
import { holdPointId } from '../opening/hold-points.ts'
import type { Opening } from '../opening/opening.ts'
import { failure, parseInput, type Answer, type Dependencies } from './operation.ts'
import { place, resolvePlace } from './place.ts'

/** Where and when an opening is evaluated, and where the work stands. */
export const around = {
  ...place,
  holdPoint: holdPointId.nullish().meta({ description: 'Where the work stands. What an earlier operation hid then counts as covered.' }),
}
/** The opening is read by its own parser, which also settles lengths, so that all problems are told at once. */
const unread = z.strictObject({ opening: z.unknown().optional(), ...around })

/** An evaluation with the opening that it is of, for whoever draws it. */
export interface EvaluatedOpening {
  readonly opening: Opening
  readonly full: FullEvaluation
  readonly evaluation: Evaluation
}

/** Reads a request for an evaluation and answers it in full. */
export function evaluatedOpening(deps: Dependencies, raw: unknown): Answer<EvaluatedOpening> {
  const request = parseInput(unread, raw)
  const opening = describeOpening(typeof raw === 'object' && raw !== null && 'opening' in raw ? raw.opening : undefined)
  const problems = [...(request.ok ? [] : request.problems), ...(opening.ok ? [] : opening.problems.map((problem) => ({ ...problem, pointer: `/opening${problem.pointer}` })))]
  if (!request.ok || !opening.ok) return failure('invalidInput', problems)
  const ruleSet = resolvePlace(deps, request.value)
  if (!ruleSet.ok) return ruleSet
  const full = evaluateInFull(opening.value, ruleSet.value, deps.catalog, request.value.holdPoint ?? null)
  return { ok: true, value: { opening: opening.value, full, evaluation: { id: deps.newId(), evaluatedAt: deps.now().toISOString(), ...full.assessment, digest: digestOfAssessment(full.assessment) } } }
}
