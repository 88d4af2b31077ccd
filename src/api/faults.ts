import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify'
import type { ProblemCode } from './problems.ts'
import { sendProblem } from './send-problem.ts'

const codes: Readonly<Record<string, ProblemCode>> = {
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'unsupportedMediaType',
  FST_ERR_CTP_BODY_TOO_LARGE: 'tooLarge',
}

/** What goes wrong outside an operation. The cause of a 5xx is logged and not shown. */
export function handleError(error: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const code = codes[error.code] ?? codeOfStatus(error.statusCode ?? 500)
  if (code === 'internal') request.log.error({ err: error }, 'request failed')
  return sendProblem(request, reply, code, code === 'malformed' ? [{ code, pointer: '', detail: error.message }] : [])
}

function codeOfStatus(status: number): ProblemCode {
  if (status === 503) return 'unavailable'
  if (status === 404) return 'notFound'
  return status >= 400 && status < 500 ? 'malformed' : 'internal'
}

/** An address that exists under another method is a 405 with Allow; else it is a 404. */
export function notFoundHandler(methodsOf: (path: string) => readonly string[]) {
  return (request: FastifyRequest, reply: FastifyReply): FastifyReply => {
    const path = request.url.split('?')[0] ?? '/'
    const allowed = methodsOf(path)
    if (allowed.length === 0 || allowed.includes(request.method)) return sendProblem(request, reply, 'notFound', [{ code: 'notFound', pointer: '', detail: `There is nothing at ${path}.` }])
    return sendProblem(request, reply.header('allow', allowed.join(', ')), 'methodNotAllowed', [{ code: 'methodNotAllowed', pointer: '', detail: `${path} answers ${allowed.join(', ')}.` }])
  }
}
