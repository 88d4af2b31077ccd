import { describe, expect, test } from 'vitest'
import { movementCornerDistance, movementJointSpacingAllowed, movementJointWidthNeeded } from '../../src/quantities/movement-joints.ts'
import type { QuantityResult } from '../../src/quantities/result.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const inch_nm = 25_400_000
const quantities = { 'movement.strain': '0.0009' }

const spacing = (width: string) => evaluate(movementJointSpacingAllowed, { facts: { 'wall.movementJointWidth': width }, quantities })

/** The amount in a row of the table that compares. */
function compared({ tables }: QuantityResult, by: RegExp): number {
  return Number(tables[0]?.rows.find(([name]) => by.test(String(name)))?.[1])
}

describe('spacing of vertical movement joints', () => {
  test.each([
    // BIA Technical Notes 18A, 2006: 23 ft 2 in (7.06 m), for a joint of 1/2 in that closes by half; inputs from memory
    { width: '1/2 in', inches: 277.8 },
    // Conspectus, 2011: 3/8 in at 50 percent, 208 in (17 ft 4 in)
    { width: '3/8 in', inches: 208.3 },
  ])('of $width: $inches in by the width', ({ width, inches }) => {
    expect(compared(spacing(width), /width of the joint/) / inch_nm).toBeCloseTo(inches, 1)
  })

  test('in SI: 12.7 mm × 0.5 / 0.0009 is 7.06 m', () => {
    expect(compared(spacing('12.7 mm'), /width of the joint/) / 1e9).toBeCloseTo(7.06, 2)
  })

  test('is never more than the 20 ft advised for brick with openings', () => {
    expect(spacing('1/2 in').value).toBe(amount('20 ft'))
    expect(valueOf(spacing('3/8 in')) / inch_nm).toBeCloseTo(208.3, 1)
  })

  test('shows the advice that it is held against', () => {
    // Technical Notes 18A: 25 ft without openings; Eden District Council, after BRE Digest 164: 12 m
    expect(compared(spacing('1/2 in'), /without openings/)).toBe(amount('25 ft'))
    expect(compared(spacing('1/2 in'), /British/)).toBe(amount('12 m'))
  })

  test('there is none for a joint without width', () => expect(spacing('0 in').reason).toBe('methodDoesNotHold'))

  test('names the width where it is missing', () => {
    expect(evaluate(movementJointSpacingAllowed, { quantities }).missing).toEqual(['wall.movementJointWidth'])
  })
})

describe('width of a vertical movement joint', () => {
  const width = (facts: Record<string, unknown>) => evaluate(movementJointWidthNeeded, { facts, quantities })

  test.each([
    // the two examples above, the other way round
    { spacing: '277.8 in', inches: 0.5 },
    { spacing: '208.3 in', inches: 0.375 },
  ])('at $spacing: $inches in', ({ spacing, inches }) => {
    expect(valueOf(width({ 'wall.movementJointSpacing': spacing })) / inch_nm).toBeCloseTo(inches, 3)
  })

  test('stands beside the British advice: about 16 mm at 12 m', () => {
    // Eden District Council, building control guidance note on movement joints
    const result = width({ 'wall.movementJointSpacing': '12 m' })
    expect(compared(result, /British/) / 1e6).toBeCloseTo(15.6, 6)
    // worked by hand: 12 m × 0.0009 / 0.5
    expect(result.value).toBe(amount('21.6 mm'))
  })

  test('says when the joint of the wall is narrower', () => {
    expect(width({ 'wall.movementJointSpacing': '24 ft', 'wall.movementJointWidth': '3/8 in' }).notes).toContain('The joint of 3/8 in is narrower.')
    expect(width({ 'wall.movementJointSpacing': '15 ft', 'wall.movementJointWidth': '3/8 in' }).notes).toHaveLength(1)
  })

  test('names the spacing where it is missing', () => expect(width({}).missing).toEqual(['wall.movementJointSpacing']))
})

describe('movement joints from a corner', () => {
  const corner = (spacing: string) => evaluate(movementCornerDistance, { quantities: { 'movement.joint-spacing-allowed': spacing } }).value

  test.each([
    // BIA Technical Notes 18A, 2006: within about 10 ft of a corner, the two together no more than the spacing: 10 + 15 = 25
    { spacing: '25 ft', near: '10 ft', other: '15 ft' },
    { spacing: '20 ft', near: '10 ft', other: '10 ft' },
    // worked by hand
    { spacing: '6 m', near: '3000 mm', other: '3000 mm' },
    { spacing: '12 ft', near: '6 ft', other: '6 ft' },
  ])('$spacing apart: $near and $other', ({ spacing, near, other }) => expect(corner(spacing)).toEqual([amount(near), amount(other)]))

  test('is not known where the spacing is not', () => {
    const result = evaluate(movementCornerDistance, { quantities }, [movementJointSpacingAllowed])
    expect(result).toMatchObject({ status: 'notDetermined', missing: ['wall.movementJointWidth'] })
  })
})
