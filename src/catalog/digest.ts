import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { canonicalText } from './canonical.ts'

/** SHA-256 over RFC 8785 canonical JSON: the same content gives the same digest on any machine. */
export function digestOf(content: unknown): string {
  return digestOfText(canonicalText(content))
}

export function digestOfText(text: string): string {
  return `sha256:${bytesToHex(sha256(utf8ToBytes(text)))}`
}
