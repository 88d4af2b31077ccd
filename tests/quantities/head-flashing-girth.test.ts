import { describe, expect, test } from 'vitest'
import { headFlashingGirth } from '../../src/quantities/head-flashing-girth.ts'
import { amount, evaluate } from './inputs.ts'

const limits = {
  'flashing.upstand': '8 in', // BIA Technical Notes 28B (2005)
  'air-space.recommended': '2 in', // BIA Technical Notes 28B (2005)
  'flashing.drip-projection': '1/4 in', // BIA Technical Notes 21B (2002)
} as const
const wall = { 'wall.airSpace': '1 in', 'wall.veneer.thickness': '3 5/8 in', 'wall.insulationThickness': '0 in' }

describe('girth of the head flashing', () => {
  test.each([
    // worked by hand: upstand + insulation + air space + brick + drip
    { name: 'one inch of air', facts: wall, girth: '12 7/8 in' },
    { name: 'two inches of air', facts: { ...wall, 'wall.airSpace': '2 in' }, girth: '13 7/8 in' },
    { name: 'outside insulation', facts: { ...wall, 'wall.insulationThickness': '1 1/2 in' }, girth: '14 3/8 in' },
    { name: 'a taller upstand and a longer drip, as drawn', facts: { ...wall, 'head.flashing.upstand': '10 in', 'head.flashing.projection': '3/8 in' }, girth: '15 in' },
    { name: 'drawn lower and short of the face: made as asked', facts: { ...wall, 'head.flashing.upstand': '6 in', 'head.flashing.projection': '-1/2 in' }, girth: '12 7/8 in' },
    { name: 'in millimeters', facts: { 'wall.airSpace': '50 mm', 'wall.veneer.thickness': '90 mm', 'wall.insulationThickness': '0 mm', 'head.flashing.upstand': '210 mm', 'head.flashing.projection': '10 mm' }, girth: '360 mm' },
  ])('$name', ({ facts, girth }) => {
    expect(evaluate(headFlashingGirth, { facts, limits })).toMatchObject({ status: 'computed', value: amount(girth), assumptions: [] })
  })

  test('shows the parts from the top edge to the drip', () => {
    expect(evaluate(headFlashingGirth, { facts: wall, limits }).steps).toEqual(['8 in + 1 in + 3 5/8 in + 1/4 in = 12 7/8 in'])
  })

  test('takes the recommended air space and no insulation where they are not told, and says so', () => {
    const result = evaluate(headFlashingGirth, { facts: { 'wall.veneer.thickness': '3 5/8 in' }, limits })
    expect(result).toMatchObject({ text: '13 7/8 in', assumptions: [expect.stringMatching(/insulation/i), expect.stringMatching(/air space/)] })
  })

  test('warns of insulation only where there is some', () => {
    const warned = (thickness: string) => evaluate(headFlashingGirth, { facts: { ...wall, 'wall.insulationThickness': thickness }, limits }).notes.some((note) => note.includes('insulation'))
    expect([warned('0 in'), warned('1 in')]).toEqual([false, true])
  })

  test('names the brick where its thickness is not known', () => {
    expect(evaluate(headFlashingGirth, { facts: { 'wall.airSpace': '1 in' }, limits })).toMatchObject({ status: 'notDetermined', missing: ['wall.veneer.thickness'] })
  })
})
