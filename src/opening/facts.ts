import { z } from 'zod'
import { factRegistry, type FactDefinition } from './fact.ts'
import { openingSchema } from './schema.ts'

/** Every fact of an opening by its path, "head.flashing.endDamHeight", in the order of the description. */
export const facts: ReadonlyMap<string, FactDefinition> = new Map(collect(openingSchema, []))

function collect(schema: z.ZodType, path: readonly string[]): [string, FactDefinition][] {
  const definition = factRegistry.get(schema)
  if (definition) return [[path.join('.'), definition]]
  const inner = unwrap(schema)
  if (!(inner instanceof z.ZodObject)) return []
  return Object.entries(inner.shape).flatMap(([key, child]) => collect(child as z.ZodType, [...path, key]))
}

function unwrap(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodOptional || schema instanceof z.ZodNullable ? unwrap(schema.unwrap() as z.ZodType) : schema
}
