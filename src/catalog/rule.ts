import { z } from 'zod'
import { holdPointId } from '../opening/hold-points.ts'
import { condition } from './condition.ts'
import { editionId, factPath, ruleId } from './identifier.ts'
import { comparator, evidence, limit } from './limit.ts'

export const force = z.enum(['mandatory', 'recommended', 'informative']).meta({
  id: 'Force', description: 'mandatory: adopted law. recommended: a trade note, a guide or practice. informative: told, without a say in the verdict.',
})
export type Force = z.infer<typeof force>

export const part = z.enum(['head', 'sill', 'jambs', 'wall', 'ties', 'barrier', 'base']).meta({ id: 'Part' })
export const outcome = z.enum(['pass', 'fail', 'notDetermined', 'notApplicable']).meta({ id: 'Outcome' })
export type Outcome = z.infer<typeof outcome>

/** Why an outcome is not determined; each reason has another next step. */
export const reason = z
  .enum(['missing', 'covered', 'conflictingEvidence', 'outsidePrescriptive', 'methodDoesNotHold', 'notAdopted', 'ruleUndecided'])
  .meta({ id: 'Reason' })
export type Reason = z.infer<typeof reason>

const exampleValue = z.union([z.boolean(), z.string(), z.number(), z.null()])

/** A worked case that the rule must answer as stated; a rule whose examples fail does not load. */
export const ruleExample = z.strictObject({
  name: z.string().min(1).max(200),
  /** Which limit is meant; the last one listed when left out. */
  edition: editionId.optional(),
  facts: z.record(factPath, z.union([exampleValue, z.array(exampleValue).min(1).max(2)])),
  /** Values for a rule that judges a computed quantity, by quantity id. */
  quantities: z.record(ruleId, z.string()).optional(),
  outcome,
  reason: reason.optional(),
  /** Spare when positive, short when negative. */
  margin: z.string().optional(),
})

/** One requirement, as one file. */
export const rule = z.strictObject({
  rule: ruleId,
  revision: z.int().positive(),
  title: z.string().min(1).max(120),
  topic: z.enum(['flashing', 'weep', 'lintel', 'sill', 'tie', 'barrier', 'air-space', 'base', 'joint', 'height', 'movement', 'process']),
  part,
  holdPoint: holdPointId,
  status: z.enum(['draft', 'inForce', 'withdrawn']),
  replaces: z.array(ruleId).optional(),
  statement: z.string().min(1).max(600),
  force,
  appliesWhen: condition.optional(),
  check: z.union([z.strictObject({ fact: factPath, comparator }), z.strictObject({ quantity: ruleId, comparator })]),
  limits: z.array(limit).min(1),
  disagreements: z
    .array(z.strictObject({ source: z.string().max(300), states: z.string().max(300), evidence, note: z.string().max(600).optional() }))
    .optional(),
  remedy: z.strictObject({ beforeCoverUp: z.string().min(1).max(600), afterCoverUp: z.string().min(1).max(600) }),
  cautions: z.array(z.string().max(60)).optional(),
  related: z.array(ruleId).optional(),
  examples: z.array(ruleExample).min(3),
})

export type Rule = z.infer<typeof rule>
export type RuleExample = z.infer<typeof ruleExample>
