import { z } from 'zod'
import { holdPointId } from '../opening/hold-points.ts'
import { condition } from './condition.ts'
import { ruleId } from './identifier.ts'
import { bothSystems, comparator, printedPair } from './limit.ts'
import { force, rule } from './rule.ts'

export const modificationId = z.string().regex(/^[a-z0-9-]{1,20}$/, 'must be an id like "m1"')
export const locator = z.string().min(1).max(200)
const digest = z.string().regex(/^sha256:[0-9a-f]{64}$/, 'must be a digest like "sha256:" and 64 hexadecimal digits')
const listed = z.array(z.string().max(60)).min(1).max(40)

/** What is in force and is to change, in the same words as the rule; a mismatch refuses the load. */
const oldLimit = z
  .strictObject({
    inchPound: bothSystems.inchPound.optional(), si: bothSystems.si.optional(), comparator: comparator.optional(),
    value: z.union([z.boolean(), z.string()]).optional(), values: z.array(z.string()).optional(), proportion: z.string().optional(), table: ruleId.optional(),
  })
  .refine((old) => Object.keys(old).some((key) => key !== 'comparator'), { error: 'must state the amount or the values that are in force' })

const newLimit = z.union([
  z.strictObject({ ...printedPair, comparator: comparator.optional(), locator }),
  z.strictObject({ value: z.union([z.boolean(), z.string().max(60)]), comparator: comparator.optional(), locator }),
  z.strictObject({ values: listed, comparator: comparator.optional(), locator }),
])

const limit = of('limit', oldLimit, newLimit)
const statement = of('statement', z.strictObject({ digest }), z.strictObject({ text: rule.shape.statement, locator }))
/** Null where a rule applies to every opening. The digest is over the canonical JSON of appliesWhen. */
const appliesWhen = of('condition', z.strictObject({ digest: digest.nullable() }), z.strictObject({ appliesWhen: condition.nullable(), locator }))
const binding = of('force', z.strictObject({ force }), z.strictObject({ force, locator }))
const holdPoint = of('holdPoint', z.strictObject({ holdPoint: holdPointId }), z.strictObject({ holdPoint: holdPointId, locator }))
const remedy = of('remedy', z.strictObject({ digest }), z.strictObject({ ...rule.shape.remedy.shape, locator }))

/** A list that allows or bars materials, or other choices, grows or shrinks. */
const materials = of('materials', z.strictObject({ values: listed }), z.strictObject({ add: listed.optional(), remove: listed.optional(), locator }))
  .refine(({ new: { add, remove } }) => add !== undefined || remove !== undefined, { error: 'must add or remove something', path: ['new'] })
  .refine(({ old, new: { add = [] } }) => add.every((value) => !old.values.includes(value)), { error: 'must not add what is on the old list', path: ['new', 'add'] })
  .refine(({ old, new: { remove = [] } }) => remove.every((value) => old.values.includes(value)), { error: 'must remove only what is on the old list', path: ['new', 'remove'] })
  .refine(({ old, new: { add = [], remove = [] } }) => add.length > 0 || old.values.some((value) => !remove.includes(value)), { error: 'must leave something on the list; repeal the rule instead', path: ['new', 'remove'] })

/** The part of a rule that is replaced, and the shape of its replacement. */
export const substitutions = { limit, statement, condition: appliesWhen, force: binding, holdPoint, materials, remedy } as const
export type SubstitutedPart = keyof typeof substitutions

export const substitution = z.union([limit, statement, appliesWhen, binding, holdPoint, materials, remedy])
export type Substitution<P extends SubstitutedPart = SubstitutedPart> = z.infer<(typeof substitutions)[P]>

function of<P extends string, O extends z.ZodType, N extends z.ZodType>(part: P, old: O, next: N) {
  return z.strictObject({ modification: modificationId, kind: z.literal('substitution'), target: z.strictObject({ rule: ruleId, part: z.literal(part) }), old, new: next })
}
