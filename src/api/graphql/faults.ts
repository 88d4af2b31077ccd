import type { FastifyReply, FastifyRequest } from 'fastify'
import { GraphQLError, type ExecutionResult, type GraphQLFormattedError } from 'graphql'
import type { MercuriusContext, MercuriusError } from 'mercurius'
import { problemTypes, type ProblemCode } from '../problems.ts'
import { handleError } from '../faults.ts'

/** What went wrong while a query was answered. The cause of what nobody foresaw is logged and not shown. */
export function formatErrors({ data, errors = [] }: ExecutionResult, { reply }: MercuriusContext) {
  const shown = errors.map((error) => (isForeseen(error) ? error.toJSON() : hidden(error)))
  const failed = errors.filter((_, index) => isFault(shown[index]))
  for (const error of failed) reply.log.error({ err: error.originalError ?? error, path: error.path }, 'operation failed')
  const nothingAnswered = Object.values(data ?? {}).every((value) => value === null)
  return { statusCode: nothingAnswered && failed.length > 0 ? 500 : 200, response: { data: data ?? null, errors: shown } }
}

/** What went wrong before a query could be answered: its own text is told as GraphQL does, all else as over REST. */
export async function handleRefusal(error: MercuriusError, request: FastifyRequest, reply: FastifyReply): Promise<void> {
  await (isOfQuery(error) ? refuseQuery(error, reply) : handleError(error, request, reply))
}

function refuseQuery(error: MercuriusError, reply: FastifyReply): FastifyReply {
  const errors = (error.errors ?? [error]).map((one) => (one instanceof GraphQLError ? one.toJSON() : { message: one.message }))
  return reply.code(error.statusCode ?? 400).type('application/json; charset=utf-8').send({ errors })
}

function isOfQuery({ code }: { readonly code?: string }): boolean {
  return code?.startsWith('MER_') ?? false
}

/** Refusals of operations carry their code; what fails outside a field is the query's own fault. */
function isForeseen({ extensions, path }: GraphQLError): boolean {
  return path === undefined || codeIn(extensions) !== undefined
}

function isFault(error: GraphQLFormattedError | undefined): boolean {
  const code = codeIn(error?.extensions)
  return code !== undefined && problemTypes[code].status >= 500
}

function codeIn(extensions: Readonly<Record<string, unknown>> | undefined): ProblemCode | undefined {
  const code = extensions?.['code']
  return typeof code === 'string' && Object.hasOwn(problemTypes, code) ? (code as ProblemCode) : undefined
}

function hidden({ locations = [], path = [] }: GraphQLError): GraphQLFormattedError {
  return { message: problemTypes.internal.title, locations, path, extensions: { code: 'internal', errors: [] } }
}
