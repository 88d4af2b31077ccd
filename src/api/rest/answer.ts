import type { FastifyReply, FastifyRequest } from 'fastify'
import type { Problem } from '../../opening/problem.ts'
import { runFor } from '../../operations/access.ts'
import { unitsOf, type AnyOperation, type Failure } from '../../operations/operation.ts'
import { depsOf } from '../caller.ts'
import { challenge } from '../challenge.ts'
import { jsonBytes } from '../json.ts'
import { codeOfFailure, problemTypes } from '../problems.ts'
import { charge, refuseOverQuota } from '../quota.ts'
import { sendProblem } from '../send-problem.ts'
import { linkNext, sayDeprecated } from './links.ts'
import { answerOfBefore } from './once.ts'

/** A file that goes out as it is. */
export interface Content {
  readonly type: string
  readonly body: string | Buffer
}

/** What a route adds to the plain exchange of input and value. */
export interface Exchange {
  /** The status of a value that was made; 200 when left out. */
  readonly status?: number
  /** The input, where it is not just the body, or the query and the path. */
  readonly input?: unknown
  /** What goes out instead of the value as JSON. */
  readonly content?: (value: unknown) => Content
  /** Headers that go with the value. */
  readonly headers?: (value: unknown) => Readonly<Record<string, string>>
}

/** Runs an operation on what the request holds and answers with its value, or with a problem document. */
export async function answer(operation: AnyOperation, request: FastifyRequest, reply: FastifyReply, exchange: Exchange = {}): Promise<FastifyReply> {
  const twice = saidTwice(request)
  if (twice.length > 0) return sendProblem(request, reply, 'invalidInput', twice)
  const input = exchange.input ?? inputOf(request)
  const units = unitsOf(operation, input)
  sayDeprecated(operation, reply)
  if (!(await charge(request, reply, units))) return refuseOverQuota(request, reply, units)
  const before = operation.makes ? await answerOfBefore(request, reply) : undefined
  if (before) return before()
  const answered = await runFor(operation, depsOf(request), input)
  return answered.ok ? sendValue(answered.value, request, reply, exchange) : sendFailure(answered, request, reply)
}

export function sendFailure(failure: Failure, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const code = codeOfFailure[failure.code]
  if (problemTypes[code].status >= 500) request.log.error({ code, problems: failure.problems }, 'operation failed')
  return sendProblem(request, reply.headers(challengeOf(failure)), code, failure.problems)
}

function challengeOf({ code, scope }: Failure): Readonly<Record<string, string>> {
  if (code === 'unauthenticated') return challenge()
  return code === 'forbidden' ? challenge({ error: 'insufficient_scope', scope }) : {}
}

function sendValue(value: unknown, request: FastifyRequest, reply: FastifyReply, { status = 200, content, headers }: Exchange): FastifyReply {
  linkNext(request, reply, value)
  const { type, body } = content?.(value) ?? { type: 'application/json; charset=utf-8', body: jsonBytes(value) }
  return reply.code(status).headers(headers?.(value) ?? {}).type(type).send(body)
}

function inputOf({ method, body, query, params }: FastifyRequest): unknown {
  return method === 'GET' || method === 'HEAD' ? { ...(query as object), ...(params as object) } : body
}

/** A query must not say again what stands in the path. */
function saidTwice({ method, query, params }: FastifyRequest): readonly Problem[] {
  if (method !== 'GET') return []
  const both = Object.keys(query as object).filter((key) => Object.hasOwn(params as object, key))
  return both.map((key) => ({ code: 'unknownKey', pointer: `/${key}`, detail: `"${key}" is not known here. It stands in the path.` }))
}
