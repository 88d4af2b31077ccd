import { z } from 'zod'
import { date, jurisdictionId, publicationId } from './identifier.ts'

/**
 * Reference openings of an invented building: what the demonstration shows, and what any change of rules is tried on.
 * They are no part of what is required, so they do not enter the catalog's digest.
 */
export const building = z.strictObject({
  building: z.string().regex(/^[a-z0-9-]+$/).max(60),
  title: z.string().min(1).max(120),
  note: z.string().max(400),
  jurisdiction: jurisdictionId,
  publication: publicationId.optional(),
  asOf: date,
  openings: z.array(z.strictObject({ story: z.string().min(1).max(200), holdPoint: z.string().optional(), opening: z.record(z.string(), z.unknown()) })).min(1),
})
export type Building = z.infer<typeof building>
