import type { FastifyReply, FastifyRequest } from 'fastify'
import type { Problem } from '../../opening/problem.ts'
import type { AnyOperation } from '../../operations/operation.ts'
import { depsOf } from '../caller.ts'
import { codeOfFailure, problemTypes } from '../problems.ts'
import { sendProblem } from '../send-problem.ts'

/** What a route adds to the plain exchange of input and value. */
export interface Exchange {
  /** The status of a value that was made; 200 when left out. */
  readonly status?: number
  /** The input, where it is not just the body, or the query and the path. */
  readonly input?: unknown
  /** The media type of a value that is a text; else it goes as JSON. */
  readonly text?: string
  /** Headers that go with the value. */
  readonly headers?: (value: unknown) => Readonly<Record<string, string>>
}

/** Runs an operation on what the request holds and answers with its value, or with a problem document. */
export async function answer(operation: AnyOperation, request: FastifyRequest, reply: FastifyReply, exchange: Exchange = {}): Promise<FastifyReply> {
  const twice = request.method === 'GET' ? saidTwice(request) : []
  if (twice.length > 0) return sendProblem(request, reply, 'invalidInput', twice)
  const answered = await operation.run(depsOf(request), exchange.input ?? inputOf(request))
  if (answered.ok) {
    return reply.code(exchange.status ?? 200).headers(exchange.headers?.(answered.value) ?? {}).type(exchange.text ?? 'application/json; charset=utf-8').send(answered.value)
  }
  const code = codeOfFailure[answered.code]
  if (problemTypes[code].status >= 500) request.log.error({ code, problems: answered.problems }, 'operation failed')
  return sendProblem(request, reply, code, answered.problems)
}

function inputOf({ method, body, query, params }: FastifyRequest): unknown {
  return method === 'GET' || method === 'HEAD' ? { ...(query as object), ...(params as object) } : body
}

/** A query must not say again what stands in the path. */
function saidTwice({ query, params }: FastifyRequest): readonly Problem[] {
  const both = Object.keys(query as object).filter((key) => Object.hasOwn(params as object, key))
  return both.map((key) => ({ code: 'unknownKey', pointer: `/${key}`, detail: `"${key}" is not known here. It stands in the path.` }))
}
