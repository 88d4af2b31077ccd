import { createHash } from 'node:crypto'
import { useSha256 } from '../catalog/digest.ts'

/** Digests are taken with the hash that comes with the platform from here on. */
export function usePlatformSha256(): void {
  useSha256((bytes) => createHash('sha256').update(bytes).digest('hex'))
}
