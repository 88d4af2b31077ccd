import { z } from 'zod'
import { factRegistry, type FactDefinition } from './fact.ts'
import { compareHoldPoints, holdPoints, type HoldPoint } from './hold-points.ts'
import { openingSchema } from './schema.ts'

/** Every fact of an opening by its path, "head.flashing.endDamHeight", in the order of the description. */
export const facts: ReadonlyMap<string, FactDefinition> = new Map(collect(openingSchema, []))

/** Whether the work, as far as it stands, has hidden what the fact is read off. */
export function isHidden(fact: string, holdPoint: HoldPoint | null): boolean {
  const hiddenBy = facts.get(fact)?.hiddenBy
  return hiddenBy !== undefined && holdPoint !== null && compareHoldPoints(holdPoint, hiddenBy) >= 0
}

/** The next stage of the work that hides anything; null when nothing more is hidden. */
export function nextToHide(holdPoint: HoldPoint): HoldPoint | null {
  return holdPoints.find(({ id }) => compareHoldPoints(id, holdPoint) > 0 && hiding.has(id))?.id ?? null
}

const hiding = new Set([...facts.values()].flatMap(({ hiddenBy }) => hiddenBy ?? []))

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

/** What people call a fact; of one that is not known, its path. */
export function factTitle(path: string): string {
  return facts.get(path)?.title ?? path
}
