import { IntakeFault, intakeLimits, tooDeep, tooManyMembers } from './limits.ts'

/** How many members the list and the object have that begin in one column. */
interface Block {
  items: number
  keys: number
}

const marks = new Set(',:[]{}')
const brackets = new Set('[]{}')

/**
 * Goes over a YAML text character by character and throws at the first line that goes beyond the bounds: too many lines or
 * marks of structure, a line too far indented, a list or an object with too many members. It may take a line of prose for a
 * member, but never lets one pass.
 */
export function scanLines(text: string): void {
  const blocks = new Map<number, Block>()
  let line = 0
  let found = 0
  for (let start = 0; start < text.length;) {
    line += 1
    if (line > intakeLimits.lines) throw tooMuch(`${intakeLimits.lines} lines`)
    const end = endOfLine(text, start)
    memberOf(text, start, end, blocks, line)
    found += marksIn(text, start, end)
    if (found > intakeLimits.marks) throw tooMuch(`${intakeLimits.marks} colons, commas and brackets`)
    start = end + 1
  }
}

function endOfLine(text: string, start: number): number {
  const end = text.indexOf('\n', start)
  return end === -1 ? text.length : end
}

function marksIn(text: string, start: number, end: number): number {
  let found = 0
  for (let at = start; at < end; at += 1) if (marks.has(text.charAt(at))) found += 1
  return found
}

/** The dashes that a line begins with, each a member of the list in its column, and what stands behind them, a key of the object in that column. */
function memberOf(text: string, start: number, end: number, blocks: Map<number, Block>, line: number): void {
  let at = skipSpace(text, start, end)
  while (at < end && text[at] === '-' && isSpace(text[at + 1])) {
    const block = blockAt(blocks, at - start, line)
    block.items += 1
    if (block.items > intakeLimits.members) throw tooManyMembers(line)
    at = skipSpace(text, at + 1, end)
  }
  const first = text.charAt(at)
  if (at >= end || first === '#') return
  const block = blockAt(blocks, at - start, line)
  block.items = 0
  if (brackets.has(first)) return
  block.keys += 1
  if (block.keys > intakeLimits.members) throw tooManyMembers(line)
}

/** What begins in a column; whatever began further right is over. */
function blockAt(blocks: Map<number, Block>, column: number, line: number): Block {
  if (column > intakeLimits.indent) throw tooDeep(line)
  for (const other of blocks.keys()) if (other > column) blocks.delete(other)
  const block = blocks.get(column) ?? { items: 0, keys: 0 }
  blocks.set(column, block)
  return block
}

function skipSpace(text: string, start: number, end: number): number {
  let at = start
  while (at < end && isSpace(text[at])) at += 1
  return at
}

function isSpace(char: string | undefined): boolean {
  return char === ' ' || char === '\t' || char === '\r' || char === '\n' || char === undefined
}

function tooMuch(bound: string): IntakeFault {
  return new IntakeFault('textTooLarge', `The text has more than ${bound}. Split it into several amendments.`)
}
