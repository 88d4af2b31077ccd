import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from 'fastify'
import { answerConditionally } from '../conditional.ts'
import { late } from '../late.ts'
import { sendProblem } from '../send-problem.ts'
import type { Documents } from './documents.ts'
import { mediaTypeFor, mediaTypes } from './media-type.ts'

/**
 * The GraphQL door at /graphql, over HTTP: POST with JSON, or GET for what changes nothing. What answers queries is loaded and
 * built with the first of them, since it is a quarter of what a start would otherwise take.
 */
export const graphql: FastifyPluginAsync<{ readonly documents: Documents }> = async (app, { documents }) => {
  const answerer = late(async () => (await import('./answer-query.ts')).queryAnswerer(documents))
  const handle = async (request: FastifyRequest, reply: FastifyReply) => {
    const media = mediaTypeFor(request)
    reply.header('vary', 'Accept, Authorization').header('cache-control', request.method === 'GET' ? 'private, no-cache' : 'no-store')
    if (!media) return sendProblem(request, reply, 'notAcceptable', [{ code: 'notAcceptable', pointer: '', detail: `This answers ${mediaTypes.join(' or ')}.` }])
    const answer = await answerer()
    return answer(request, reply.type(`${media}; charset=utf-8`), media)
  }
  answerConditionally(app)
  app.get('/graphql', { schema: { hide: true } }, handle)
  app.post('/graphql', { schema: { hide: true } }, handle)
}
