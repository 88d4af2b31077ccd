import type { Parameters } from './parameters.ts'

/** Documents that callers may name by their digest instead of sending them. */
export interface Documents {
  /** By "sha256:" and 64 lower-case hexadecimal digits over the text. */
  readonly byId: ReadonlyMap<string, string>
  /** Nothing else is answered. */
  readonly only: boolean
}

export const noDocuments: Documents = { byId: new Map(), only: false }

export type ChosenDocument = { readonly ok: true; readonly source: string } | { readonly ok: false; readonly message: string }

/** The document that a request means: the one it holds, or the one it names. */
export function documentFor({ query, documentId }: Parameters, { byId, only }: Documents): ChosenDocument {
  if (typeof documentId === 'string') {
    const source = byId.get(documentId)
    return source === undefined ? refused(`There is no document "${documentId}". A document is named by "sha256:" and the digest of its text, and has to be known to the service.`) : { ok: true, source }
  }
  if (typeof query !== 'string') return refused('"query" or "documentId" is missing.')
  if (only) return refused('Only documents that are known to the service are answered. Name one with "documentId".')
  return isJson(query) ? refused('"query" must be a GraphQL document.') : { ok: true, source: query }
}

/** A text that is JSON would be taken for a parsed document and fail in the middle. */
function isJson(query: string): boolean {
  return /^\s*(?:[\d"[-]|(?:true|false|null)\s*$|\{\s*["}])/.test(query)
}

function refused(message: string): ChosenDocument {
  return { ok: false, message }
}
