import { lookup as resolveName, type LookupAddress } from 'node:dns'
import { request as httpRequest, type ClientRequest, type IncomingMessage } from 'node:http'
import { request as httpsRequest } from 'node:https'
import { isIP, type LookupFunction } from 'node:net'
import { hostOf, mayReach, targetFault, type TargetPolicy } from './target.ts'

export interface Post {
  readonly target: string
  readonly headers: Readonly<Record<string, string>>
  readonly text: string
  /** Ends the attempt: it took too long, or the deliverer stops. */
  readonly signal: AbortSignal
}

/** What came back: a status, or why there is none. */
export type Reply = { readonly status: number; readonly retryAfter: string | null } | { readonly fault: string }

/** Posts once, and tells what came of it. */
export type Send = (post: Post) => Promise<Reply>

export type Resolve = (host: string) => Promise<readonly LookupAddress[]>

/** As much of an answer is let in before the line is cut; nothing of it is kept. */
const mostAnswer = 16_384

/**
 * Posts to a target without following where it may point. The name is looked up once, every address is checked, and the
 * connection goes to one of those that were checked, so that a name cannot lead elsewhere in between.
 */
export function sendBy(policy: TargetPolicy, resolve: Resolve = allAddresses): Send {
  return async (post) => {
    const fault = targetFault(post.target, policy)
    if (fault !== undefined) return { fault: `The target ${fault}` }
    const url = new URL(post.target)
    const addresses = await unlessAborted(addressesOf(hostOf(url), resolve), post.signal)
    if ('fault' in addresses) return addresses
    const barred = addresses.found.find(({ address }) => !mayReach(url, address, policy))
    if (barred) return { fault: `The name leads to ${barred.address}, which is not a public address.` }
    return exchange(url, post, addresses.found)
  }
}

type Found = { readonly found: readonly LookupAddress[] } | { readonly fault: string }

async function addressesOf(host: string, resolve: Resolve): Promise<Found> {
  const family = isIP(host)
  if (family !== 0) return { found: [{ address: host, family }] }
  try {
    const found = await resolve(host)
    return found.length > 0 ? { found } : { fault: 'The name has no address.' }
  } catch (error) {
    return { fault: `The name cannot be looked up: ${codeOf(error)}.` }
  }
}

function unlessAborted(work: Promise<Found>, signal: AbortSignal): Promise<Found> {
  const aborted = new Promise<Found>((resolve) => {
    if (signal.aborted) resolve({ fault: tooLong })
    signal.addEventListener('abort', () => resolve({ fault: tooLong }), { once: true })
  })
  return Promise.race([work, aborted])
}

const tooLong = 'No answer in time.'

function exchange(url: URL, { headers, text, signal }: Post, addresses: readonly LookupAddress[]): Promise<Reply> {
  return new Promise((resolve) => {
    const begin = url.protocol === 'https:' ? httpsRequest : httpRequest
    const body = Buffer.from(text, 'utf8')
    // No agent: a connection that is kept could be one that was checked long ago.
    const sent: ClientRequest = begin(url, { method: 'POST', agent: false, lookup: pinnedTo(addresses), signal, headers: { ...headers, 'content-length': String(body.length) } })
    sent.on('response', (response) => { letPass(response).then(() => resolve(replyOf(response)), () => resolve(replyOf(response))) })
    sent.on('error', (error) => resolve({ fault: signal.aborted ? tooLong : `The connection failed: ${codeOf(error)}.` }))
    sent.end(body)
  })
}

/** Both forms in which the platform asks; the addresses are those that were checked, whatever it asks for. */
function pinnedTo(addresses: readonly LookupAddress[]): LookupFunction {
  return (_host, options, answer) => {
    const [first] = addresses
    if (options.all) answer(null, [...addresses])
    else answer(null, first?.address ?? '', first?.family)
  }
}

/** Waits for the end of an answer, of which nothing is kept, or cuts it off. */
function letPass(response: IncomingMessage): Promise<void> {
  return new Promise((resolve) => {
    let seen = 0
    response.on('data', (part: Buffer) => {
      seen += part.length
      if (seen > mostAnswer) response.destroy()
    })
    response.on('error', () => resolve()).on('close', () => resolve())
  })
}

function replyOf({ statusCode = 0, headers }: IncomingMessage): Reply {
  return { status: statusCode, retryAfter: headers['retry-after'] ?? null }
}

const allAddresses: Resolve = (host) => new Promise((resolve, reject) => {
  resolveName(host, { all: true, verbatim: true }, (error, addresses) => { if (error) reject(error); else resolve(addresses) })
})

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : error instanceof Error ? error.message : String(error)
}
