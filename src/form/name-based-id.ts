import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, concatBytes, hexToBytes, utf8ToBytes } from '@noble/hashes/utils.js'

/** A UUID of version 8 made from a name within a namespace by SHA-256, as RFC 9562 shows in appendix B.2: the same name, the same id. */
export function nameBasedId(namespace: string, name: string): string {
  const hash = sha256(concatBytes(hexToBytes(namespace.replaceAll('-', '')), utf8ToBytes(name))).slice(0, 16)
  const marked = hash.map((byte, index) => (index === 6 ? (byte & 0x0f) | 0x80 : index === 8 ? (byte & 0x3f) | 0x80 : byte))
  return bytesToHex(marked).replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')
}
