import { describe, expect, test } from 'vitest'
import { cellText, type Table } from '../../src/catalog/reference.ts'
import { lintelLoad } from '../../src/quantities/lintel-load.ts'
import { slendernessOf } from '../../src/quantities/angle-by-size.ts'
import { sizesOf, type Angle } from '../../src/quantities/angle-sizes.ts'
import { angleOverOpening, anglesOf, findAngle } from '../../src/quantities/lintel-section.ts'
import { amount, evaluate, inputsOf } from './inputs.ts'
import { arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

const tableOf = (id: string): Table => {
  const given = inputsOf({}).table(id)
  if (!given) throw new Error(`the catalog lacks ${id}`)
  return given.table
}
const sections = () => tableOf('steel.angle-sections')
const metric = () => tableOf('steel.metric-angle-sections')

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

describe('angles of the metric table', () => {
  // Makers' tables for EN 10056-1: mass, moment of inertia, section modulus
  test.each([
    { section: 'L100x100x10', mass: '15.0 kg/m', inertia: '177 cm4', modulus: '24.6 cm3' },
    { section: 'L125x75x10', mass: '15.0 kg/m', inertia: '302 cm4', modulus: '36.5 cm3' },
    { section: 'L150x90x10', mass: '18.2 kg/m', inertia: '533 cm4', modulus: '53.3 cm3' },
  ])('$section has the published stiffness and strength', ({ section, mass, inertia, modulus }) => {
    const angle = findAngle(metric(), section)
    expectNear(angle?.mass ?? NaN, mass, 1e-9)
    expectNear(angle?.momentOfInertia ?? NaN, inertia, 1e-9)
    expectNear(angle?.sectionModulus ?? NaN, modulus, 1e-9)
  })

  test('no spelling means an angle of the one table and another of the other', () => {
    expect(anglesOf(metric()).filter(({ section }) => findAngle(sections(), section))).toEqual([])
  })

  // Both figures are rounded to three places; the weights of the inch sizes are nominal besides
  test.each([{ id: 'steel.metric-angle-sections', within: 0.01 }, { id: 'steel.angle-sections', within: 0.02 }])('every mass of $id is its area times 7850 kg/m3', ({ id, within }) => {
    const off = tableOf(id).rows.map((row) => Math.abs(amount(cellText(row['weight'])) / (amount(cellText(row['area'])) * 7850e-6) - 1))
    expect(Math.max(...off)).toBeLessThan(within)
  })
})

const angleFor = (facts: Readonly<Record<string, unknown>>) => angleOverOpening.find(inputsOf(arched72With(facts)))
const strengthOf = (facts: Readonly<Record<string, unknown>>): Angle => {
  const found = angleFor(facts)
  if (!found.known) throw new Error(found.because?.why ?? found.missing.join())
  return found.value
}

describe('an angle that no table holds', () => {
  test('is computed from its sizes, and that is said', () => {
    const found = angleFor({ 'head.support.section': 'L9x4x1/2' })
    expect(found).toMatchObject({ known: true, assumptions: [expect.stringContaining('computed from its sizes') as string] })
    expect(found.known && found.used.map(({ from }) => from)).toContain('parameter steel.bar-mass')
  })

  test('one that a table holds is not, and draws on no other source', () => {
    const found = angleFor({ 'head.support.section': 'L100x75x8' })
    expect(found).toMatchObject({ known: true, assumptions: [], value: { section: 'L100x75x8', count: 1 } })
    expect(found.known && found.used.map(({ from }) => from)).toEqual(['table steel.metric-angle-sections', 'head.support.section'])
  })

  // Worked by hand: 12 × (151 + 90 - 12) = 2748 mm2, at 7850 kg/m3
  test('weighs what square corners weigh', () => {
    expect(strengthOf({ 'head.support.section': 'L151x90x12' }).mass).toBeCloseTo(21.5718, 9)
  })

  test('has never more strength or stiffness than a listed angle of those sizes', () => {
    // Sizes a hair off the listed ones, so that no table holds them
    for (const { section, verticalLeg, horizontalLeg, thickness, momentOfInertia, sectionModulus } of [...anglesOf(sections()), ...anglesOf(metric())]) {
      if (slendernessOf({ verticalLeg, horizontalLeg, thickness }) > 20) continue
      const [standing, flat, steel] = [verticalLeg, horizontalLeg, thickness].map((length) => length / 1e6)
      const computed = strengthOf({ 'head.support.section': `L${standing}x${flat}x${(steel ?? NaN) + 1e-7}` })
      expect(computed.section, section).not.toBe(section)
      expect(computed.momentOfInertia, section).toBeLessThan(momentOfInertia)
      expect(computed.sectionModulus, section).toBeLessThan(sectionModulus)
      expect(computed.sectionModulus / sectionModulus, section).toBeGreaterThan(0.87)
    }
  })

  test('in a pair has twice the strength, and the legs of one', () => {
    const [one, pair] = [strengthOf({ 'head.support.section': 'L130x80x10' }), strengthOf({ 'head.support.section': '2L130x80x10' })]
    expect(pair).toMatchObject({ count: 2, verticalLeg: one.verticalLeg, thickness: one.thickness, mass: 2 * one.mass, sectionModulus: 2 * one.sectionModulus, momentOfInertia: 2 * one.momentOfInertia })
  })

  test('stands on end where the long leg is said to stand, however it is written', () => {
    const long = strengthOf({ 'head.support.section': 'L130x80x10' })
    expect(strengthOf({ 'head.support.section': 'L80x130x10', 'head.support.longLeg': 'vertical' })).toMatchObject({ verticalLeg: long.verticalLeg, sectionModulus: long.sectionModulus })
    expect(strengthOf({ 'head.support.section': 'L80x130x10' }).sectionModulus).toBeLessThan(long.sectionModulus / 2)
    expect(angleFor({ 'head.support.section': 'L80x130x10', 'head.support.longLeg': 'horizontal' })).toMatchObject({ known: false, because: { reason: 'methodDoesNotHold' } })
  })

  test('with legs more slender than any of the table is left to a professional', () => {
    expect(angleFor({ 'head.support.section': 'L6x4x1/4' })).toMatchObject({ known: false, because: { reason: 'outsidePrescriptive', why: expect.stringContaining('L6x4x1/4') as string } })
    expect(angleFor({ 'head.support.section': 'L5x4x1/4' }).known).toBe(true)
  })

  test('is left to a professional where the catalog is older than the figures for it', () => {
    const inputs = inputsOf(arched72With({ 'head.support.section': 'L9x4x1/2' }, { parameters: { 'steel.bar-mass': null }, tables: { 'steel.metric-angle-sections': null } }))
    expect(angleOverOpening.find(inputs)).toMatchObject({ known: false, because: { reason: 'outsidePrescriptive' } })
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
