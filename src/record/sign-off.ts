import { z } from 'zod'
import { outcome } from '../catalog/rule.ts'
import type { Assessment } from '../evaluation/document.ts'
import { digestOfAssessment } from '../evaluation/evaluate.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import { outcomesOf } from './outcomes.ts'
import { readinessAt } from './readiness.ts'
import type { Grant } from './waivers.ts'

const text = z.string()
const rules = z.array(text)

/** What a sign-off was given on: kept beside it, so that it can be told later what was known at the time. */
export const signOffGround = z
  .strictObject({
    release: text,
    catalogDigest: text,
    assessment: text.meta({ description: 'Digest of the evaluation, as seen, at that time.' }),
    ready: z.boolean(),
    undecided: rules.meta({ description: 'Mandatory rules to be seen there that were not decided.' }),
    notMet: rules.meta({ description: 'Mandatory rules to be seen there that were not met and not waived.' }),
    waived: rules.meta({ description: 'Mandatory rules to be seen there that were waived or modified.' }),
    outcomes: z.array(z.strictObject({ rule: text, member: z.enum(['left', 'right']).nullable(), outcome }).meta({ id: 'OutcomeAtSignOff' })),
  })
  .meta({ id: 'SignOffGround', description: 'What was known when it was signed off.' })
export type SignOffGround = z.infer<typeof signOffGround>

/** The findings at a hold point as they stand, in the few words that are kept. */
export function groundOf(holdPoint: HoldPoint, assessment: Assessment, grants: readonly Grant[]): SignOffGround {
  const { ready, undecided, notMet, waived } = readinessAt(holdPoint, assessment, grants)
  const here = assessment.findings.filter((finding) => finding.holdPoint === holdPoint)
  return {
    release: assessment.catalog.release, catalogDigest: assessment.catalog.digest, assessment: digestOfAssessment(assessment),
    ready, undecided: [...undecided], notMet: [...notMet], waived: [...waived], outcomes: [...outcomesOf(here).places],
  }
}
