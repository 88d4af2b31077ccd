import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { canonicalBytes } from './canonical.ts'

/** SHA-256 of bytes, as lowercase hex. */
export type Sha256 = (bytes: Uint8Array) => string

const portable: Sha256 = (bytes) => bytesToHex(sha256(bytes))
let inUse = portable

/** Lets whoever starts the service bring the hash of the platform, which is many times as fast and says the same, or is refused. */
export function useSha256(platform: Sha256): void {
  const sample = utf8ToBytes('at least 3⅞″ – 98.4 mm')
  if (platform(sample) !== portable(sample)) throw new Error('the SHA-256 of this platform gives another digest than SHA-256')
  inUse = platform
}

/** SHA-256 over RFC 8785 canonical JSON: the same content gives the same digest on any machine. */
export function digestOf(content: unknown): string {
  return `sha256:${inUse(canonicalBytes(content))}`
}

export function digestOfText(text: string): string {
  return `sha256:${inUse(utf8ToBytes(text))}`
}
