import { z } from 'zod'

const dotted = /^[a-z0-9]+(?:-[a-z0-9]+)*(?:\.[a-z0-9]+(?:-[a-z0-9]+)*)+$/
const hyphenated = /^[a-z0-9]+(?:-[a-z0-9]+)*$/

/** "lintel.bearing-length"; a rule of a jurisdiction starts with the jurisdiction's id. Ids are never reused. */
export const ruleId = z.string().regex(dotted, 'must be an id like "lintel.bearing-length"').max(120)
export const publicationId = z.string().regex(hyphenated, 'must be an id like "bia-tn-28b"').max(60)
export const jurisdictionId = z.string().regex(hyphenated, 'must be an id like "us-xa-101"').max(60)
export const editionName = z.string().regex(/^[A-Za-z0-9.]+$/, 'must be an edition like "2021"').max(20)
export const factPath = z.string().max(80)
export const date = z.iso.date('must be a date like "2026-03-01"')

/** "irc-2018": a publication and one of its editions. */
export const editionId = z.string().regex(hyphenated, 'must be an id like "irc-2021"').max(80)

export function editionIdOf(publication: string, edition: string): string {
  return `${publication}-${edition.toLowerCase().replaceAll('.', '-')}`
}
