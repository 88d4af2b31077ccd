import { z } from 'zod'
import { evaluation } from '../evaluation/document.ts'
import { openingSchema } from '../opening/schema.ts'
import { around, evaluatedOpening } from './evaluated-opening.ts'
import type { Operation } from './operation.ts'

const input = z.strictObject({ opening: openingSchema, ...around })

export const evaluateOpening: Operation<typeof input, typeof evaluation> = {
  name: 'evaluateOpening',
  summary: 'Evaluate one opening',
  description: 'Applies the rules of a place and date to an opening, and computes what the crew needs to build it. Nothing is kept.',
  input,
  output: evaluation,
  run: (deps, raw) => {
    const answered = evaluatedOpening(deps, raw)
    return answered.ok ? { ok: true, value: answered.value.evaluation } : answered
  },
}
