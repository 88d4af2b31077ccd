import type { FastifyPluginAsync, FastifyRequest } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer } from './answer.ts'
import { versionSeen } from '../conditional.ts'
import { routeSchema } from './schemas.ts'

const { createProject, readProject, listProjects, changeProject, postEntries, readOpeningRecord, evaluateRecordedOpening, readJournal, listOpenings, readBuilding, readBuildingTable, importSchedule } = operations
const tag = 'Records'

/** A sheet of 10,000 rows, and what JSON adds to it. */
const largestSheet = 10_485_760

/** The record of a building: its openings as drawn and as seen. */
export const projects: FastifyPluginAsync = async (app) => {
  app.get('/projects', { schema: routeSchema(listProjects, tag) }, (request, reply) => answer(listProjects, request, reply))
  app.post('/projects', { schema: routeSchema(createProject, tag, { body: 'input', status: 201 }) }, (request, reply) => answer(createProject, request, reply, { status: 201, headers: etagOf }))
  app.get('/projects/:project', { schema: routeSchema(readProject, tag, { path: ['project'] }) }, (request, reply) => answer(readProject, request, reply, { headers: etagOf }))
  app.put('/projects/:project', { schema: routeSchema(changeProject, tag, { path: ['project'], elsewhere: ['version'], body: 'input' }) }, (request, reply) =>
    answer(changeProject, request, reply, { input: inputOf(request, versionSeen(request)), headers: etagOf }),
  )
  app.post('/projects/:project/entries', { schema: routeSchema(postEntries, tag, { path: ['project'], body: 'input' }) }, (request, reply) =>
    answer(postEntries, request, reply, { input: inputOf(request) }),
  )
  app.post('/projects/:project/schedule-imports', { schema: routeSchema(importSchedule, tag, { path: ['project'], body: 'input' }), bodyLimit: largestSheet }, (request, reply) =>
    answer(importSchedule, request, reply, { input: inputOf(request) }),
  )
  app.get('/projects/:project/journal', { schema: routeSchema(readJournal, tag, { path: ['project'] }) }, (request, reply) => answer(readJournal, request, reply))
  app.get('/projects/:project/openings', { schema: routeSchema(listOpenings, tag, { path: ['project'] }) }, (request, reply) => answer(listOpenings, request, reply))
  app.get('/projects/:project/building', { schema: routeSchema(readBuilding, tag, { path: ['project'] }) }, (request, reply) => answer(readBuilding, request, reply))
  app.get('/projects/:project/tables/:table', { schema: routeSchema(readBuildingTable, tag, { path: ['project', 'table'], content: { 'text/csv': { schema: { type: 'string' } } } }) }, (request, reply) =>
    answer(readBuildingTable, request, reply, { content: (table) => ({ type: csv, body: String(table) }), headers: () => fileName(request) }),
  )
  app.get('/projects/:project/openings/:opening', { schema: routeSchema(readOpeningRecord, tag, { path: ['project', 'opening'] }) }, (request, reply) => answer(readOpeningRecord, request, reply))
  app.get('/projects/:project/openings/:opening/evaluation', { schema: routeSchema(evaluateRecordedOpening, tag, { path: ['project', 'opening'] }) }, (request, reply) =>
    answer(evaluateRecordedOpening, request, reply),
  )
}

/** As RFC 4180 registers it: the character set and whether there is a header. */
const csv = 'text/csv; charset=utf-8; header=present'

/** What a browser saves it as; ids and tables that were answered are plain words. */
function fileName({ params }: FastifyRequest): Readonly<Record<string, string>> {
  const { project, table } = params as { project: string; table: string }
  return { 'content-disposition': `attachment; filename="${table}-${project}.csv"` }
}

/** The body with what stands in the address and the headers. A body that is no object goes on alone, for the operation to refuse in its own words. */
function inputOf({ body, params }: FastifyRequest, more: object = {}): unknown {
  const sent = body ?? {}
  return typeof sent === 'object' && !Array.isArray(sent) ? { ...sent, ...more, ...(params as object) } : sent
}

function etagOf(value: unknown): Readonly<Record<string, string>> {
  return { etag: `"${(value as { version: string }).version}"` }
}
