import { brokenLink, chainStart, type Entry } from '../../../src/store/journal.ts'
import type { Records } from '../../../src/store/records.ts'

export async function journalOf(records: Records): Promise<readonly Entry[]> {
  const all: Entry[] = []
  for (;;) {
    const some = await records.readEntries('p', null, all.at(-1)?.sequence ?? 0, 1_000)
    all.push(...some)
    if (some.length < 1_000) return all
  }
}

/**
 * What is wrong with a journal, given the lines that its recorders printed before they were killed. Each was in the middle of at
 * most one posting when it was killed: that one may be there as a whole although nobody was told.
 */
export function journalLosses(said: readonly string[], found: readonly Entry[], kills: number): readonly string[] {
  const told = new Set(said.filter((line) => line.startsWith('posted ')).flatMap((line) => line.split(' ').slice(2)))
  const there = new Map(found.map(({ id, sequence }) => [`${id}=${sequence}`, id]))
  const ids = found.map(({ id }) => id)
  const sizes = new Map<string, number>()
  for (const { posting } of found) sizes.set(posting, (sizes.get(posting) ?? 0) + 1)
  const toldIds = new Set([...told].map((one) => one.split('=')[0]))
  const untold = new Set(found.filter(({ id }) => !toldIds.has(id)).map(({ posting }) => posting)).size
  const broken = brokenLink(found, chainStart)
  return [
    ...[...told].filter((one) => !there.has(one)).map((one) => `lost: ${one}`),
    ...ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `twice: ${id}`),
    ...found.filter(({ sequence }, index) => sequence !== index + 1).map(({ id }) => `out of sequence: ${id}`),
    ...[...sizes].filter(([, size]) => size !== 3).map(([posting, size]) => `${size} of 3 entries: ${posting}`),
    ...(broken === undefined ? [] : [`the chain is broken at ${broken}`]),
    ...(untold > kills ? [`${untold} postings that nobody was told of, after ${kills} kills`] : []),
  ]
}
