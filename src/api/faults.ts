import { STATUS_CODES } from 'node:http'
import type { Socket } from 'node:net'
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify'
import type { ProblemCode } from './problems.ts'
import { problemOf } from './problem-document.ts'
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

/** An address that exists tells its methods to OPTIONS, and is a 405 with Allow under another; else it is a 404. */
export function notFoundHandler(methodsOf: (path: string) => readonly string[]) {
  return (request: FastifyRequest, reply: FastifyReply): FastifyReply => {
    const path = request.url.split('?')[0] ?? '/'
    const allowed = methodsOf(path)
    if (allowed.length === 0 || allowed.includes(request.method)) return sendProblem(request, reply, 'notFound', [{ code: 'notFound', pointer: '', detail: `There is nothing at ${path}.` }])
    if (request.method === 'OPTIONS') return reply.code(204).header('allow', [...allowed, 'OPTIONS'].join(', ')).send()
    return sendProblem(request, reply.header('allow', allowed.join(', ')), 'methodNotAllowed', [{ code: 'methodNotAllowed', pointer: '', detail: `${path} answers ${allowed.join(', ')}.` }])
  }
}

const brokenRequests: Readonly<Record<string, ProblemCode>> = { HPE_HEADER_OVERFLOW: 'headersTooLarge', ERR_HTTP_REQUEST_TIMEOUT: 'tooSlow' }

/** What is not even HTTP, is too large to be read, or never ends. There is no request yet, so the answer is written by hand. */
export function handleBrokenRequest(publicUrl: string, newId: () => string) {
  return ({ code }: Error & { readonly code?: string }, socket: Socket): void => {
    if (code === 'ECONNRESET' || socket.destroyed) return
    const document = problemOf(brokenRequests[code ?? ''] ?? 'malformed', [], { publicUrl, requestId: newId() })
    const body = JSON.stringify(document)
    const head = [`HTTP/1.1 ${document.status} ${STATUS_CODES[document.status] ?? ''}`, 'Content-Type: application/problem+json; charset=utf-8', `Content-Length: ${Buffer.byteLength(body)}`, 'Cache-Control: no-store', 'Connection: close']
    if (socket.writable) socket.write(`${head.join('\r\n')}\r\n\r\n${body}`)
    socket.destroy()
  }
}
