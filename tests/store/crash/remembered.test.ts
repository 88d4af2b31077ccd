import { describe, expect, test } from 'vitest'
import { losses, type Remembered } from './remembered.ts'

const said = ['open', 'draft a-1-stays', 'draft a-1-goes', 'evaluation a-1', 'adoption 1 us-xa/a-1', 'draft a-2-stays']
const whole: Remembered = { drafts: ['a-1-stays', 'a-2-stays'], evaluations: ['a-1'], adoptions: ['1 us-xa/a-1'] }

describe('the account after a crash', () => {
  test('is clear when all is there', () => expect(losses(said, whole, 0)).toEqual([]))

  test('allows one untold record for each kill', () => {
    const more = { ...whole, drafts: [...whole.drafts, 'a-2-goes'] }
    expect(losses(said, more, 1)).toEqual([])
    expect(losses(said, more, 0)).toEqual(['1 records that nobody was told of, after 0 kills'])
  })

  test.each<[string, Partial<Remembered>, string]>([
    ['a lost draft', { drafts: ['a-1-stays'] }, 'lost: draft a-2-stays'],
    ['a lost evaluation', { evaluations: [] }, 'lost: evaluation a-1'],
    ['a lost adoption', { adoptions: [] }, 'lost: adoption 1 us-xa/a-1'],
    ['an evaluation kept twice', { evaluations: ['a-1', 'a-1'] }, 'twice: evaluation a-1'],
    ['an amendment adopted twice', { adoptions: ['1 us-xa/a-1', '2 us-xa/a-1'] }, 'adopted twice: a-1'],
    ['half an adoption', { drafts: [...whole.drafts, 'a-1-goes'] }, 'adopted and still a draft: a-1-goes'],
    ['a gap', { adoptions: ['2 us-xa/a-1'] }, 'out of sequence: adoption 2 us-xa/a-1'],
  ])('finds %s', (_, change, wrong) => expect(losses(said, { ...whole, ...change }, 1)).toContain(wrong))
})
