import type { Problem } from './problem.ts'

/** Deeper than anything that is asked for. */
const mostNested = 64

/** Half of a surrogate pair: with this flag whole pairs are one character, and only halves are left to match. */
const halfPair = /\p{Surrogate}/u

interface Place {
  readonly value: object
  readonly pointer: string
  readonly depth: number
}

/** Where a document holds what no text is made of, or is nested without an end. Such a document has no canonical form and no digest. */
export function malformedPlaces(document: unknown): readonly Problem[] {
  const problems: Problem[] = []
  const left: Place[] = []
  const look = (value: unknown, pointer: string, depth: number): void => {
    if (typeof value === 'string' && halfPair.test(value)) problems.push(half(pointer))
    if (typeof value === 'object' && value !== null) left.push({ value, pointer, depth })
  }
  look(document, '', 1)
  for (let place = left.pop(); place; place = left.pop()) {
    if (place.depth > mostNested) return [{ code: 'tooDeep', pointer: place.pointer, detail: `is nested more than ${mostNested} deep.` }]
    for (const [key, member] of Object.entries(place.value)) {
      const pointer = `${place.pointer}/${escaped(key)}`
      if (halfPair.test(key)) problems.push(half(pointer))
      look(member, pointer, place.depth + 1)
    }
  }
  return problems.toSorted((a, b) => (a.pointer < b.pointer ? -1 : 1))
}

function half(pointer: string): Problem {
  return { code: 'notText', pointer, detail: 'holds half of a surrogate pair, like "\\ud800" without the other half, which is no character. Leave it out, or send the whole pair.' }
}

/** As RFC 6901 asks, and fit to be shown: what is no character is replaced. */
function escaped(key: string): string {
  return key.replaceAll('~', '~0').replaceAll('/', '~1').replace(/\p{Surrogate}/gu, '\ufffd')
}
