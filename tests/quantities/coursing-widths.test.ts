import { describe, expect, test } from 'vitest'
import { widthNearest } from '../../src/quantities/coursing-widths.ts'
import { amount, evaluate } from './inputs.ts'

const opening = (unit: string, width: string, more = {}) => ({ facts: { 'wall.veneer.unit': unit, 'wall.veneer.bond': 'running', 'opening.width': width, ...more } })

describe('opening widths that need no cut brick', () => {
  test.each([
    // "Brickwork dimensions", Technical Information Sheet 9, coordinating size plus joint: 4, 4 1/2 and 5 bricks
    { unit: 'britishStandard', width: '910 mm', nearest: ['910 mm'] },
    { unit: 'britishStandard', width: '1000 mm', nearest: ['910 mm', '1022.5 mm'] },
    { unit: 'britishStandard', width: '1100 mm', nearest: ['1022.5 mm', '1135 mm'] },
    // DIN 4172, openings n x 125 + 10 mm, as in the preferred door openings of DIN 18100
    { unit: 'germanNormal', width: '885 mm', nearest: ['885 mm'] },
    { unit: 'germanThin', width: '900 mm', nearest: ['885 mm', '1010 mm'] },
    // Worked by hand: modular brick every 4 in, and one joint more
    { unit: 'modular', width: '48 in', nearest: ['44 3/8 in', '48 3/8 in'] },
    { unit: 'modular', width: '48 3/8 in', nearest: ['48 3/8 in'] },
  ])('$unit, $width', ({ unit, width, nearest }) => {
    expect(evaluate(widthNearest, opening(unit, width))).toMatchObject({ value: nearest.map(amount), assumptions: [] })
  })

  // Worked by hand: 12 in from joint to joint; a third is 4 in, a half 6 in, a whole one 12 in
  test.each([
    { bond: 'thirdRunning', nearest: ['44 3/8 in', '48 3/8 in'] },
    { bond: 'flemish', nearest: ['42 3/8 in', '48 3/8 in'] },
    { bond: 'stack', nearest: ['36 3/8 in', '48 3/8 in'] },
  ])('utility brick in $bond bond', ({ bond, nearest }) => {
    expect(evaluate(widthNearest, opening('utility', '46 in', { 'wall.veneer.bond': bond })).value).toEqual(nearest.map(amount))
  })

  test('shows the change, and says what is off', () => {
    const result = evaluate(widthNearest, opening('modular', '48 in'))
    expect(result.tables[0]?.rows).toEqual([[11, amount('44 3/8 in'), amount('-3 5/8 in')], [12, amount('48 3/8 in'), amount('3/8 in')]])
    expect(result.notes[0]).toMatch(/off the module/)
    expect(evaluate(widthNearest, opening('modular', '48 3/8 in')).notes[0]).toBe('The opening is on the module.')
  })

  test('takes half bond where none is described, and says so', () => {
    expect(evaluate(widthNearest, opening('modular', '48 in', { 'wall.veneer.bond': null })).assumptions).toEqual([expect.stringMatching(/bond is not known/)])
  })

  test('does not hold at a corner without a jamb', () => {
    expect(evaluate(widthNearest, opening('modular', '48 in', { 'opening.atCorner': true })).reason).toBe('methodDoesNotHold')
  })
})
