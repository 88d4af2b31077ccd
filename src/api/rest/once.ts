import { createHash } from 'node:crypto'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { parseItem } from 'structured-headers'
import type { RequestClaim } from '../../store/kept-answers.ts'
import { sendProblem } from '../send-problem.ts'
import { seal, unseal } from './sealed-answer.ts'

declare module 'fastify' {
  interface FastifyRequest {
    /** What this request has claimed by its key. */
    held: { readonly claim: RequestClaim; readonly secret: string } | null
  }
}

/** How long an answer is kept. */
const hoursKept = 24
/** Longer than any request takes. */
const minutesToAnswer = 10

const repeated = ['content-type', 'etag', 'cache-control', 'vary', 'location', 'link'] as const

/** Sends what is already decided. */
type Sending = () => FastifyReply

/**
 * A request with an Idempotency-Key that comes again is answered as the first time, byte by byte; undefined when it is the first.
 * Only what was made is kept: a refusal frees the key, so that the request can be mended and sent again under it.
 */
export async function answerOfBefore(request: FastifyRequest, reply: FastifyReply): Promise<Sending | undefined> {
  const header = request.headers['idempotency-key']
  const { token } = request.caller
  if (header === undefined || token === null) return undefined
  const key = keyIn(String(header))
  if (key === undefined) return () => sendProblem(request, reply, 'malformed', [keyMalformed])
  const secret = `${token}\n${key}`
  const claim = claimOf(request, secret)
  const claimed = await request.server.deps.records.claimRequest(claim, limitsAt(Date.parse(claim.startedAt)))
  if (claimed.state === 'claimed') {
    request.held = { claim, secret }
    return undefined
  }
  if (claimed.fingerprint !== claim.fingerprint) return () => sendProblem(request, reply, 'keyReused', [])
  if (claimed.state === 'running') return () => sendProblem(request, reply.header('retry-after', 1), 'stillRunning', [])
  const { status, headers, body } = unseal(claimed.sealed, secret)
  return () => reply.code(status).headers(headers).send(body)
}

const keyMalformed = { code: 'malformed', pointer: '', detail: 'Idempotency-Key must be a quoted text of 1 to 255 characters: "8e03978e-40d5-43dd-bc93-6894a57f9324", with its quotes.' }

/** Keeps what is about to be sent, or frees the key. A store that fails now is logged: what was made is made, and is told. */
export function keepAnswers(app: FastifyInstance): void {
  app.decorateRequest('held', null)
  app.addHook('onSend', async (request, reply, payload) => {
    const { held, server: { deps: { records } } } = request
    if (!held) return payload
    request.held = null
    const body = reply.statusCode < 300 ? textOf(payload) : undefined
    const keeping = body === undefined ? records.releaseRequest(held.claim) : records.keepAnswer(held.claim, seal({ status: reply.statusCode, headers: headersOf(reply), body }, held.secret))
    await keeping.catch((error: unknown) => request.log.error({ err: error }, 'an answer could not be kept for its Idempotency-Key'))
    return payload
  })
}

function textOf(payload: unknown): string | undefined {
  return Buffer.isBuffer(payload) ? payload.toString('utf8') : typeof payload === 'string' ? payload : undefined
}

function keyIn(header: string): string | undefined {
  try {
    const [key] = parseItem(header) as readonly [unknown, unknown]
    return typeof key === 'string' && key.length > 0 && key.length <= 255 ? key : undefined
  } catch {
    return undefined
  }
}

function claimOf({ method, url, headers, body, server: { deps } }: FastifyRequest, secret: string): RequestClaim {
  const asked = JSON.stringify([method, url, headers['content-type'], headers['if-match'], body])
  return { id: digest(`claim\n${secret}`), fingerprint: digest(asked), startedAt: deps.now().toISOString() }
}

function limitsAt(now: number) {
  const before = (minutes: number): string => new Date(now - minutes * 60_000).toISOString()
  return { expired: before(hoursKept * 60), abandoned: before(minutesToAnswer) }
}

function digest(text: string): string {
  return createHash('sha256').update(text).digest('base64url')
}

function headersOf(reply: FastifyReply): Record<string, string> {
  return Object.fromEntries(repeated.flatMap((name) => (reply.hasHeader(name) ? [[name, String(reply.getHeader(name))]] : [])))
}
