import { z } from 'zod'
import { date, editionName, jurisdictionId, publicationId } from './identifier.ts'
import { beginsBeforeItEnds } from './in-force.ts'

/** A body of law-makers, and the one it lies within. */
export const jurisdiction = z.strictObject({
  jurisdiction: jurisdictionId,
  name: z.string().min(1).max(120),
  level: z.enum(['country', 'state', 'county', 'city', 'district']),
  within: jurisdictionId.nullable(),
  /** What the layers below may do to the rules that this one hands down. */
  localAmendment: z.enum(['prohibited', 'moreStringentOnly', 'permitted']),
  note: z.string().max(400).optional(),
})
export type Jurisdiction = z.infer<typeof jurisdiction>

/** The legal act behind an adoption or an amendment. */
export const instrument = z.strictObject({
  kind: z.enum(['act', 'administrativeRule', 'ordinance', 'resolution', 'notice']),
  number: z.string().min(1).max(60),
  section: z.string().max(60).optional(),
  adopted: date,
  href: z.string().max(400).optional(),
}).meta({ id: 'Instrument' })

export const adoption = z.strictObject({
  adoption: z.string().regex(/^[a-z0-9-]+\/[a-z0-9-]+$/).max(120),
  publication: publicationId,
  edition: editionName,
  effectiveFrom: date,
  /** Exclusive; written even when open. */
  effectiveUntil: date.nullable(),
  instrument,
}).refine(beginsBeforeItEnds.holds, beginsBeforeItEnds.otherwise)
export type Adoption = z.infer<typeof adoption>

export const adoptions = z.strictObject({ adoptions: jurisdictionId, list: z.array(adoption).min(1) })
