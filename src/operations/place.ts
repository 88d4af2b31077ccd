import { z } from 'zod'
import { date, editionId, jurisdictionId, publicationId } from '../catalog/identifier.ts'
import { resolveRules } from '../catalog/resolve.ts'
import type { RuleSet } from '../catalog/rule-set.ts'
import { failure, orFailure, type Answer, type Dependencies } from './operation.ts'

/** Where and when: the same four words wherever rules are asked for. */
export const place = {
  jurisdiction: jurisdictionId.nullish().meta({ description: 'Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant.' }),
  asOf: date.nullish().meta({ description: 'The permit application date, which selects what was in force. Today when left out.' }),
  edition: editionId.nullish().meta({ description: 'Takes this edition whatever is adopted: "irc-2021".' }),
  publication: publicationId.nullish().meta({ description: 'Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings.' }),
}

export type Place = z.output<z.ZodObject<typeof place>>

export function resolvePlace({ catalog, now }: Dependencies, { jurisdiction, asOf, edition, publication }: Place): Answer<RuleSet> {
  if (!jurisdiction && !edition) {
    return failure('placeMissing', [{ code: 'placeMissing', pointer: '/jurisdiction', detail: 'Say where the opening is with "jurisdiction", or name a published "edition" such as "irc-2021". The lists of jurisdictions and of publications have them.' }])
  }
  const date = asOf ?? now().toISOString().slice(0, 10)
  return orFailure(resolveRules(catalog, { jurisdiction: jurisdiction ?? null, asOf: date, edition: edition ?? undefined, publication: publication ?? undefined }))
}

/** The rules of a place where any word of one is said, so that no word is passed over in silence; null where none is. */
export function resolveIfAsked(deps: Dependencies, where: Place): Answer<RuleSet | null> {
  const asked = Object.values(where).some((word) => (word ?? null) !== null)
  return asked ? resolvePlace(deps, where) : { ok: true, value: null }
}
