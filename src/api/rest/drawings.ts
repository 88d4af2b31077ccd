import type { FastifyPluginAsync } from 'fastify'
import { operations } from '../../operations/index.ts'
import { answer, type Content, type Exchange } from './answer.ts'
import { routeSchema } from './schemas.ts'

const { drawOpening, drawEvaluation } = operations

const content = { 'image/svg+xml': { schema: { type: 'string', description: 'A drawing in SVG 1.1, in millimeters of paper, without style sheets, scripts or anything from outside.' } } }

/** Openings as drawings. */
export const drawings: FastifyPluginAsync = async (app) => {
  app.post('/drawings', { schema: routeSchema(drawOpening, 'Drawings', { body: 'input', content }) }, (request, reply) => answer(drawOpening, request, reply, asImage))
  app.get('/evaluations/:evaluation/drawings/:kind', { schema: routeSchema(drawEvaluation, 'Drawings', { path: ['evaluation', 'kind'], content }) }, (request, reply) =>
    answer(drawEvaluation, request, reply, asImage),
  )
}

/** Whatever stands in a text of the drawing, a browser that opens it by itself runs and loads nothing. */
const asImage: Exchange = { content: imageOf, headers: () => ({ 'content-security-policy': "default-src 'none'; base-uri 'none'; form-action 'none'; sandbox", 'content-disposition': 'inline' }) }

function imageOf(value: unknown): Content {
  return { type: 'image/svg+xml; charset=utf-8', body: (value as { readonly svg: string }).svg }
}
