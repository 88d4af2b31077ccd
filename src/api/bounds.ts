import { Readable } from 'node:stream'
import type { FastifyInstance } from 'fastify'
import { malformedPlaces } from '../opening/well-formed.ts'
import { sendProblem } from './send-problem.ts'

/** Longer than any query that is meant. */
const longestAddress = 8_192
const mostHeaders = 100

/** What every request is held to before anything looks at it: the length of its address, how many headers it has, and whether its body is text through and through. */
export function boundRequests(app: FastifyInstance): void {
  app.addHook('onRequest', async (request, reply) => {
    if (request.url.length > longestAddress) return sendProblem(request, reply, 'addressTooLong', [{ code: 'addressTooLong', pointer: '', detail: `It has ${request.url.length} characters; at most ${longestAddress} are read.` }])
    const headers = request.raw.rawHeaders.length / 2
    if (headers > mostHeaders) return sendProblem(request, reply, 'headersTooLarge', [{ code: 'headersTooLarge', pointer: '', detail: `There are ${headers} headers; at most ${mostHeaders} are read.` }])
  })
  app.addHook('preValidation', async (request, reply) => {
    if (request.body instanceof Readable) return
    const problems = malformedPlaces(request.body)
    if (problems.length > 0) return sendProblem(request, reply, 'malformed', problems)
  })
}
