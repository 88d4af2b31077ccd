import { z } from 'zod'
import { digestOf } from '../catalog/digest.ts'
import { validateAmendment } from '../evaluation/validate-amendment.ts'
import type { Draft } from '../store/records.ts'
import { adoptedAmendment, amendmentView } from './amendments.ts'
import { draftId, ownDraft, version, versionMissing, versionStale } from './amendment-drafts.ts'
import { adoptionEvent } from './events.ts'
import { defineRecordOperation, failure, type Answer, type RecordDependencies } from './operation.ts'

export const adoptDraft = defineRecordOperation({
  name: 'adoptAmendmentDraft',
  cost: { units: 20 },
  makes: true,
  summary: 'Adopt a draft',
  description: 'Adopts a draft as it was last read: from then on it is in force on its dates, on every replica, and is never edited or deleted. A later amendment may supersede it.',
  input: z.strictObject({ draft: draftId, version }),
  output: adoptedAmendment,
  answer: async (deps, { draft: id, version: seen }) => {
    const found = await ownDraft(deps, id)
    if (!found.ok) return found
    if (!seen) return versionMissing()
    return seen === found.value.version ? adopt(deps, found.value, attempts) : versionStale()
  },
})

/** How often an adoption is tried again when another came in between. */
const attempts = 3

async function adopt(deps: RecordDependencies, draft: Draft, left: number): Promise<Answer<z.infer<typeof adoptedAmendment>>> {
  const { catalog, sequence } = await deps.active.refresh()
  const { amendments, problems, affected } = validateAmendment(catalog, [{ path: '', content: draft.document }])
  const amendment = amendments[0]
  if (!amendment || problems.length + affected.length > 0) return refused([...problems, ...affected])
  const adoption = { amendment, digest: digestOf(amendment), adoptedAt: deps.now().toISOString(), adoptedBy: deps.caller.token ?? '' }
  const adopted = await deps.records.adopt(adoption, draft, sequence, [adoptionEvent(deps, { ...adoption, sequence: sequence + 1 })])
  if (adopted.ok) {
    await deps.active.refresh()
    return { ok: true, value: amendmentView(adopted.adopted.amendment) }
  }
  if (adopted.reason === 'behind' && left > 0) return adopt(deps, draft, left - 1)
  if (adopted.reason === 'stale') return versionStale()
  return failure('alreadyAdopted', [{ code: 'alreadyAdopted', pointer: '/amendment', detail: `"${amendment.amendment}" is adopted. Give this one an id of its own and let it supersede the other.` }])
}

function refused(problems: readonly { code: string; path: string; pointer: string; detail: string }[]) {
  return failure('amendmentRefused', problems.map(({ code, path, pointer, detail }) => ({ code, pointer, detail: path === '' ? detail : `${path}: ${detail}` })))
}
