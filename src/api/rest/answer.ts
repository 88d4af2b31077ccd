import type { FastifyReply, FastifyRequest } from 'fastify'
import type { z } from 'zod'
import type { Operation } from '../../operations/operation.ts'
import { problemOf } from '../problem-document.ts'
import { codeOfFailure, type ProblemCode } from '../problems.ts'
import type { Problem } from '../../opening/problem.ts'

/** Runs an operation on what the request holds and answers with its value, or with a problem document. */
export function answer<I extends z.ZodObject, O extends z.ZodType>(operation: Operation<I, O>, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const raw: unknown = request.method === 'POST' ? request.body : { ...(request.query as object), ...(request.params as object) }
  const answered = operation.run(request.server.deps, raw)
  if (!answered.ok) return sendProblem(request, reply, codeOfFailure[answered.code], answered.problems)
  return reply.type('application/json; charset=utf-8').send(answered.value)
}

export function sendProblem(request: FastifyRequest, reply: FastifyReply, code: ProblemCode, errors: readonly Problem[]): FastifyReply {
  const document = problemOf(code, errors, { publicUrl: request.server.publicUrl, requestId: request.id })
  return reply.code(document.status).type('application/problem+json; charset=utf-8').send(document)
}
