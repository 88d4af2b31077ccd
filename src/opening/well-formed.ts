import type { Problem } from './problem.ts'

/** Deeper than anything that is asked for. */
const mostNested = 64

/** Half of a surrogate pair: with this flag whole pairs are one character, and only halves are left to match. */
const halfPair = /\p{Surrogate}/u

/** A part of a document, and the way to it, which is put into words only where there is something to tell. */
interface Place {
  readonly value: object
  readonly key: string
  readonly within: Place | undefined
  readonly depth: number
}

/** Where a document holds what no text is made of, or is nested without an end. Such a document has no canonical form and no digest. */
export function malformedPlaces(document: unknown): readonly Problem[] {
  const problems: Problem[] = []
  const left: Place[] = []
  const look = (value: unknown, key: string, within: Place | undefined): void => {
    if (typeof value === 'string' && halfPair.test(value)) problems.push(half(pointerTo(key, within)))
    if (typeof value === 'object' && value !== null) left.push({ value, key, within, depth: (within?.depth ?? 0) + 1 })
  }
  look(document, '', undefined)
  for (let place = left.pop(); place; place = left.pop()) {
    if (place.depth > mostNested) return [{ code: 'tooDeep', pointer: pointerTo(place.key, place.within), detail: `is nested more than ${mostNested} deep.` }]
    for (const [key, member] of Object.entries(place.value)) {
      if (halfPair.test(key)) problems.push(half(pointerTo(key, place)))
      look(member, key, place)
    }
  }
  return problems.toSorted((a, b) => (a.pointer < b.pointer ? -1 : 1))
}

function pointerTo(key: string, within: Place | undefined): string {
  return within ? `${pointerTo(within.key, within.within)}/${escaped(key)}` : ''
}

function half(pointer: string): Problem {
  return { code: 'notText', pointer, detail: 'holds half of a surrogate pair, like "\\ud800" without the other half, which is no character. Leave it out, or send the whole pair.' }
}

/** As RFC 6901 asks, and fit to be shown: what is no character is replaced. */
function escaped(key: string): string {
  return key.replaceAll('~', '~0').replaceAll('/', '~1').replace(/\p{Surrogate}/gu, '\ufffd')
}
