import type { Scope } from '../store/records.ts'

const prefix = 'wythe:'

/** A scope as a word of an access token: "wythe:evaluate", "wythe:record", "wythe:record:<project>", "wythe:amend:<jurisdiction>", "wythe:administer". */
export function wordOf(kind: Scope['kind'], object?: string): string {
  return object === undefined ? `${prefix}${kind}` : `${prefix}${kind}:${object}`
}

/** The scopes in a list of words. A word that is not exactly one of ours grants nothing. */
export function scopesIn(words: string): readonly Scope[] {
  return words.split(' ').flatMap((word) => (word.startsWith(prefix) ? scopeOf(word.slice(prefix.length)) : []))
}

function scopeOf(word: string): readonly Scope[] {
  if (word === 'evaluate' || word === 'record' || word === 'administer') return [{ kind: word }]
  const [, kind, object] = /^(record|amend):([A-Za-z0-9][A-Za-z0-9-]{0,99})$/.exec(word) ?? []
  if (object === undefined) return []
  return [kind === 'amend' ? { kind: 'amend', jurisdiction: object } : { kind: 'record', project: object }]
}
