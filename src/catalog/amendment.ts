import { z } from 'zod'
import { date, editionId, editionName, jurisdictionId, publicationId, ruleId } from './identifier.ts'
import { beginsBeforeItEnds } from './in-force.ts'
import { instrument } from './jurisdiction.ts'
import { citation } from './limit.ts'
import { modification } from './modification.ts'
import { outcome, reason, ruleExample } from './rule.ts'

export const mostModifications = 2_000
const mostExamples = 4_000

const example = z.strictObject({
  name: ruleExample.shape.name,
  rule: ruleId,
  asOf: date,
  edition: editionId.optional(),
  facts: ruleExample.shape.facts,
  quantities: ruleExample.shape.quantities,
  outcome: z.union([outcome, z.literal('repealed')]),
  reason: reason.optional(),
  margin: z.string().optional(),
})

const shape = {
  amendment: z.string().regex(/^[a-z0-9-]+\/[a-z0-9-]+$/, 'must be an id like "us-xa-101/ord-2021-17"').max(120),
  jurisdiction: jurisdictionId,
  amends: z.strictObject({ publication: publicationId, editions: z.array(editionName).min(1).max(40) }),
  instrument,
  effectiveFrom: date,
  /** Exclusive; written even when open. */
  effectiveUntil: date.nullable(),
  /** Which date of the work selects the amendment. */
  application: z.literal('permitApplicationDate'),
  supersedes: z.array(z.string().max(120)).max(200),
  /** How well the text of the instrument is known; its own jurisdiction, which has it, leaves this out. */
  evidence: citation.evidence.optional(),
  lastReviewed: citation.lastReviewed.optional(),
  readIn: citation.readIn,
  note: citation.note,
  modifications: z.array(modification).min(1).max(mostModifications),
  /** Run against the resolved set of the jurisdiction on a date. */
  examples: z.array(example).min(1).max(mostExamples),
}

const ownId = {
  holds: ({ amendment: id, jurisdiction }: { readonly amendment: string; readonly jurisdiction: string }) => id.startsWith(`${jurisdiction}/`),
  otherwise: { error: 'must start with the id of the jurisdiction and a slash', path: ['amendment'] as PropertyKey[] },
} as const

/** A local change to the rules of an adopted edition. A new edition does not inherit it. */
export const amendment = z.strictObject(shape).refine(beginsBeforeItEnds.holds, beginsBeforeItEnds.otherwise).refine(ownId.holds, ownId.otherwise)
export type Amendment = z.infer<typeof amendment>

/** All of an amendment but its modifications, which are read one by one, each as what it says it is. */
export const amendmentEnvelope = z
  .strictObject({ ...shape, modifications: z.array(z.unknown()).min(1).max(mostModifications) })
  .refine(beginsBeforeItEnds.holds, beginsBeforeItEnds.otherwise)
  .refine(ownId.holds, ownId.otherwise)
