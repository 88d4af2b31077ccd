import canonicalize from 'canonicalize'
import { jsonWriter } from './json-bytes.ts'

export { lastingPart } from './json-bytes.ts'

/**
 * RFC 8785 canonical JSON of plain data, in UTF-8. It says what the library says – which is asked about anything out of the
 * ordinary – but writes the parts that answers share only once. It holds until the next is asked for.
 */
export const canonicalBytes = jsonWriter({ sorted: true, odd: canonicalize })

const asItStands = jsonWriter({ sorted: false, odd: JSON.stringify })

/** What JSON.stringify says, in UTF-8, with the parts that answers share written only once. */
export function plainBytes(value: unknown): Uint8Array {
  return asItStands(value).slice()
}
