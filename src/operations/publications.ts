import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { editionIdOf } from '../catalog/identifier.ts'
import { publication, type Publication } from '../catalog/publication.ts'
import { defineOperation, notFound } from './operation.ts'
import { page, pageOf, paging } from './page.ts'

const text = z.string()

const view = z
  .strictObject({
    publication: text,
    title: text,
    publisher: text,
    kind: publication.shape.kind.meta({ id: 'PublicationKind' }),
    editions: z.array(
      z
        .strictObject({ id: text, edition: text, issued: text, references: z.array(text), note: text.nullable(), rules: z.int().min(0).max(1_000_000).meta({ description: 'Rules with a limit of this edition.' }) })
        .meta({ id: 'PublicationEdition' }),
    ),
  })
  .meta({ id: 'Publication' })

export const listPublications = defineOperation({
  name: 'listPublications',
  summary: 'List publications',
  description: 'Every code, standard, trade note and book that a limit or a figure is taken from.',
  input: z.strictObject(paging),
  output: pageOf(view, 'PublicationPage'),
  keyOf: ({ publication }) => publication,
  answer: ({ catalog }, paging) => page([...catalog.publications.values()].map((one) => viewOf(one, catalog)), (one) => one.publication, paging),
})

export const readPublication = defineOperation({
  name: 'readPublication',
  summary: 'Read one publication',
  description: 'A publication with its editions and the standards that they bring with them.',
  input: z.strictObject({ publication: z.string().max(200).meta({ description: 'The id of the publication.', examples: ['irc'] }) }),
  output: view,
  answer: ({ catalog }, { publication: id }) => {
    const found = catalog.publications.get(id)
    return found ? { ok: true, value: viewOf(found, catalog) } : notFound('publication', id)
  },
})

function viewOf({ publication: id, title, publisher, kind, editions }: Publication, { rules }: Catalog): z.infer<typeof view> {
  const counts = (edition: string) => [...rules.values()].filter(({ limits }) => limits.some((limit) => limit.publication === id && limit.editions.includes(edition))).length
  return {
    publication: id, title, publisher, kind,
    editions: editions.map(({ edition, issued, references = [], note }) => ({
      id: editionIdOf(id, edition), edition, issued, references: references.map((one) => editionIdOf(one.publication, one.edition)), note: note ?? null, rules: counts(edition),
    })),
  }
}
