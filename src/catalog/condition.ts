import { z } from 'zod'
import { factPath } from './identifier.ts'

/**
 * A closed form, not an expression language: conditions also come from outside, and each one here ends.
 * A fact with two ends satisfies a condition when either end does.
 */
export type Condition =
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition }
  | { readonly fact: string; readonly is: boolean | string }
  | { readonly fact: string; readonly oneOf: readonly string[] }
  | { readonly fact: string; readonly comparator: 'notLessThan' | 'notMoreThan' | 'lessThan' | 'moreThan'; readonly quantity: string }

const deepest = 8

const tooDeep = z.never({ error: `a comparison of one fact, since conditions go at most ${deepest} deep` })

export const condition: z.ZodType<Condition> = conditionOfDepth(deepest)

function conditionOfDepth(depth: number): z.ZodType<Condition> {
  const simple = [
    z.strictObject({ fact: factPath, is: z.union([z.boolean(), z.string().max(60)]) }),
    z.strictObject({ fact: factPath, oneOf: z.array(z.string().max(60)).min(1).max(40) }),
    z.strictObject({ fact: factPath, comparator: z.enum(['notLessThan', 'notMoreThan', 'lessThan', 'moreThan']), quantity: z.string().max(40) }),
  ] as const
  if (depth === 0) return z.union([...simple, z.strictObject({ all: tooDeep }), z.strictObject({ any: tooDeep }), z.strictObject({ not: tooDeep })])
  const inner = z.lazy(() => conditionOfDepth(depth - 1))
  return z.union([
    ...simple,
    z.strictObject({ all: z.array(inner).min(1).max(20) }),
    z.strictObject({ any: z.array(inner).min(1).max(20) }),
    z.strictObject({ not: inner }),
  ])
}
