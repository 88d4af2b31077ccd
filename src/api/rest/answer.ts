import type { FastifyReply, FastifyRequest } from 'fastify'
import type { z } from 'zod'
import type { Operation } from '../../operations/operation.ts'
import { problemOf } from '../problem-document.ts'
import { codeOfFailure, problemTypes, type ProblemCode } from '../problems.ts'
import type { Problem } from '../../opening/problem.ts'

/** Runs an operation on what the request holds and answers with its value, or with a problem document. */
export function answer<I extends z.ZodObject, O extends z.ZodType>(operation: Operation<I, O>, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const twice = request.method === 'POST' ? [] : saidTwice(request)
  if (twice.length > 0) return sendProblem(request, reply, 'invalidInput', twice)
  const answered = operation.run(request.server.deps, inputOf(request))
  if (answered.ok) return reply.type('application/json; charset=utf-8').send(answered.value)
  const code = codeOfFailure[answered.code]
  if (problemTypes[code].status >= 500) request.log.error({ code, problems: answered.problems }, 'operation failed')
  return sendProblem(request, reply, code, answered.problems)
}

function inputOf({ method, body, query, params }: FastifyRequest): unknown {
  return method === 'POST' ? body : { ...(query as object), ...(params as object) }
}

/** A query must not say again what stands in the path. */
function saidTwice({ query, params }: FastifyRequest): readonly Problem[] {
  const both = Object.keys(query as object).filter((key) => Object.hasOwn(params as object, key))
  return both.map((key) => ({ code: 'unknownKey', pointer: `/${key}`, detail: `"${key}" is not known here. It stands in the path.` }))
}

export function sendProblem(request: FastifyRequest, reply: FastifyReply, code: ProblemCode, errors: readonly Problem[]): FastifyReply {
  const document = problemOf(code, errors, { publicUrl: request.server.publicUrl, requestId: request.id })
  return reply.code(document.status).type('application/problem+json; charset=utf-8').send(document)
}
