import type { FastifyReply, FastifyRequest } from 'fastify'
import type { Problem } from '../opening/problem.ts'
import { problemOf } from './problem-document.ts'
import type { ProblemCode } from './problems.ts'

/** Answers with a problem document and its status. */
export function sendProblem(request: FastifyRequest, reply: FastifyReply, code: ProblemCode, errors: readonly Problem[], violated?: readonly string[]): FastifyReply {
  const document = problemOf(code, errors, { publicUrl: request.server.publicUrl, requestId: request.id, violated })
  return reply.code(document.status).header('cache-control', 'no-store').type('application/problem+json; charset=utf-8').send(document)
}
