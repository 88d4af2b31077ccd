import { Utf8 } from './utf8.ts'

/** How data becomes JSON. */
export interface Manner {
  /** Members in the order of RFC 8785, or as they stand. */
  readonly sorted: boolean
  /** What is written for anything out of the ordinary: a text with control characters, no number, what tells its own JSON. */
  readonly odd: (value: unknown) => string | undefined
}

/** Of each part that lasts, what was written for it in each manner. */
const lasting = new WeakMap<object, Map<Manner, Uint8Array>>()

/** Freezes a part that many answers share, whose text is then kept once it was written. */
export function lastingPart<T extends object>(part: T): T {
  freeze(part)
  if (!lasting.has(part)) lasting.set(part, new Map())
  return part
}

function freeze(part: object): void {
  Object.freeze(part)
  for (const inner of Object.values(part) as unknown[]) if (typeof inner === 'object' && inner !== null && !Object.isFrozen(inner)) freeze(inner)
}

/** Writes plain data as JSON in UTF-8. What it answers holds until it is asked again. */
export type JsonWriter = (value: unknown) => Uint8Array

const [comma, openBracket, closeBracket, openBrace, closeBrace] = [44, 91, 93, 123, 125]

export function jsonWriter(manner: Manner): JsonWriter {
  const { sorted, odd } = manner
  const layoutOf = layouts(sorted, (key) => odd(key) ?? '')
  const text = new Utf8()

  const putValue = (value: unknown): void => {
    if (typeof value === 'string') {
      if (!text.putQuoted(value)) text.putText(odd(value) ?? '')
    } else if (value === null || typeof value === 'boolean' || Number.isFinite(value)) text.putAscii(value === 0 ? '0' : String(value))
    else if (typeof value !== 'object' || 'toJSON' in value) text.putText(odd(value) ?? '')
    else putPart(value)
  }

  const putPart = (part: object): void => {
    const kept = lasting.get(part)
    const ready = kept?.get(manner)
    if (ready) {
      text.put(ready)
      return
    }
    const begin = text.length
    if (Array.isArray(part)) putList(part)
    else putMembers(part as Readonly<Record<string, unknown>>)
    kept?.set(manner, text.since(begin).slice())
  }

  const putMembers = (value: Readonly<Record<string, unknown>>): void => {
    text.putMark(openBrace)
    const { names, heads } = layoutOf(value)
    let isFirst = true
    for (let index = 0; index < names.length; index += 1) {
      const member = value[names[index] ?? '']
      const head = heads[index]
      if (isNothing(member) || !head) continue
      if (!isFirst) text.putMark(comma)
      isFirst = false
      text.put(head)
      putValue(member)
    }
    text.putMark(closeBrace)
  }

  const putList = (list: readonly unknown[]): void => {
    text.putMark(openBracket)
    for (let index = 0; index < list.length; index += 1) {
      if (index > 0) text.putMark(comma)
      const member = list[index]
      putValue(isNothing(member) ? null : member)
    }
    text.putMark(closeBracket)
  }

  return (value) => {
    text.clear()
    putValue(value)
    return text.since(0)
  }
}

/** What JSON has no word for: left out of an object, null in a list. */
function isNothing(member: unknown): boolean {
  return member === undefined || typeof member === 'symbol' || typeof member === 'function'
}

/** The members of an object in the order in which they are written, each with what stands before its value. */
interface Layout {
  readonly keys: readonly string[]
  readonly names: readonly string[]
  readonly heads: readonly Uint8Array[]
}

/** Documents have a few dozen kinds of objects. Of those with equally many members the last few are remembered, which bounds it. */
const mostMembers = 64
const mostLayouts = 8

function layouts(sorted: boolean, nameOf: (key: string) => string): (value: object) => Layout {
  const known: Layout[][] = []
  const encoder = new TextEncoder()
  const newLayout = (keys: readonly string[]): Layout => {
    const names = sorted ? keys.toSorted() : keys
    return { keys, names, heads: names.map((name) => encoder.encode(`${nameOf(name)}:`)) }
  }
  return (value) => {
    const keys = Object.keys(value)
    if (keys.length > mostMembers) return newLayout(keys)
    const alike = (known[keys.length] ??= [])
    const ready = alike.find((layout) => sameKeys(layout.keys, keys))
    if (ready) return ready
    const fresh = newLayout(keys)
    alike.unshift(fresh)
    alike.length = Math.min(alike.length, mostLayouts)
    return fresh
  }
}

function sameKeys(keys: readonly string[], others: readonly string[]): boolean {
  for (let index = 0; index < keys.length; index += 1) if (keys[index] !== others[index]) return false
  return true
}
