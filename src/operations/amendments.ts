import { z } from 'zod'
import type { Amendment } from '../catalog/amendment.ts'
import { jurisdictionId } from '../catalog/identifier.ts'
import { defineOperation, notFound } from './operation.ts'
import { page, pageOf, paging } from './page.ts'
import { amendmentSummary, summaryOfAmendment } from './jurisdictions.ts'

const text = z.string()

const view = z
  .strictObject({ ...amendmentSummary.shape, jurisdiction: text, supersedes: z.array(text), document: text.meta({ description: 'The amendment as JSON text.' }) })
  .meta({ id: 'Amendment' })

export const listAmendments = defineOperation({
  name: 'listAmendments',
  summary: 'List amendments',
  description: 'Every adopted amendment, whether it came with the catalog or through the service.',
  input: z.strictObject({ jurisdiction: jurisdictionId.nullish().meta({ description: 'Only amendments of this jurisdiction.' }), ...paging }),
  output: pageOf(amendmentSummary, 'AmendmentPage'),
  keyOf: ({ amendment }) => amendment,
  answer: ({ catalog }, { jurisdiction, ...paging }) => {
    const wanted = catalog.amendments.filter((one) => !jurisdiction || one.jurisdiction === jurisdiction).toSorted((a, b) => (a.amendment < b.amendment ? -1 : 1))
    return page(wanted.map(summaryOfAmendment), ({ amendment }) => amendment, paging)
  },
})

export const readAmendment = defineOperation({
  name: 'readAmendment',
  summary: 'Read one amendment',
  description: 'An adopted amendment, whole.',
  input: z.strictObject({ amendment: text.max(200).meta({ description: 'The id: "us-xa/rule-210-45".' }) }),
  output: view,
  answer: ({ catalog }, { amendment: id }) => {
    const found = catalog.amendments.find(({ amendment }) => amendment === id)
    return found ? { ok: true, value: amendmentView(found) } : notFound('amendment', id)
  },
})

export const adoptedAmendment = view

export function amendmentView(amendment: Amendment): z.infer<typeof view> {
  const { jurisdiction, supersedes } = amendment
  return { ...summaryOfAmendment(amendment), jurisdiction, supersedes: [...supersedes], document: JSON.stringify(amendment) }
}
