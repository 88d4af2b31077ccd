import type { FastifyPluginAsync } from 'fastify'
import type { ProjectExport } from '../../operations/export-project.ts'
import { operations } from '../../operations/index.ts'
import { answer, type Content } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { exportProject } = operations

const content = {
  'application/sarif+json': { schema: { type: 'object', description: 'A log in SARIF 2.1.0 (OASIS).' } },
  'application/json': { schema: { type: 'object', description: 'Assessment results in OSCAL 1.1.2 (NIST).' } },
  'application/zip': { schema: { type: 'string', description: 'A file in BCF 3.0 (buildingSMART).' } },
}

/** The findings of a building as a file in an open format. */
export const exports: FastifyPluginAsync = async (app) => {
  app.get('/projects/:project/exports/:format', { schema: routeSchema(exportProject, 'Records', { path: ['project', 'format'], content }) }, (request, reply) =>
    answer(exportProject, request, reply, { content: contentOf, headers: attachmentOf }),
  )
}

function contentOf(value: unknown): Content {
  const { mediaType, inBase64, content: body } = value as ProjectExport
  return { type: mediaType, body: inBase64 ? Buffer.from(body, 'base64') : body }
}

function attachmentOf(value: unknown): Readonly<Record<string, string>> {
  return { 'content-disposition': `attachment; filename="${(value as ProjectExport).fileName}"` }
}
