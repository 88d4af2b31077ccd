import { once } from 'node:events'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { exportJWK, generateKeyPair, SignJWT, type CryptoKey, type JWTPayload } from 'jose'
import { afterAll } from 'vitest'
import { clock } from './client.ts'

export const audience = 'https://wythe.example'

interface Pair {
  readonly kid: string
  readonly alg: string
  readonly privateKey: CryptoKey
  readonly publicKey: CryptoKey
}

/** An identity provider on this machine, with discovery and keys that can be changed, hidden or broken. Counts what it is asked. */
export async function localProvider() {
  let published: Pair[] = []
  let answer: (request: IncomingMessage, response: ServerResponse) => void | Promise<void> = serve
  const asked: string[] = []
  const server = createServer((request, response) => {
    asked.push(request.url ?? '')
    void answer(request, response)
  }).listen(0, '127.0.0.1')
  await once(server, 'listening')
  afterAll(() => server.close())
  const issuer = `http://127.0.0.1:${(server.address() as AddressInfo).port}/realm`

  async function serve({ url }: IncomingMessage, response: ServerResponse): Promise<void> {
    const body = url === '/realm/.well-known/openid-configuration' ? { issuer, jwks_uri: `${issuer}/keys` } : url === '/realm/keys' ? { keys: await jwks() } : undefined
    response.writeHead(body ? 200 : 404, { 'content-type': 'application/json' }).end(JSON.stringify(body ?? {}))
  }

  async function jwks() {
    return Promise.all(published.map(async ({ kid, alg, publicKey }) => ({ ...(await exportJWK(publicKey)), kid, alg, use: 'sig' })))
  }

  return {
    issuer,
    asked,
    newKey: async (kid: string, alg = 'ES256'): Promise<Pair> => ({ kid, alg, ...(await generateKeyPair(alg, { extractable: true })) }),
    publish: (...pairs: Pair[]) => { published = pairs },
    answerWith: (next: typeof answer | null) => { answer = next ?? serve },
  }
}

const seconds = Date.parse(clock) / 1_000

/** A token that is good at the time of the tests, but for what is changed. A claim that is undefined is left out. */
export function signed({ kid, alg, privateKey }: Pair, issuer: string, change: JWTPayload = {}, header: { readonly typ?: string | undefined } = {}): Promise<string> {
  const claims = { iss: issuer, aud: audience, sub: 'user-4711', iat: seconds - 60, exp: seconds + 300, scope: 'wythe:record', ...change }
  return new SignJWT(JSON.parse(JSON.stringify(claims)) as JWTPayload).setProtectedHeader({ alg, kid, typ: 'at+jwt', ...header }).sign(privateKey)
}
