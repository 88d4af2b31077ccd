import { describe, expect, test } from 'vitest'
import { lintelSpecificationMoment, lintelSpecificationRatio } from '../../src/quantities/lintel-specification.ts'
import { elasticBuckling, flexureCoefficients, governing, restrainedMoments, unrestrainedMoments, type BentAngle, type FlexureCoefficients } from '../../src/quantities/single-angle-flexure.ts'
import { amount, evaluate, inputsOf, valueOf } from './inputs.ts'
import { arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

const table = inputsOf({}).table('steel.single-angle-flexure')
if (!table) throw new Error('the catalog lacks the coefficients')
const by = flexureCoefficients(table.table)

const bent = (leg: string, thickness: string, sectionModulus: string, yieldStress = '36000 psi'): BentAngle => ({
  verticalLeg: amount(leg), thickness: amount(thickness), sectionModulus: amount(sectionModulus), yieldStress: amount(yieldStress), modulus: amount('29000000 psi'),
})

describe('the equations of AISC 360-16, F10', () => {
  // AISC Design Examples 15.0, F.11A: L4x4x1/4 of A36 on 6 ft, vertical leg up, no side restraint, Cb 1.14
  const angle = bent('4 in', '1/4 in', '1.03 in3')
  const gradient: FlexureCoefficients = { ...by, momentGradient: 1.14 }
  const moments = unrestrainedMoments(angle, amount('6 ft'), gradient)

  test('yielding is 55.6 kip in, as published', () => expectNear(moments.yielding, '55600 [lbf_av].[in_i]', 0.001))

  test('the leg is neither compact nor slender: limits 15.3 and 25.8, as published', () => {
    const root = Math.sqrt(29_000 / 36)
    expect((by.compactLeg * root).toFixed(1)).toBe('15.3')
    expect((by.slenderLeg * root).toFixed(1)).toBe('25.8')
  })

  // Worked by hand with the figures of the example
  test('it buckles sideways at 107.4 kip in, so at 38.7 when yielding is reckoned with, and its leg at 43.3', () => {
    expectNear(elasticBuckling(angle, amount('6 ft'), gradient), '107446 [lbf_av].[in_i]', 1e-4)
    expectNear(moments.sidewaysBuckling ?? NaN, '38719 [lbf_av].[in_i]', 1e-4)
    expectNear(moments.legBuckling ?? NaN, '43321 [lbf_av].[in_i]', 1e-4)
    expectNear(governing(moments) / by.safetyFactor, '1932 [lbf_av].[ft_i]', 1e-4)
  })

  // The edition of 2010 with 0.66 and 0.78, worked by hand; Design Examples 14.0, F.11A take it
  test('the earlier figures give 110.4 kip in', () => expectNear(elasticBuckling(angle, amount('6 ft'), { ...gradient, bucklingFactor: 0.66, torsionFactor: 0.78 }), '110380 [lbf_av].[in_i]', 1e-3))

  // Worked by hand: L8x8x1/2 of 100 ksi on 40 ft; Mcr 397.3 kip in is less than 0.80 My of 668.8
  test('one that buckles before it yields', () => {
    const moments = unrestrainedMoments(bent('8 in', '1/2 in', '8.36 in3', '100000 psi'), amount('40 ft'), by)
    expectNear(moments.sidewaysBuckling ?? NaN, '325400 [lbf_av].[in_i]', 5e-4)
  })

  // Worked by hand: L6x6x5/16 of 100 ksi, leg ratio 19.2 beyond 0.91 √290 = 15.5; 0.71 × 29000 / 19.2² = 55.85 ksi on 2.95 in3
  test('a slender leg', () => {
    const moments = restrainedMoments(bent('6 in', '5/16 in', '2.95 in3', '100000 psi'), by)
    expectNear(moments.legBuckling ?? NaN, '164770 [lbf_av].[in_i]', 5e-4)
    expect(moments.sidewaysBuckling).toBeUndefined()
  })

  test('where a leg turns from noncompact to slender the two equations meet, but for what rounding of their figures leaves', () => {
    const at = (thickness: string) => restrainedMoments(bent('6 in', thickness, '3 in3'), by).legBuckling ?? NaN
    // 6 in / 25.83
    expect(at('0.2324 in') / at('0.2322 in')).toBeGreaterThan(1)
    expect(at('0.2324 in') / at('0.2322 in')).toBeLessThan(1.02)
  })

  test('a compact leg yields before it buckles', () => {
    expect(restrainedMoments(bent('4 in', '1/2 in', '1.96 in3'), by)).toEqual({ yielding: expect.closeTo(amount('105840 [lbf_av].[in_i]'), 6) as number })
  })

  test('a table without one of the figures is a fault of the catalog', () => {
    expect(() => flexureCoefficients({ ...table.table, rows: table.table.rows.slice(1) })).toThrow('no figure for yieldFactor')
  })
})

const allowed = (facts: Readonly<Record<string, unknown>>) => evaluate(lintelSpecificationMoment, arched72With(facts), lintelQuantities)
const ratio = (facts: Readonly<Record<string, unknown>>) => evaluate(lintelSpecificationRatio, arched72With(facts), [...lintelQuantities, lintelSpecificationMoment])

describe('allowable moment by the steel specification', () => {
  // Worked by hand: L3-1/2x3-1/2x1/4, leg ratio 14; 1.5 × 36 ksi × 0.787 in3 / 1.67 = 25.45 kip in
  test('held along its length', () => {
    const result = allowed({ 'head.support.lateralRestraint': 'continuous' })
    expectNear(valueOf(result), '2120.7 [lbf_av].[ft_i]', 1e-4)
    expect(result.steps).toHaveLength(4)
    expect(result.steps[1]).toContain('compact')
    expect(result.assumptions).toEqual([expect.stringContaining('A36')])
  })

  // Worked by hand on 76 in: 0.58 × 29000 × 3.5⁴ × 0.25 / 76² × (√(1 + 0.88 × 1.551²) - 1) = 83.63 kip in, 0.80 My 22.67;
  // (1.92 - 1.17 √(22.67 / 83.63)) × 22.67 / 1.67 = 17.79 kip in
  test('held at its ends alone', () => {
    const result = allowed({ 'head.support.lateralRestraint': 'none', 'head.support.yieldStress': '36000 psi' })
    expectNear(valueOf(result), '1482.7 [lbf_av].[ft_i]', 1e-4)
    expect(result.assumptions).toEqual([])
  })

  test('a stronger steel is allowed more', () => {
    const moment = (stress: string) => valueOf(allowed({ 'head.support.lateralRestraint': 'continuous', 'head.support.yieldStress': stress }))
    expect(moment('50000 psi')).toBeGreaterThan(moment('36000 psi'))
  })

  test('a pair is two angles, each by itself', () => {
    for (const restraint of ['none', 'continuous']) {
      const [one, pair] = ['L4x4x1/4', '2L4x4x1/4'].map((section) => valueOf(allowed({ 'head.support.section': section, 'head.support.lateralRestraint': restraint })))
      expect(pair).toBeCloseTo(2 * (one ?? NaN), 6)
    }
  })

  // Worked by hand: L5x3-1/2x5/16, leg ratio 16; 36 ksi × 1.92 in3 × (2.43 - 1.72 × 16 × 0.035233) / 1.67 = 60.44 kip in
  test('unequal legs, held along their length', () => {
    expectNear(valueOf(allowed({ 'head.support.section': 'L5x3-1/2x5/16', 'head.support.lateralRestraint': 'continuous' })), '5036.9 [lbf_av].[ft_i]', 1e-3)
  })

  test('unequal legs that nothing holds sideways are left to a professional', () => {
    expect(allowed({ 'head.support.section': 'L5x3-1/2x5/16', 'head.support.lateralRestraint': 'none' })).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
  })

  test('asks whether anything holds it sideways', () => expect(allowed({}).missing).toEqual(['head.support.lateralRestraint']))

  test('is not asked of a precast lintel', () => expect(allowed({ 'head.support.kind': 'precastLintel' }).status).toBe('notApplicable'))
})

describe('part of it that is used', () => {
  // 5,430 lbf in, the moment of the 72 in opening as worked by hand, and the steel on 76 in; over 25.45 kip in
  test('moment over allowable moment', () => {
    expect(valueOf(ratio({ 'head.support.lateralRestraint': 'continuous' }))).toBeCloseTo(5430 / 25448, 3)
  })

  test('too much of it is withheld where reinforced joints carry along', () => {
    const heavy = { 'head.support.lateralRestraint': 'continuous', 'wall.veneer.bond': 'stack', 'wall.heightAboveHead': '20 ft', 'head.support.section': 'L3x3x1/4' }
    expect(valueOf(ratio(heavy))).toBeGreaterThan(1)
    expect(ratio({ ...heavy, 'head.support.jointReinforcementCourses': 2 })).toMatchObject({ reason: 'methodDoesNotHold' })
  })

  test('is not known while the allowable moment is not', () => expect(ratio({}).missing).toEqual(['head.support.lateralRestraint']))
})
