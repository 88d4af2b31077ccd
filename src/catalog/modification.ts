import { z } from 'zod'
import { ruleId } from './identifier.ts'
import { rule } from './rule.ts'
import { locator, modificationId, substitution, substitutions } from './substitution.ts'

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

/** One change that an instrument makes: to replace, to add, to delete or to renumber. */
export const modification = z.union([substitution, insertion, repeal, renumbering])
export type Modification = z.infer<typeof modification>

/** The one shape that a modification of a kind has; a substitution has one for each part of a rule. */
export const shapesByKind = { substitution: substitutions, insertion, repeal, renumbering } as const
