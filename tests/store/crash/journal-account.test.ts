import { describe, expect, test } from 'vitest'
import { chainStart, linkOf, type Entry } from '../../../src/store/journal.ts'
import { entry } from '../samples.ts'
import { journalLosses } from './journal-account.ts'

/** A journal of whole postings, each of three entries. */
function journal(...postings: readonly string[]): readonly Entry[] {
  let chain = chainStart
  return postings.flatMap((posting) => ['a', 'b', 'c'].map((part) => ({ posting, fresh: entry(`${posting}-${part}`) }))).map(({ posting, fresh }, index) => {
    chain = linkOf(chain, fresh)
    return { ...fresh, project: 'p', sequence: index + 1, chain, receivedAt: '', receivedBy: '', posting }
  })
}

const whole = journal('x-1', 'x-2')
const said = ['open', 'posted x-1 x-1-a=1 x-1-b=2 x-1-c=3', 'posted x-2 x-2-a=4 x-2-b=5 x-2-c=6']

describe('the account of a journal after a crash', () => {
  test('is clear when all is there, and when it was sent again', () => {
    expect(journalLosses(said, whole, 0)).toEqual([])
    expect(journalLosses([...said, 'posted x-2 x-2-a=4 x-2-b=5 x-2-c=6'], whole, 0)).toEqual([])
  })

  test('allows one untold posting for each kill', () => {
    expect(journalLosses(said.slice(0, 2), whole, 1)).toEqual([])
    expect(journalLosses(said.slice(0, 2), whole, 0)).toEqual(['1 postings that nobody was told of, after 0 kills'])
  })

  test.each<[string, readonly Entry[], string]>([
    ['a lost posting', journal('x-1'), 'lost: x-2-b=5'],
    ['a posting in another place', journal('x-2', 'x-1'), 'lost: x-1-a=1'],
    ['an entry that is there twice', [...whole, ...whole.slice(-1)], 'twice: x-2-c'],
    ['a gap', whole.filter(({ sequence }) => sequence !== 2), 'out of sequence: x-1-c'],
    ['half a posting', whole.slice(0, 5), '2 of 3 entries: x-2'],
    ['a broken chain', whole.map((one) => (one.sequence === 4 ? { ...one, body: 'altered' } : one)), 'the chain is broken at 4'],
  ])('finds %s', (_, found, wrong) => expect(journalLosses(said, found, 9)).toContain(wrong))
})
