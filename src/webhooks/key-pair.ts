import { createPrivateKey, createPublicKey, randomBytes, sign, type KeyObject } from 'node:crypto'

const privatePrefix = 'whsk_'
const publicPrefix = 'whpk_'
/** What stands before the 32 bytes of an Ed25519 private key in PKCS #8 (RFC 8410, section 7). */
const pkcs8Head = Buffer.from('302e020100300506032b657004220420', 'hex')
const keyBytes = 32

/** A random Ed25519 private key, as Standard Webhooks writes them: its 32 bytes (RFC 8032, section 5.1.5) in Base64. */
export function newPrivateKey(): string {
  return `${privatePrefix}${randomBytes(keyBytes).toString('base64')}`
}

export function isPrivateKey(secret: string): boolean {
  return secret.startsWith(privatePrefix)
}

/** What everybody may know, and what signatures by the private key are checked by. Throws when it is no private key. */
export function publicKeyOf(privateKey: string): string {
  const der = createPublicKey(keyIn(privateKey)).export({ type: 'spki', format: 'der' })
  return `${publicPrefix}${der.subarray(-keyBytes).toString('base64')}`
}

/** 64 bytes of Ed25519, the same each time for the same bytes. Throws when it is no private key. */
export function signedBy(privateKey: string, bytes: Uint8Array): Buffer {
  return sign(null, bytes, keyIn(privateKey))
}

function keyIn(privateKey: string): KeyObject {
  const bytes = Buffer.from(privateKey.slice(privatePrefix.length), 'base64')
  if (!isPrivateKey(privateKey) || bytes.length !== keyBytes) throw new Error('a private signing key is whsk_ and the Base64 of 32 bytes')
  return createPrivateKey({ key: Buffer.concat([pkcs8Head, bytes]), format: 'der', type: 'pkcs8' })
}
