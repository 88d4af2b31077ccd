import { plainBytes } from '../catalog/canonical.ts'

/** JSON as it goes out. As bytes, since to turn a long text with fractions and dashes into UTF-8 takes longer than to write it. */
export function jsonBytes(value: unknown): Buffer {
  const { buffer, byteOffset, byteLength } = plainBytes(value)
  return Buffer.from(buffer, byteOffset, byteLength)
}
