import { describe, expect, test } from 'vitest'
import { sillDrop, sillRequiredDrop } from '../../src/quantities/sill-drop.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const inch_nm = 25_400_000
const limits = { 'sill.slope-brick': '15 deg' } // BIA Technical Notes 36, as printed in Masonry Magazine, February 1982

describe('fall of a sill', () => {
  test.each([
    // computed from tan 15° = 0.268
    { depth: '12 in', slope: '15 deg', inches: 3.215 },
    { depth: '3 5/8 in', slope: '15 deg', inches: 0.971 },
    { depth: '7 5/8 in', slope: '15 deg', inches: 2.043 },
    // a brick maker's guide equates 15° with 3/4 in; over a 3 5/8 in brick that is 11.7°
    { depth: '3 5/8 in', slope: '0.75:3.625', inches: 0.75 },
    // concrete and stone, 1/8 in per foot: the same note of 1982
    { depth: '12 in', slope: '1/8 in per ft', inches: 0.125 },
    { depth: '5 in', slope: '0 deg', inches: 0 },
    { depth: '5 in', slope: '-5 deg', inches: -0.437 },
  ])('$depth at $slope', ({ depth, slope, inches }) => {
    expect(valueOf(evaluate(sillDrop, { facts: { 'sill.depth': depth, 'sill.slope': slope } })) / inch_nm).toBeCloseTo(inches, 3)
  })

  test('100 mm at 45° falls 100 mm', () => {
    expect(valueOf(evaluate(sillDrop, { facts: { 'sill.depth': '100 mm', 'sill.slope': '45 deg' } }))).toBe(amount('100 mm'))
  })

  test('takes the least slope for a brick sill and says so', () => {
    const result = evaluate(sillDrop, { facts: { 'sill.kind': 'brickRowlock', 'sill.depth': '3 5/8 in' }, limits })
    expect(valueOf(result) / inch_nm).toBeCloseTo(0.971, 3)
    expect(result.assumptions).toEqual([expect.stringMatching(/least slope/)])
  })

  test.each(['stone', 'precastConcrete', undefined])('does not lend the slope of brick to a sill of kind %s', (kind) => {
    expect(evaluate(sillDrop, { facts: { 'sill.kind': kind, 'sill.depth': '5 in' }, limits })).toMatchObject({ status: 'notDetermined', missing: ['sill.slope'] })
  })
})

describe('least fall of a brick sill', () => {
  test('goes by the rule, whatever the slope is', () => {
    const result = evaluate(sillRequiredDrop, { facts: { 'sill.kind': 'brickHeader', 'sill.depth': '12 in', 'sill.slope': '7 deg' }, limits })
    expect(valueOf(result) / inch_nm).toBeCloseTo(3.215, 3)
    expect(result.steps).toEqual(['12 in × tan(15°) = 12 in × 0.268 = 3.215 in'])
  })

  test('is what a sill at just the least slope falls', () => {
    const facts = { 'sill.kind': 'brickHeader', 'sill.depth': '7 5/8 in', 'sill.slope': '15 deg' }
    expect(evaluate(sillRequiredDrop, { facts, limits }).value).toBe(evaluate(sillDrop, { facts, limits }).value)
  })

  test('does not apply to stone', () => {
    expect(evaluate(sillRequiredDrop, { facts: { 'sill.kind': 'stone', 'sill.depth': '5 in' }, limits }).status).toBe('notApplicable')
  })

  test('names the depth and the rule', () => {
    expect(evaluate(sillRequiredDrop, { facts: { 'sill.kind': 'brickRowlock' } }).missing).toEqual(['sill.depth', 'rule sill.slope-brick'])
  })
})
