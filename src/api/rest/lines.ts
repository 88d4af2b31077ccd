/** A line of a body, as text; or why it is none. Lines are counted from 1, blank ones too, which are then left out. */
export type Line = { readonly line: number } & ({ readonly text: string } | { readonly flaw: 'tooLarge' | 'malformed' })

/** Longer than any opening that is described; what is beyond is not held. */
export const longestLine = 262_144
const lineFeed = 10

/** The lines of a body as it comes in: those that are complete with each part of it, so that no more is held than a line and what came with it. */
export async function* linesOf(body: AsyncIterable<Buffer>): AsyncGenerator<readonly Line[]> {
  let begun: Buffer[] = []
  let line = 1
  for await (const chunk of body) {
    const complete: Line[] = []
    let from = 0
    for (let end = chunk.indexOf(lineFeed); end >= 0; end = chunk.indexOf(lineFeed, from)) {
      complete.push(...readLine([...begun, chunk.subarray(from, end)], line))
      begun = []
      from = end + 1
      line += 1
    }
    if (from < chunk.length) begun = held([...begun, chunk.subarray(from)])
    if (complete.length > 0) yield complete
  }
  const last = readLine(begun, line)
  if (last.length > 0) yield last
}

/** Of a line that is too long, just enough is held to know it. */
function held(parts: Buffer[]): Buffer[] {
  const size = sizeOf(parts)
  if (size <= longestLine) return size > 0 && parts.length > 64 ? [Buffer.concat(parts)] : parts
  return [Buffer.alloc(longestLine + 1, ' ')]
}

/** None of a line that is blank. */
function readLine(parts: readonly Buffer[], line: number): readonly Line[] {
  if (sizeOf(parts) > longestLine) return [{ line, flaw: 'tooLarge' }]
  try {
    const text = utf8.decode(parts.length === 1 ? parts[0] : Buffer.concat(parts)).trim()
    return text === '' ? [] : [{ line, text }]
  } catch {
    return [{ line, flaw: 'malformed' }]
  }
}

const utf8 = new TextDecoder('utf-8', { fatal: true })

function sizeOf(parts: readonly Buffer[]): number {
  return parts.reduce((size, part) => size + part.length, 0)
}
