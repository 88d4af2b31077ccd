import { z } from 'zod'
import { date, editionId, editionName, jurisdictionId, publicationId, ruleId } from './identifier.ts'
import { beginsBeforeItEnds } from './in-force.ts'
import { instrument } from './jurisdiction.ts'
import { bothSystems, comparator } from './limit.ts'
import { outcome, reason, rule, ruleExample } from './rule.ts'

const modificationId = z.string().regex(/^[a-z0-9-]{1,20}$/)
const locator = z.string().min(1).max(200)

/** What is in force and is to change, in the same words as the rule; a mismatch refuses the load. */
const oldLimit = z
  .strictObject({
    inchPound: bothSystems.inchPound.optional(), si: bothSystems.si.optional(), comparator: comparator.optional(),
    value: z.union([z.boolean(), z.string()]).optional(), values: z.array(z.string()).optional(), proportion: z.string().optional(), table: ruleId.optional(),
  })
  .refine((old) => Object.keys(old).some((key) => key !== 'comparator'), { error: 'must state the amount or the values that are in force' })

const limitSubstitution = z.strictObject({
  modification: modificationId,
  kind: z.literal('substitution'),
  target: z.strictObject({ rule: ruleId, part: z.literal('limit') }),
  old: oldLimit,
  new: z.union([
    z.strictObject({ ...bothSystems, comparator: comparator.optional(), locator }),
    z.strictObject({ value: z.union([z.boolean(), z.string()]), comparator: comparator.optional(), locator }),
    z.strictObject({ values: z.array(z.string()).min(1), comparator: comparator.optional(), locator }),
  ]),
})

const statementSubstitution = z.strictObject({
  modification: modificationId,
  kind: z.literal('substitution'),
  target: z.strictObject({ rule: ruleId, part: z.literal('statement') }),
  old: z.strictObject({ digest: z.string().regex(/^sha256:[0-9a-f]{64}$/) }),
  new: z.strictObject({ text: rule.shape.statement, locator }),
})

const insertion = z.strictObject({ modification: modificationId, kind: z.literal('insertion'), new: rule })

const repeal = z.strictObject({
  modification: modificationId,
  kind: z.literal('repeal'),
  target: z.strictObject({ rule: ruleId }),
  old: z.strictObject({ revision: z.int().positive() }),
  reason: z.string().min(1).max(400),
})

const renumbering = z.strictObject({
  modification: modificationId,
  kind: z.literal('renumbering'),
  target: z.strictObject({ rule: ruleId }),
  old: z.strictObject({ locator }),
  new: z.strictObject({ locator }),
})

export const modification = z.union([limitSubstitution, statementSubstitution, insertion, repeal, renumbering])
export type Modification = z.infer<typeof modification>

/** A local change to the rules of an adopted edition. A new edition does not inherit it. */
export const amendment = z.strictObject({
  amendment: z.string().regex(/^[a-z0-9-]+\/[a-z0-9-]+$/).max(120),
  jurisdiction: jurisdictionId,
  amends: z.strictObject({ publication: publicationId, editions: z.array(editionName).min(1) }),
  instrument,
  effectiveFrom: date,
  /** Exclusive; written even when open. */
  effectiveUntil: date.nullable(),
  /** Which date of the work selects the amendment. */
  application: z.literal('permitApplicationDate'),
  supersedes: z.array(z.string()),
  modifications: z.array(modification).min(1).max(2_000),
  /** Run against the resolved set of the jurisdiction on a date. */
  examples: z
    .array(
      z.strictObject({
        name: ruleExample.shape.name,
        rule: ruleId,
        asOf: date,
        edition: editionId.optional(),
        facts: ruleExample.shape.facts,
        outcome: z.union([outcome, z.literal('repealed')]),
        reason: reason.optional(),
        margin: z.string().optional(),
      }),
    )
    .min(1),
}).refine(beginsBeforeItEnds.holds, beginsBeforeItEnds.otherwise)
export type Amendment = z.infer<typeof amendment>
