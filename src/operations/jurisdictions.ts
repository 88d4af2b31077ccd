import { z } from 'zod'
import type { Amendment } from '../catalog/amendment.ts'
import type { Catalog } from '../catalog/catalog.ts'
import { jurisdictionId } from '../catalog/identifier.ts'
import { instrument, type Jurisdiction } from '../catalog/jurisdiction.ts'
import { targetOf } from '../catalog/placed-modification.ts'
import { defineOperation, notFound } from './operation.ts'
import { page, pageOf, paging } from './page.ts'

const text = z.string()

const adoptionView = z
  .strictObject({ adoption: text, publication: text, edition: text, effectiveFrom: text, effectiveUntil: text.nullable(), instrument })
  .meta({ id: 'Adoption' })

export const amendmentSummary = z
  .strictObject({
    amendment: text,
    publication: text,
    editions: z.array(text),
    effectiveFrom: text,
    effectiveUntil: text.nullable(),
    instrument,
    modifications: z.array(z.strictObject({ modification: text, kind: text, rule: text }).meta({ id: 'ModificationSummary' })),
  })
  .meta({ id: 'AmendmentSummary' })

const view = z
  .strictObject({
    jurisdiction: text,
    name: text,
    level: z.enum(['country', 'state', 'county', 'city', 'district']).meta({ id: 'JurisdictionLevel' }),
    within: text.nullable(),
    localAmendment: z.enum(['prohibited', 'moreStringentOnly', 'permitted']).meta({ id: 'LocalAmendmentPolicy' }),
    note: text.nullable(),
    adoptions: z.array(adoptionView),
    amendments: z.array(amendmentSummary),
  })
  .meta({ id: 'Jurisdiction' })

export const listJurisdictions = defineOperation({
  name: 'listJurisdictions',
  summary: 'List jurisdictions',
  description: 'Every jurisdiction of the catalog with what it has adopted and amended.',
  input: z.strictObject({ within: jurisdictionId.nullish().meta({ description: 'Only those directly within this one.' }), ...paging }),
  output: pageOf(view, 'JurisdictionPage'),
  keyOf: ({ jurisdiction }) => jurisdiction,
  answer: ({ catalog }, { within, ...paging }) => {
    const wanted = [...catalog.jurisdictions.values()].filter((one) => !within || one.within === within)
    return page(wanted.map((one) => viewOf(one, catalog)), ({ jurisdiction }) => jurisdiction, paging)
  },
})

export const readJurisdiction = defineOperation({
  name: 'readJurisdiction',
  summary: 'Read one jurisdiction',
  description: 'A jurisdiction with what it has adopted and amended.',
  input: z.strictObject({ jurisdiction: z.string().max(200).meta({ description: 'The id of the jurisdiction.', examples: ['us-xa-101'] }) }),
  output: view,
  answer: ({ catalog }, { jurisdiction }) => {
    const found = catalog.jurisdictions.get(jurisdiction)
    return found ? { ok: true, value: viewOf(found, catalog) } : notFound('jurisdiction', jurisdiction)
  },
})

function viewOf({ note, ...jurisdiction }: Jurisdiction, catalog: Catalog): z.infer<typeof view> {
  const id = jurisdiction.jurisdiction
  return {
    ...jurisdiction,
    note: note ?? null,
    adoptions: [...(catalog.adoptions.get(id) ?? [])],
    amendments: catalog.amendments.filter((amendment) => amendment.jurisdiction === id).map(summaryOfAmendment),
  }
}

export function summaryOfAmendment({ amendment, amends, effectiveFrom, effectiveUntil, instrument, modifications }: Amendment): z.infer<typeof amendmentSummary> {
  return {
    amendment, ...amends, effectiveFrom, effectiveUntil, instrument,
    modifications: modifications.map((one) => ({ modification: one.modification, kind: one.kind, rule: targetOf(one) })),
  }
}
