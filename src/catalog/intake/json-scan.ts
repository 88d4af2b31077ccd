import { barredKey, duplicateKey, intakeLimits, isBarredKey, tooDeep, tooManyMembers } from './limits.ts'

interface Level {
  /** The keys of an object so far; undefined in a list. */
  readonly keys: Set<string> | undefined
  members: number
}

/**
 * Goes over a JSON text once, without building anything, and throws at the first thing that is not taken in. What is not JSON
 * at all is left to the parser to tell.
 */
export function scanJson(text: string): void {
  const levels: Level[] = []
  let line = 1
  for (let at = 0; at < text.length; at += 1) {
    const char = text[at]
    if (char === '\n') line += 1
    else if (char === '{' || char === '[') open(levels, char, line)
    else if (char === '}' || char === ']') levels.pop()
    else if (char === ',') count(levels.at(-1), line)
    else if (char === '"') {
      const end = endOfString(text, at)
      if (isKey(text, end)) noteKey(levels.at(-1), text.slice(at, end + 1), line)
      at = end
    }
  }
}

function open(levels: Level[], bracket: string, line: number): void {
  if (levels.length >= intakeLimits.depth) throw tooDeep(line)
  levels.push({ keys: bracket === '{' ? new Set() : undefined, members: 0 })
}

function count(level: Level | undefined, line: number): void {
  if (!level) return
  level.members += 1
  if (level.members >= intakeLimits.members) throw tooManyMembers(line)
}

function noteKey(level: Level | undefined, quoted: string, line: number): void {
  const key = unquoted(quoted)
  if (isBarredKey(key)) throw barredKey(key, line)
  if (level?.keys?.has(key)) throw duplicateKey(key, line)
  level?.keys?.add(key)
}

/** The quote that ends the string, or the end of the text. */
function endOfString(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at += 1) {
    const char = text[at]
    if (char === '\\') at += 1
    else if (char === '"') return at
  }
  return text.length
}

function isKey(text: string, end: number): boolean {
  let at = end + 1
  while (text[at] === ' ' || text[at] === '\t' || text[at] === '\n' || text[at] === '\r') at += 1
  return text[at] === ':'
}

function unquoted(quoted: string): string {
  if (!quoted.includes('\\')) return quoted.slice(1, -1)
  try {
    return JSON.parse(quoted) as string
  } catch {
    return quoted
  }
}
