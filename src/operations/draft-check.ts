import { z } from 'zod'
import type { Catalog } from '../catalog/catalog.ts'
import { validateAmendment } from '../evaluation/validate-amendment.ts'
import { malformedPlaces } from '../opening/well-formed.ts'
import { failure, type Answer } from './operation.ts'

const text = z.string()
const problem = z.strictObject({ code: text, pointer: text, detail: text }).meta({ id: 'AmendmentProblem' })

export const draftCheckView = z
  .strictObject({
    adoptable: z.boolean(),
    problems: z.array(problem).meta({ description: 'What stands in the way in the draft itself.' }),
    affected: z
      .array(z.strictObject({ amendment: text, ...problem.shape }).meta({ id: 'AffectedAmendment' }))
      .meta({ description: 'Amendments in force that would go stale or compete.' }),
    reviewNeeded: z
      .array(z.strictObject({ modification: text, rule: text, reason: text }).meta({ id: 'ReviewNeeded' }))
      .meta({ description: 'Repeals where an outer jurisdiction allows only stricter rules: somebody has to read their reason.' }),
  })
  .meta({ id: 'DraftCheck' })

/** A document that could be read and says whose amendment it is; it may still be wrong in any other way. */
export interface ReadDraft {
  readonly jurisdiction: string
  readonly document: unknown
}

/** The reading of YAML is loaded with the first draft. */
export async function readDraftText(source: string, format: 'json' | 'yaml'): Promise<Answer<ReadDraft>> {
  const { readAmendmentText } = await import('../catalog/intake.ts')
  const read = readAmendmentText(source, format)
  if (!read.ok) return failure('invalidInput', read.problems)
  const document = read.value
  const malformed = malformedPlaces(document)
  if (malformed.length > 0) return failure('invalidInput', malformed)
  const jurisdiction = typeof document === 'object' && document !== null && 'jurisdiction' in document ? document.jurisdiction : undefined
  if (typeof jurisdiction === 'string') return { ok: true, value: { jurisdiction, document } }
  return failure('invalidInput', [{ code: 'missingKey', pointer: '/jurisdiction', detail: 'is required: an amendment says whose it is' }])
}

/** Everything that stands in the way of a draft, checked against what is in force. */
export function checkDraft(catalog: Catalog, document: unknown): z.infer<typeof draftCheckView> {
  const { problems, affected, reviewNeeded } = validateAmendment(catalog, [{ path: '', content: document }])
  return {
    adoptable: problems.length + affected.length === 0,
    problems: problems.map(({ code, pointer, detail }) => ({ code, pointer, detail })),
    affected: affected.map(({ path, code, pointer, detail }) => ({ amendment: path, code, pointer, detail })),
    reviewNeeded: reviewNeeded.map(({ modification, rule, reason }) => ({ modification, rule, reason })),
  }
}
