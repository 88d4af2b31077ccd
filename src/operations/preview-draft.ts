import { z } from 'zod'
import { ownDraft } from './amendment-drafts.ts'
import { defineRecordOperation } from './operation.ts'

export const previewDraft = defineRecordOperation({
  name: 'previewAmendmentDraft',
  summary: 'Preview a draft',
  description: 'x',
  input: z.strictObject({ draft: z.string().max(100) }),
  output: z.strictObject({ draft: z.string() }).meta({ id: 'AmendmentPreview' }),
  answer: async (deps, { draft: id }) => {
    const found = await ownDraft(deps, id)
    return found.ok ? { ok: true, value: { draft: id } } : found
  },
})
