import { z } from 'zod'

/** GraphQL answers null where REST leaves a member out. Takes out the nulls of members that the schema lets be absent, and no others. */
export function withoutAbsent(schema: z.ZodType, value: unknown): unknown {
  const inner = schema instanceof z.ZodNullable || schema instanceof z.ZodOptional ? (schema.unwrap() as z.ZodType) : schema
  if (inner !== schema) return value === null ? null : withoutAbsent(inner, value)
  if (inner instanceof z.ZodArray && Array.isArray(value)) return value.map((one) => withoutAbsent(inner.element as z.ZodType, one))
  if (!(inner instanceof z.ZodObject) || typeof value !== 'object' || value === null) return value
  const members = Object.entries(value).filter(([key, member]) => !(member === null && inner.shape[key] instanceof z.ZodOptional))
  return Object.fromEntries(members.map(([key, member]) => [key, withoutAbsent(inner.shape[key] as z.ZodType, member)]))
}
