import type { FastifyRequest } from 'fastify'
import { GraphQLError, type ExecutionResult, type GraphQLFormattedError } from 'graphql'
import type { MercuriusContext } from 'mercurius'
import { problemTypes, type ProblemCode } from '../problems.ts'

/** What went wrong while a query was answered. The cause of what nobody foresaw is logged and not shown. */
export function formatErrors({ data, errors = [] }: ExecutionResult, { reply }: MercuriusContext) {
  const shown = errors.map((error) => (isForeseen(error) ? formatted(error) : hidden(error)))
  const failed = errors.filter((_, index) => isFault(shown[index]))
  for (const error of failed) reply.log.error({ err: error.originalError ?? error, path: error.path }, 'operation failed')
  const nothingAnswered = Object.values(data ?? {}).every((value) => value === null)
  return { statusCode: nothingAnswered && failed.length > 0 ? 500 : 200, response: { data: data ?? null, errors: shown as GraphQLError[] } }
}

interface Refused {
  readonly status: number
  /** The document or its variables are not valid by the schema, as opposed to a request that is not well formed. */
  readonly ofDocument: boolean
  readonly errors: readonly GraphQLError[]
}

/** What went wrong before a query could be answered: its own text is told as GraphQL does, and nothing else is shown. */
export function requestErrors(error: unknown, request: FastifyRequest): Refused {
  if (error instanceof GraphQLError) return { status: statusOf(error), ofDocument: false, errors: [error] }
  if (isOfQuery(error)) return { status: error.statusCode ?? 400, ofDocument: error.code === 'MER_ERR_GQL_VALIDATION', errors: (error.errors ?? [error]).map((one) => (one instanceof GraphQLError ? one : new GraphQLError(one.message))) }
  request.log.error({ err: error }, 'request failed')
  return { status: 500, ofDocument: false, errors: [new GraphQLError(problemTypes.internal.title, { extensions: { code: 'internal', errors: [] } })] }
}

export function overQuotaError(message: string): GraphQLError {
  return new GraphQLError(message, { extensions: { code: 'quotaExceeded' satisfies ProblemCode, errors: [] } })
}

function statusOf({ extensions }: GraphQLError): number {
  const code = codeIn(extensions)
  return code === undefined ? 400 : problemTypes[code].status
}

interface QueryError extends Error {
  readonly code: string
  readonly statusCode?: number
  readonly errors?: readonly Error[]
}

function isOfQuery(error: unknown): error is QueryError {
  return error instanceof Error && 'code' in error && String(error.code).startsWith('MER_')
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

/** Compiled queries make errors of their own class, which do not format themselves. */
export function formatted({ message, locations, path, extensions }: GraphQLError): GraphQLFormattedError {
  const given = Object.entries({ message, locations, path, extensions }).filter(([, value]) => value !== undefined && Object.keys(value).length > 0)
  return { message, ...Object.fromEntries(given) }
}

function hidden({ locations = [], path = [] }: GraphQLError): GraphQLFormattedError {
  return { message: problemTypes.internal.title, locations, path, extensions: { code: 'internal', errors: [] } }
}
