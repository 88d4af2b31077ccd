import { sha1 } from '@noble/hashes/legacy.js'
import { bytesToHex, concatBytes, hexToBytes, utf8ToBytes } from '@noble/hashes/utils.js'

const urlNamespace = '6ba7b811-9dad-11d1-80b4-00c04fd430c8'

/** A UUID of version 5 (RFC 9562): the same name in the same namespace has the same id, everywhere. */
export function uuidOf(namespace: string, name: string): string {
  const digest = sha1(concatBytes(hexToBytes(namespace.replaceAll('-', '')), utf8ToBytes(name))).slice(0, 16)
  digest[6] = ((digest[6] ?? 0) & 0x0f) | 0x50
  digest[8] = ((digest[8] ?? 0) & 0x3f) | 0x80
  return bytesToHex(digest).replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-')
}

const own = uuidOf(urlNamespace, 'urn:wythe:exports')

/** The id of a thing that is told by what it is called, part by part. */
export function stableId(...parts: readonly string[]): string {
  return uuidOf(own, JSON.stringify(parts))
}
