import type { FastifyPluginAsync, FastifyReply, FastifyRequest } from 'fastify'
import { GraphQLError } from 'graphql'
import { malformedPlaces } from '../../opening/well-formed.ts'
import { depsOf } from '../caller.ts'
import { answerConditionally } from '../conditional.ts'
import { jsonBytes } from '../json.ts'
import { sendProblem } from '../send-problem.ts'
import { documentFor, type Documents } from './documents.ts'
import { formatted, requestErrors } from './faults.ts'
import { mediaTypeFor, mediaTypes, type MediaType } from './media-type.ts'
import { readParameters } from './parameters.ts'
import type { Context } from './schema.ts'

/** GraphQL over HTTP: POST with JSON, or GET for what changes nothing. Its own media type gets statuses that tell what happened. */
export const graphqlRoute: FastifyPluginAsync<{ readonly documents: Documents }> = async (app, { documents }) => {
  const handle = (request: FastifyRequest, reply: FastifyReply) => {
    const media = mediaTypeFor(request)
    reply.header('vary', 'Accept, Authorization').header('cache-control', request.method === 'GET' ? 'private, no-cache' : 'no-store')
    if (media) return answerQuery(request, reply.type(`${media}; charset=utf-8`), { media, documents })
    return sendProblem(request, reply, 'notAcceptable', [{ code: 'notAcceptable', pointer: '', detail: `This answers ${mediaTypes.join(' or ')}.` }])
  }
  answerConditionally(app)
  app.get('/graphql', { schema: { hide: true } }, handle)
  app.post('/graphql', { schema: { hide: true } }, handle)
}

interface Exchange {
  readonly media: MediaType
  readonly documents: Documents
}

async function answerQuery(request: FastifyRequest, reply: FastifyReply, { media, documents }: Exchange): Promise<FastifyReply> {
  const read = readParameters(request)
  if (!read.ok) return refuse(reply, 400, read.messages.map((message) => new GraphQLError(message)))
  const malformed = malformedPlaces(read.parameters)
  if (malformed.length > 0) return sendProblem(request, reply, 'malformed', malformed)
  const chosen = documentFor(read.parameters, documents)
  if (!chosen.ok) return refuse(reply, 400, [new GraphQLError(chosen.message)])
  const operationName = read.parameters.operationName ?? undefined
  const context: Context = { deps: depsOf(request), operationName }
  try {
    return await reply.send(jsonBytes(await reply.graphql(chosen.source, { ...context }, read.parameters.variables ?? {}, operationName)))
  } catch (error) {
    const { status, ofDocument, errors } = requestErrors(error, request)
    if (status === 405) reply.header('allow', 'POST')
    return refuse(reply, ofDocument && media === 'application/json' ? statusInPlainJson : status, errors)
  }
}

/** Under plain JSON a document that is not valid is answered as it always was, with its errors alone. */
const statusInPlainJson = 200

/** What cannot be answered at all has no data. */
function refuse(reply: FastifyReply, status: number, errors: readonly GraphQLError[]): FastifyReply {
  return reply.code(status).send({ errors: errors.map(formatted) })
}
