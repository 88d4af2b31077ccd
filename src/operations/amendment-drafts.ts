import { z } from 'zod'
import { digestOf } from '../catalog/digest.ts'
import { jurisdictionId } from '../catalog/identifier.ts'
import type { Draft, DraftChange } from '../store/records.ts'
import { amendable, refuseUnlessAmends } from './permission.ts'
import { draftCheckView, readDraftText, checkDraft, type ReadDraft } from './draft-check.ts'
import { defineRecordOperation, failure, notFound, type Answer, type RecordDependencies } from './operation.ts'
import { pageOf, paging } from './page.ts'

const text = z.string()

const draftText = {
  text: text.meta({ description: 'The amendment as one YAML or JSON document, as it would stand in a file of the catalog.' }),
  format: z.enum(['json', 'yaml']),
}
export const version = text.max(100).nullish().meta({ description: 'The version that the change is based on; over REST the If-Match header.' })
export const draftId = text.max(100).meta({ description: 'The id of the draft.' })

const view = z
  .strictObject({
    id: text,
    jurisdiction: text,
    amendment: text.nullable(),
    version: text.meta({ description: 'Changes with the content; a change has to name it.' }),
    createdAt: text,
    changedAt: text,
    document: text.meta({ description: 'The content as JSON text.' }),
    check: draftCheckView,
  })
  .meta({ id: 'AmendmentDraft' })

export const createDraft = defineRecordOperation({
  name: 'createAmendmentDraft',
  makes: true,
  summary: 'Draft an amendment',
  description: 'Keeps an amendment as a draft, with everything that still stands in its way. Nobody is bound by a draft. With validateOnly nothing is kept.',
  input: z.strictObject({ ...draftText, validateOnly: z.boolean().nullish().meta({ description: 'Checks and answers as if it were kept, and keeps nothing.' }) }),
  output: view,
  answer: async (deps, { text: source, format, validateOnly }) => {
    const read = permitted(deps, await readDraftText(source, format))
    if (!read.ok) return read
    const at = deps.now().toISOString()
    const draft = draftOf(deps.newId(), read.value, at, at)
    if (!validateOnly) await deps.records.createDraft(draft)
    return { ok: true, value: viewOf(draft, deps) }
  },
})

export const readDraft = defineRecordOperation({
  name: 'readAmendmentDraft',
  summary: 'Read a draft',
  description: 'A draft with everything that still stands in its way, checked against what is in force now.',
  input: z.strictObject({ draft: draftId }),
  output: view,
  answer: async (deps, { draft: id }) => {
    const found = await ownDraft(deps, id)
    return found.ok ? { ok: true, value: viewOf(found.value, deps) } : found
  },
})

export const listDrafts = defineRecordOperation({
  name: 'listAmendmentDrafts',
  summary: 'List drafts',
  description: 'The drafts of the jurisdictions that the caller may amend.',
  input: z.strictObject({ jurisdiction: jurisdictionId.nullish().meta({ description: 'Only drafts of this jurisdiction.' }), ...paging }),
  output: pageOf(view, 'AmendmentDraftPage'),
  keyOf: ({ id }) => id,
  answer: async (deps, { jurisdiction, first, after }) => {
    const named = jurisdiction ?? (deps.caller.token === null ? '' : undefined)
    const refused = named === undefined ? undefined : refuseUnlessAmends(deps.caller, named, deps.catalog)
    if (refused) return refused
    const mine = jurisdiction ? [jurisdiction] : amendable(deps.caller, deps.catalog)
    const { items, next } = await deps.records.listDrafts(mine, after ?? null, first ?? 50)
    return { ok: true, value: { items: items.map((draft) => viewOf(draft, deps)), nextCursor: next } }
  },
})

export const changeDraft = defineRecordOperation({
  name: 'changeAmendmentDraft',
  summary: 'Change a draft',
  description: 'Replaces the content of a draft. Names the version it is based on, so that nobody overwrites what another has written.',
  input: z.strictObject({ draft: draftId, version, ...draftText }),
  output: view,
  answer: async (deps, { draft: id, version: seen, text: source, format }) => {
    const found = await ownDraft(deps, id)
    if (!found.ok) return found
    const read = permitted(deps, await readDraftText(source, format))
    if (!read.ok) return read
    if (!seen) return versionMissing()
    const next = draftOf(id, read.value, found.value.createdAt, deps.now().toISOString())
    return changed(await deps.records.changeDraft(id, seen, next), id, deps)
  },
})

export const deleteDraft = defineRecordOperation({
  name: 'deleteAmendmentDraft',
  summary: 'Throw a draft away',
  description: 'Removes a draft. What was adopted cannot be removed.',
  input: z.strictObject({ draft: draftId, version }),
  output: view,
  answer: async (deps, { draft: id, version: seen }) => {
    const found = await ownDraft(deps, id)
    if (!found.ok) return found
    return seen ? changed(await deps.records.deleteDraft(id, seen), id, deps) : versionMissing()
  },
})

/** A draft the caller may see; one of another jurisdiction is as good as none. */
export async function ownDraft(deps: RecordDependencies, id: string): Promise<Answer<Draft>> {
  if (deps.caller.token === null) return refuseUnlessAmends(deps.caller, '', deps.catalog) ?? notFound('draft', id)
  const draft = await deps.records.readDraft(id)
  if (!draft || refuseUnlessAmends(deps.caller, draft.jurisdiction, deps.catalog)) return notFound('draft', id)
  return { ok: true, value: draft }
}

function permitted({ caller, catalog }: RecordDependencies, read: Answer<ReadDraft>): Answer<ReadDraft> {
  if (!read.ok) return caller.token === null ? (refuseUnlessAmends(caller, '', catalog) ?? read) : read
  return refuseUnlessAmends(caller, read.value.jurisdiction, catalog) ?? read
}

function draftOf(id: string, { jurisdiction, document }: ReadDraft, createdAt: string, changedAt: string): Draft {
  return { id, jurisdiction, document, version: digestOf(document), createdAt, changedAt }
}

function changed(change: DraftChange, id: string, deps: RecordDependencies): Answer<z.infer<typeof view>> {
  if (change.ok) return { ok: true, value: viewOf(change.draft, deps) }
  if (change.reason === 'absent') return notFound('draft', id)
  return versionStale()
}

export function versionStale() {
  return failure('versionStale', [{ code: 'versionStale', pointer: '/version', detail: 'The draft was changed since. Read it again and decide anew.' }])
}

export function versionMissing() {
  return failure('versionMissing', [{ code: 'versionMissing', pointer: '/version', detail: 'Name the version that the change is based on; over REST in the If-Match header.' }])
}

function viewOf({ id, jurisdiction, document, version, createdAt, changedAt }: Draft, { catalog }: RecordDependencies): z.infer<typeof view> {
  const named = typeof document === 'object' && document !== null && 'amendment' in document ? document.amendment : null
  return { id, jurisdiction, amendment: typeof named === 'string' ? named : null, version, createdAt, changedAt, document: JSON.stringify(document), check: checkDraft(catalog, document) }
}
