import type { FastifyPluginAsync, FastifyRequest } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { versionSeen } from '../conditional.ts'
import { routeSchema } from './schemas.ts'

const { listAmendments, readAmendment, listDrafts, readDraft, createDraft, changeDraft, deleteDraft, previewDraft, adoptDraft } = operations
/** YAML under its registered name and under the oldest of those that RFC 9512 keeps as its aliases, which tools and editors still send. */
const media = ['application/json', 'application/yaml', 'text/yaml']
const tag = 'Amendments'

/** How a jurisdiction works: draft, check, try, adopt. A draft is sent as the file it would be, in YAML or JSON. */
export const amendments: FastifyPluginAsync = async (app) => {
  app.removeContentTypeParser('application/json')
  app.addContentTypeParser(media, { parseAs: 'string' }, (_, text, done) => done(null, text))

  app.get('/amendments', { schema: routeSchema(listAmendments, tag) }, (request, reply) => answer(listAmendments, request, reply))
  app.get<{ Params: { jurisdiction: string; instrument: string } }>('/amendments/:jurisdiction/:instrument', { schema: { ...routeSchema(readAmendment, tag, { elsewhere: ['amendment'] }), params: amendmentPath } }, (request, reply) =>
    answer(readAmendment, request, reply, { input: { amendment: `${request.params.jurisdiction}/${request.params.instrument}` } }),
  )
  app.get('/amendment-drafts', { schema: routeSchema(listDrafts, tag) }, (request, reply) => answer(listDrafts, request, reply))
  app.post('/amendment-drafts', { schema: routeSchema(createDraft, tag, { elsewhere: ['text', 'format'], body: media, status: 201, statusChecked: 200 }) }, (request, reply) =>
    answer(createDraft, request, reply, { input: { ...textOf(request), ...validateOnlyOf(request) }, status: isDry(request) ? 200 : 201, headers: etagOf }),
  )
  app.get('/amendment-drafts/:draft', { schema: routeSchema(readDraft, tag, { path: ['draft'] }) }, (request, reply) => answer(readDraft, request, reply, { headers: etagOf }))
  app.put('/amendment-drafts/:draft', { schema: routeSchema(changeDraft, tag, { path: ['draft'], elsewhere: ['version', 'text', 'format'], body: media }) }, (request, reply) =>
    answer(changeDraft, request, reply, { input: { ...textOf(request), ...versionSeen(request), ...(request.params as object) }, headers: etagOf }),
  )
  app.delete('/amendment-drafts/:draft', { schema: routeSchema(deleteDraft, tag, { path: ['draft'], elsewhere: ['version'] }) }, (request, reply) =>
    answer(deleteDraft, request, reply, { input: { ...versionSeen(request), ...(request.params as object) } }),
  )
  app.post('/amendment-drafts/:draft/preview', { schema: routeSchema(previewDraft, tag, { path: ['draft'] }) }, (request, reply) =>
    answer(previewDraft, request, reply, { input: { ...(request.query as object), ...(request.params as object) } }),
  )
  app.post('/amendment-drafts/:draft/adopt', { schema: routeSchema(adoptDraft, tag, { path: ['draft'], elsewhere: ['version'], status: 201 }) }, (request, reply) =>
    answer(adoptDraft, request, reply, { input: { ...versionSeen(request), ...(request.params as object) }, status: 201 }),
  )
}

const amendmentPath = {
  type: 'object',
  required: ['jurisdiction', 'instrument'],
  properties: { jurisdiction: { type: 'string', maxLength: 100, description: 'The part of the id before the slash.' }, instrument: { type: 'string', maxLength: 200, description: 'The part after it.' } },
}

function textOf({ body, headers }: FastifyRequest) {
  return { text: typeof body === 'string' ? body : '', format: headers['content-type']?.includes('yaml') ? 'yaml' : 'json' }
}

function isDry({ query }: FastifyRequest): boolean {
  return (query as { validateOnly?: unknown }).validateOnly === 'true'
}

/** A query has words only; what is neither true nor false is for the operation to refuse. */
function validateOnlyOf({ query }: FastifyRequest): object {
  const { validateOnly, ...rest } = query as { validateOnly?: unknown }
  if (validateOnly === undefined) return rest
  return { ...rest, validateOnly: validateOnly === 'true' ? true : validateOnly === 'false' ? false : validateOnly }
}

function etagOf(value: unknown): Readonly<Record<string, string>> {
  return { etag: `"${(value as { version: string }).version}"` }
}
