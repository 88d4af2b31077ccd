import { createCipheriv, createDecipheriv, hkdfSync, randomBytes } from 'node:crypto'
import { z } from 'zod'

/** An answer as it went out. */
const sent = z.strictObject({ status: z.int(), headers: z.record(z.string(), z.string()), body: z.string() })
export type SentAnswer = z.infer<typeof sent>

const cipher = 'aes-256-gcm'
const [ivBytes, tagBytes] = [12, 16]

/** Closes an answer with the key of its request: the store keeps no more than a hash of it, so that a secret in an answer cannot be read there. */
export function seal(answer: SentAnswer, key: string): string {
  const iv = randomBytes(ivBytes)
  const closing = createCipheriv(cipher, secretOf(key), iv)
  const closed = Buffer.concat([closing.update(JSON.stringify(answer), 'utf8'), closing.final()])
  return Buffer.concat([iv, closing.getAuthTag(), closed]).toString('base64')
}

export function unseal(sealed: string, key: string): SentAnswer {
  const bytes = Buffer.from(sealed, 'base64')
  const opening = createDecipheriv(cipher, secretOf(key), bytes.subarray(0, ivBytes)).setAuthTag(bytes.subarray(ivBytes, ivBytes + tagBytes))
  const text = Buffer.concat([opening.update(bytes.subarray(ivBytes + tagBytes)), opening.final()]).toString('utf8')
  return sent.parse(JSON.parse(text))
}

function secretOf(key: string): Buffer {
  return Buffer.from(hkdfSync('sha256', key, '', 'kept answer', 32))
}
