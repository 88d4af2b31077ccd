import type { FastifyPluginAsync } from 'fastify'
import { operations } from '../../operations/index.ts'
import { policyOf } from '../../report/document.ts'
import { answer, type Exchange } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { reportOpening, readEvaluationReport, readBuildingReport, readOpeningReport } = operations

const html = 'text/html; charset=utf-8'
const content = { 'text/html': { schema: { type: 'string', description: 'A whole page that takes nothing from anywhere.' } } }

/** Reports as pages to print, under a policy that lets nothing run and nothing in. */
export const reports: FastifyPluginAsync = async (app) => {
  app.post('/reports', { schema: routeSchema(reportOpening, 'Reports', { body: 'input', content }) }, (request, reply) => answer(reportOpening, request, reply, asPage))
  app.get('/evaluations/:evaluation/report', { schema: routeSchema(readEvaluationReport, 'Reports', { path: ['evaluation'], content }) }, (request, reply) => answer(readEvaluationReport, request, reply, asPage))
  app.get('/projects/:project/report', { schema: routeSchema(readBuildingReport, 'Reports', { path: ['project'], content }) }, (request, reply) => answer(readBuildingReport, request, reply, asPage))
  app.get('/projects/:project/openings/:opening/report', { schema: routeSchema(readOpeningReport, 'Reports', { path: ['project', 'opening'], content }) }, (request, reply) => answer(readOpeningReport, request, reply, asPage))
}

const asPage: Exchange = {
  content: (page) => ({ type: html, body: String(page) }),
  headers: (page) => ({ 'content-security-policy': `${policyOf(String(page))}; frame-ancestors 'none'`, 'content-disposition': 'inline; filename="report.html"' }),
}
