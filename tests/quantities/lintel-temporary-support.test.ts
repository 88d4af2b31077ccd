import { describe, expect, test } from 'vitest'
import { lintelTemporarySupport } from '../../src/quantities/lintel-temporary-support.ts'
import { evaluate } from './inputs.ts'
import { arched72, arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

const support = (facts: Readonly<Record<string, unknown>> = {}, limits: Readonly<Record<string, string>> = {}) =>
  evaluate(lintelTemporarySupport, arched72With(facts, { limits: { ...arched72.limits, ...limits } }), lintelQuantities)

describe('shoring', () => {
  // Masonry Construction, when steel lintels must be shored: where arching is counted on, typically 1 to 3 days
  test('lasts until the mortar has set where the brick is counted on to arch', () => {
    const result = support()
    expect(result.value).toBe('shore until the mortar has set')
    expect(result.steps).toEqual(['usually specified: 1 to 3 days, more under heavy load and in cold weather', 'green brick to hold: 40 psf × its height × 76 in'])
    expect(result.notes.join()).toContain('A licensed engineer designs the shoring')
  })

  // Worked by hand: 40 psf × 8 ft × 76 in and 320 lbf/ft; 5.8 lbf/ft of steel
  test('holds all the brick and the lintel', () => {
    const rows = support().tables[0]?.rows ?? []
    expect(rows.map(([load]) => load)).toEqual(['all the brick above', 'the lintel itself'])
    expectNear(Number(rows[0]?.[2]), '2026.667 lbf', 1e-6)
    expectNear(Number(rows[0]?.[3]), '320 [lbf_av]/[ft_i]', 1e-9)
    expectNear(Number(rows[1]?.[2]), '36.733 lbf', 1e-4)
    expectNear(Number(rows[1]?.[3]), '5.8 [lbf_av]/[ft_i]', 1e-6)
  })

  test('is not counted on where the lintel carries all the brick', () => {
    const result = support({ 'wall.veneer.bond': 'stack' })
    expect(result.value).toBe('no shoring is counted on; the lintel carries all the brick from the first day')
    expect(result.steps.join()).not.toContain('days')
  })

  test('lasts as long as the code says where the joints above are reinforced', () => {
    const limits = { 'lintel.wide-opening-shoring': '7' }
    expect(support({ 'head.support.jointReinforcementCourses': 2 }, limits).steps).toContain('by the reinforced brick option of the code for wide openings: 7 days')
    expect(support({ 'head.support.jointReinforcementCourses': 0 }, limits).steps.join()).not.toContain('7 days')
    expect(support({}, limits).steps.join()).not.toContain('7 days')
  })

  // Worked by hand: 1.92 kN/m2 × 2.4 m
  test('metric, of an angle that is not known yet', () => {
    const rows = support({ 'wall.veneer.weight': '1.92 kPa', 'wall.heightAboveHead': '2.4 m', 'head.support.section': null }).tables[0]?.rows ?? []
    expect(rows).toHaveLength(1)
    expectNear(Number(rows[0]?.[3]), '4.608 kN/m', 1e-9)
  })

  test('asks how much brick stands above', () => {
    expect(support({ 'wall.heightAboveHead': null, 'wall.veneer.bond': 'stack' }).missing).toEqual(['wall.heightAboveHead'])
  })
})
