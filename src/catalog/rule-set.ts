import { z } from 'zod'
import { instrument } from './jurisdiction.ts'
import type { Comparator, Limit } from './limit.ts'
import type { Rule } from './rule.ts'

/** One step on the way from a publication to what is in force here. */
export const chainStep = z
  .strictObject({
    layer: z.string().meta({ description: 'modelCode, standard, practice, or the jurisdiction that acted.' }),
    action: z.enum(['published', 'adoption', 'substitution', 'insertion', 'repeal', 'renumbering']),
    publication: z.string().nullable(),
    edition: z.string().nullable(),
    locator: z.string().nullable(),
    readIn: z.string().nullable(),
    document: z.string().nullable().meta({ description: 'The adoption or amendment, by id.' }),
    modification: z.string().nullable(),
    part: z.string().nullable().meta({ description: 'What a substitution replaced: limit, statement, condition, force, holdPoint, materials or remedy.' }),
    instrument: instrument.nullable(),
    effectiveFrom: z.string().nullable(),
    old: z.string().nullable(),
    new: z.string().nullable(),
  })
  .meta({ id: 'ChainStep' })
export type ChainStep = z.infer<typeof chainStep>

/** A rule as it stands for one place and date. */
export interface ResolvedRule {
  readonly rule: Rule
  readonly limit: Limit
  readonly comparator: Comparator
  readonly chain: readonly ChainStep[]
}

export interface RepealedRule {
  readonly rule: Rule
  readonly reason: string
  readonly chain: readonly ChainStep[]
}

/** What applies for one jurisdiction, date and edition. Rules are sorted by id. */
export interface RuleSet {
  readonly jurisdiction: string | null
  /** The innermost layer that is known; the same as `jurisdiction` unless that one is not in the catalog. */
  readonly resolvedAt: string | null
  readonly asOf: string
  readonly adoption: string | null
  /** The adopted edition and the standards it brings, as edition ids. */
  readonly editions: readonly string[]
  /** False when nothing was adopted on the date: mandatory rules are then not determined. */
  readonly adopted: boolean
  /** True when the catalog holds only some requirements of the code. */
  readonly inPart: boolean
  readonly rules: readonly ResolvedRule[]
  readonly repealed: readonly RepealedRule[]
}

export function chainStepOf({ layer, action, ...detail }: Pick<ChainStep, 'layer' | 'action'> & Partial<ChainStep>): ChainStep {
  return {
    layer, action, publication: null, edition: null, locator: null, readIn: null, document: null, modification: null, part: null,
    instrument: null, effectiveFrom: null, old: null, new: null, ...detail,
  }
}
