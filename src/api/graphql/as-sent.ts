import { z } from 'zod'
import { bare } from './types.ts'

/**
 * GraphQL makes a list of a single value where a list may stand. Where one value is as good as a list it becomes one again,
 * so that both doors name the same place when they refuse it.
 */
export function asSent(schema: z.ZodType, value: unknown): unknown {
  const { inner } = bare(schema)
  if (inner instanceof z.ZodUnion) return isOneOrList(inner) && Array.isArray(value) && value.length === 1 ? value[0] : value
  if (inner instanceof z.ZodArray && Array.isArray(value)) return value.map((one) => asSent(inner.element as z.ZodType, one))
  if (!(inner instanceof z.ZodObject) || typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, member]) => [key, memberAsSent(inner, key, member)]))
}

function memberAsSent({ shape }: z.ZodObject, key: string, value: unknown): unknown {
  const schema: unknown = shape[key]
  return schema instanceof z.ZodType ? asSent(schema, value) : value
}

function isOneOrList({ options }: z.ZodUnion): boolean {
  return options.some((option) => option instanceof z.ZodArray)
}
