import type { FastifyReply, FastifyRequest } from 'fastify'
import { GraphQLError } from 'graphql'
import { malformedPlaces } from '../../opening/well-formed.ts'
import { depsOf } from '../caller.ts'
import { jsonBytes } from '../json.ts'
import { sendProblem } from '../send-problem.ts'
import { documentFor, type Documents } from './documents.ts'
import { graphqlEngine, type Engine } from './engine.ts'
import { formatted, requestErrors } from './faults.ts'
import type { MediaType } from './media-type.ts'
import { readParameters } from './parameters.ts'
import type { Context } from './schema.ts'

export type AnswerQuery = (request: FastifyRequest, reply: FastifyReply, media: MediaType) => Promise<FastifyReply>

/** What answers one query after the other, or says why it does not. */
export async function queryAnswerer(documents: Documents): Promise<AnswerQuery> {
  const engine = await graphqlEngine()
  return (request, reply, media) => answerQuery(engine, request, reply, { media, documents })
}

interface Exchange {
  readonly media: MediaType
  readonly documents: Documents
}

async function answerQuery(engine: Engine, request: FastifyRequest, reply: FastifyReply, { media, documents }: Exchange): Promise<FastifyReply> {
  const read = readParameters(request)
  if (!read.ok) return refuse(reply, 400, read.messages.map((message) => new GraphQLError(message)))
  const malformed = malformedPlaces(read.parameters)
  if (malformed.length > 0) return sendProblem(request, reply, 'malformed', malformed)
  const chosen = documentFor(read.parameters, documents)
  if (!chosen.ok) return refuse(reply, 400, [new GraphQLError(chosen.message)])
  const operationName = read.parameters.operationName ?? undefined
  const context: Context = { deps: depsOf(request), operationName }
  try {
    return await reply.send(jsonBytes(await engine(chosen.source, { ...context, reply }, read.parameters.variables ?? {}, operationName)))
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
