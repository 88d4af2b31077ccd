import { describe, expect, test } from 'vitest'
import type { Table } from '../../src/catalog/reference.ts'
import { lintelLoad } from '../../src/quantities/lintel-load.ts'
import { anglesOf, findAngle, sizesOf } from '../../src/quantities/lintel-section.ts'
import { amount, evaluate, inputsOf } from './inputs.ts'
import { arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

const sections = (): Table => {
  const given = inputsOf({}).table('steel.angle-sections')
  if (!given) throw new Error('the catalog lacks the table of sections')
  return given.table
}

describe('angles of the table', () => {
  // AISC shapes database, versions 15.0 and 16.0
  test.each([
    { section: 'L3x3x1/4', inertia: '1.23 [in_i]4', modulus: '0.569 [in_i]3' },
    { section: 'L4x3x1/4', inertia: '2.75 [in_i]4', modulus: '0.988 [in_i]3' },
    { section: 'L5x3-1/2x5/16', inertia: '6.58 [in_i]4', modulus: '1.92 [in_i]3' },
    { section: 'L6x3-1/2x5/16', inertia: '10.9 [in_i]4', modulus: '2.72 [in_i]3' },
    { section: 'L6x4x3/8', inertia: '13.4 [in_i]4', modulus: '3.30 [in_i]3' },
  ])('$section has the published stiffness and strength', ({ section, inertia, modulus }) => {
    const angle = findAngle(sections(), section)
    expectNear(angle?.momentOfInertia ?? NaN, inertia, 1e-9)
    expectNear(angle?.sectionModulus ?? NaN, modulus, 1e-9)
  })

  test('a pair has twice the stiffness, strength and mass, on the same leg', () => {
    const one = findAngle(sections(), 'L6x3-1/2x5/16')
    const pair = findAngle(sections(), '2L6x3-1/2x5/16')
    expect(pair).toMatchObject({ section: '2L6x3-1/2x5/16', horizontalLeg: one?.horizontalLeg, thickness: one?.thickness })
    for (const property of ['momentOfInertia', 'sectionModulus', 'mass'] as const) expect(pair?.[property]).toBe(2 * (one?.[property] ?? NaN))
  })

  test('come lightest first, each with a standing leg no shorter than the flat one', () => {
    const angles = anglesOf(sections())
    expect(angles.map(({ mass }) => mass)).toEqual(angles.map(({ mass }) => mass).sort((a, b) => a - b))
    expect(angles.filter(({ verticalLeg, horizontalLeg }) => verticalLeg < horizontalLeg)).toEqual([])
  })

  test('a cell that is not an amount is a fault of the catalog', () => {
    const broken = { ...sections(), rows: sections().rows.map((row) => ({ ...row, sectionModulus: 'much' })) }
    expect(() => anglesOf(broken)).toThrow('sectionModulus "much" is not an amount')
  })

  test('are found by their size in millimeters too', () => {
    expect(findAngle(sections(), 'L127x89x7.9')).toBe(findAngle(sections(), 'L5x3-1/2x5/16'))
    expect(findAngle(sections(), '2L152x89x7.9')?.mass).toBe(findAngle(sections(), '2L6x3-1/2x5/16')?.mass)
  })

  test('one that is not listed is not found', () => {
    expect(findAngle(sections(), 'L9x4x1/2')).toBeUndefined()
  })
})

describe('the angle over the opening', () => {
  test('gives no strength with the long leg lying flat', () => {
    const flat = evaluate(lintelLoad, arched72With({ 'head.support.section': 'L4x3x1/4', 'head.support.longLeg': 'horizontal' }), lintelQuantities)
    expect(flat).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
  })

  test('does not care which leg is long where they are equal', () => {
    expect(evaluate(lintelLoad, arched72With({ 'head.support.longLeg': 'horizontal' }), lintelQuantities).status).toBe('computed')
  })

  test('is missing while nobody said which', () => {
    expect(evaluate(lintelLoad, arched72With({ 'head.support.section': null }), lintelQuantities).missing).toEqual(['head.support.section'])
  })
})

describe('sizes in a spelling', () => {
  test.each([
    ['L5x3-1/2x5/16', '5 in', '3 1/2 in', '5/16 in'],
    ['2L6x3-1/2x5/16', '6 in', '3 1/2 in', '5/16 in'],
    ['L127x89x7.9', '127 mm', '89 mm', '7.9 mm'],
    ['L12x4x1', '12 in', '4 in', '1 in'],
  ])('%s', (section, verticalLeg, horizontalLeg, thickness) => {
    expect(sizesOf(section)).toEqual({ verticalLeg: amount(verticalLeg), horizontalLeg: amount(horizontalLeg), thickness: amount(thickness) })
  })

  test.each(['W8x10', 'L5x3', 'angle', ''])('%s is none', (section) => {
    expect(sizesOf(section)).toBeUndefined()
  })
})
