import { createCipheriv, createDecipheriv, createHmac, randomBytes } from 'node:crypto'
import { isPrivateKey, newPrivateKey, signedBy } from './key-pair.ts'

/** What is signed: an id and a moment that the receiver can check, and the body byte for byte. */
export interface Signed {
  readonly id: string
  /** Seconds since 1970. */
  readonly timestamp: number
  readonly text: string
}

/** Standard Webhooks has two ways to sign: by a secret that both sides know, and by a private key that the receiver need not know. */
export const signatureKinds = ['hmac', 'ed25519'] as const
export type SignatureKind = (typeof signatureKinds)[number]

const prefix = 'whsec_'

/** 256 random bits, as Standard Webhooks writes them: a shared secret, or a private key. */
export function newSigningSecret(kind: SignatureKind): string {
  return kind === 'ed25519' ? newPrivateKey() : `${prefix}${randomBytes(32).toString('base64')}`
}

/** The value of the `webhook-signature` header: one signature for each secret, so that a receiver may change over in its own time. */
export function signatures({ id, timestamp, text }: Signed, secrets: readonly string[]): string {
  const content = Buffer.from(`${id}.${timestamp}.${text}`)
  return secrets.map((secret) => (isPrivateKey(secret) ? `v1a,${signedBy(secret, content).toString('base64')}` : `v1,${createHmac('sha256', keyOf(secret)).update(content).digest('base64')}`)).join(' ')
}

function keyOf(secret: string): Buffer {
  if (!secret.startsWith(prefix)) throw new Error('a signing secret begins with whsec_')
  return Buffer.from(secret.slice(prefix.length), 'base64')
}

/** How signing secrets are kept. They have to be read again for every signature, so that a hash will not do. */
export interface Sealer {
  /** False when there is no key, so that secrets are kept in the clear. */
  readonly encrypts: boolean
  readonly seal: (secret: string, webhook: string) => string
  /** Throws what makes it unreadable: no key, another key, a secret of another webhook, altered bytes. */
  readonly open: (sealed: string, webhook: string) => string
}

const clear = 'clear:'
const encrypted = 'aes-256-gcm:'
const [nonceBytes, tagBytes] = [12, 16]

/** Encrypts by AES-256-GCM, bound to the id of the webhook. What was kept in the clear before there was a key can still be read. */
export function sealerBy(key: Uint8Array | undefined): Sealer {
  return {
    encrypts: key !== undefined,
    seal: (secret, webhook) => (key === undefined ? `${clear}${secret}` : encrypt(key, secret, webhook)),
    open(sealed, webhook) {
      if (sealed.startsWith(clear)) return sealed.slice(clear.length)
      if (key === undefined) throw new Error('The signing secret is encrypted, and WEBHOOK_KEY is not set.')
      return decrypt(key, sealed, webhook)
    },
  }
}

export function isEncrypted(sealed: string): boolean {
  return sealed.startsWith(encrypted)
}

function encrypt(key: Uint8Array, secret: string, webhook: string): string {
  const nonce = randomBytes(nonceBytes)
  const cipher = createCipheriv('aes-256-gcm', key, nonce, { authTagLength: tagBytes }).setAAD(Buffer.from(webhook))
  return `${encrypted}${Buffer.concat([nonce, cipher.update(secret, 'utf8'), cipher.final(), cipher.getAuthTag()]).toString('base64')}`
}

function decrypt(key: Uint8Array, sealed: string, webhook: string): string {
  const bytes = Buffer.from(sealed.slice(encrypted.length), 'base64')
  const decipher = createDecipheriv('aes-256-gcm', key, bytes.subarray(0, nonceBytes), { authTagLength: tagBytes }).setAAD(Buffer.from(webhook))
  decipher.setAuthTag(bytes.subarray(-tagBytes))
  try {
    return Buffer.concat([decipher.update(bytes.subarray(nonceBytes, -tagBytes)), decipher.final()]).toString('utf8')
  } catch (error) {
    throw new Error('The signing secret does not open with this WEBHOOK_KEY.', { cause: error })
  }
}
