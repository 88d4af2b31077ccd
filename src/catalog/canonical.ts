import canonicalize from 'canonicalize'
import { onceFor } from '../opening/once-for.ts'

/**
 * RFC 8785 canonical JSON of plain data. It says what the library says – which is asked about anything out of the ordinary –
 * but writes the parts that answers share only once.
 */
export function canonicalText(value: unknown): string {
  if (typeof value === 'string') return stringText(value)
  if (value === null || typeof value === 'boolean' || Number.isFinite(value)) return value === 0 ? '0' : String(value)
  if (typeof value !== 'object' || 'toJSON' in value) return canonicalize(value) ?? ''
  return lasting.has(value) ? textOfLasting(value) : textOf(value)
}

/** The same text in pieces, one for each part of a document, for whoever can take them one by one: to lay a long text out in one stretch takes longer than to write it. */
export function canonicalPieces(value: unknown, deep = 2): readonly string[] {
  if (deep === 0 || typeof value !== 'object' || value === null || 'toJSON' in value || lasting.has(value)) return [canonicalText(value)]
  if (Array.isArray(value)) return ['[', ...value.flatMap((member, index) => [...(index === 0 ? [] : [',']), ...canonicalPieces(inList(member), deep - 1)]), ']']
  const { sorted, heads } = layoutOf(value)
  const members = sorted.flatMap((key, index) => {
    const member = (value as Readonly<Record<string, unknown>>)[key]
    return member === undefined || typeof member === 'symbol' ? [] : [[heads[index] ?? '', ...canonicalPieces(member, deep - 1)]]
  })
  return ['{', ...members.flatMap((pieces, index) => (index === 0 ? pieces : [',', ...pieces])), '}']
}

const lasting = new WeakSet<object>()
const textOfLasting = onceFor(textOf)

/** Freezes a part that many answers share, whose text is then worth keeping. */
export function lastingPart<T extends object>(part: T): T {
  freeze(part)
  lasting.add(part)
  return part
}

function freeze(part: object): void {
  Object.freeze(part)
  for (const inner of Object.values(part) as unknown[]) if (typeof inner === 'object' && inner !== null && !Object.isFrozen(inner)) freeze(inner)
}

function textOf(value: object): string {
  if (Array.isArray(value)) return listText(value)
  let text = ''
  const { sorted, heads } = layoutOf(value)
  for (let index = 0; index < sorted.length; index += 1) {
    const member = (value as Readonly<Record<string, unknown>>)[sorted[index] ?? '']
    if (member === undefined || typeof member === 'symbol') continue
    text += (text === '' ? '' : ',') + (heads[index] ?? '') + canonicalText(member)
  }
  return `{${text}}`
}

function listText(list: readonly unknown[]): string {
  let text = ''
  for (let index = 0; index < list.length; index += 1) {
    const member = list[index]
    text += (index === 0 ? '' : ',') + canonicalText(inList(member))
  }
  return `[${text}]`
}

/** What stands in a list for nothing, as JSON has it. */
function inList(member: unknown): unknown {
  return member === undefined || typeof member === 'symbol' ? null : member
}

/** A quote, a backslash, a control character or half of a pair: what JSON writes otherwise, or RFC 8785 refuses. */
const special = /["\\\u0000-\u001f\ud800-\udfff]/

function stringText(text: string): string {
  return special.test(text) ? (canonicalize(text) ?? '') : `"${text}"`
}

/** The members of an object in the order of RFC 8785, each with what stands before its value. */
interface Layout {
  readonly keys: readonly string[]
  readonly sorted: readonly string[]
  readonly heads: readonly string[]
}

/** Documents have a few dozen kinds of objects. Of those with equally many members the last few are remembered, which bounds it. */
const layouts: Layout[][] = []
const mostMembers = 64
const mostLayouts = 8

function layoutOf(value: object): Layout {
  const keys = Object.keys(value)
  if (keys.length > mostMembers) return newLayout(keys)
  const known = (layouts[keys.length] ??= [])
  const ready = known.find((layout) => sameKeys(layout.keys, keys))
  if (ready) return ready
  const fresh = newLayout(keys)
  known.unshift(fresh)
  known.length = Math.min(known.length, mostLayouts)
  return fresh
}

function newLayout(keys: readonly string[]): Layout {
  const sorted = keys.toSorted()
  return { keys, sorted, heads: sorted.map((key) => `${stringText(key)}:`) }
}

function sameKeys(keys: readonly string[], others: readonly string[]): boolean {
  for (let index = 0; index < keys.length; index += 1) if (keys[index] !== others[index]) return false
  return true
}
