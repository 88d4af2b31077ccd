import { z } from 'zod'
import { date, editionName, publicationId } from './identifier.ts'

/** A code, standard, trade note, guide specification or book that limits are taken from. */
export const publication = z.strictObject({
  publication: publicationId,
  title: z.string().min(1).max(200),
  publisher: z.string().min(1).max(200),
  /** Model codes bind by adoption, standards by a code's reference; the rest recommend from the day they are issued. */
  kind: z.enum(['modelCode', 'standard', 'tradeNote', 'guideSpecification', 'regulation', 'textbook', 'article', 'practice']),
  editions: z
    .array(
      z.strictObject({
        edition: editionName,
        issued: date,
        /** Standards that this edition of a code brings with it. */
        references: z.array(z.strictObject({ publication: publicationId, edition: editionName })).optional(),
        /** True where only some of its requirements are in the catalog: then no verdict by it is better than incomplete. */
        inPart: z.literal(true).optional(),
        evidence: z.enum(['primary', 'secondary', 'memory']).optional(),
        note: z.string().max(400).optional(),
      }),
    )
    .min(1),
})

export type Publication = z.infer<typeof publication>
