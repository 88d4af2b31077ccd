import { describe, expect, test } from 'vitest'
import { lintelLightestAngle, lintelLightestMetricAngle } from '../../src/quantities/lintel-lightest-angle.ts'
import { evaluate } from './inputs.ts'
import { arched72, arched72With, lintelQuantities } from './lintel-example.ts'

const limits = { ...arched72.limits, 'lintel.horizontal-leg': '3 in', 'lintel.thickness': '1/4 in' }

function lightest(load: string, span: string, arching = 'does not arch') {
  return evaluate(lintelLightestAngle, { ...arched72, limits, quantities: { 'lintel.brick-load': load, 'lintel.effective-span': span, 'lintel.arching': arching } }, lintelQuantities)
}

describe('lightest angle', () => {
  // Allowable even loads worked by hand for 22,000 psi and L/600: on 6 ft L3x3x1/4 takes 142 lbf/ft, L3-1/2x3-1/2x1/4 233, L4x3x1/4 322
  test.each([
    { perFoot: 140, section: 'L3x3x1/4' },
    { perFoot: 320, section: 'L4x3x1/4' },
    { perFoot: 335, section: 'L4x3-1/2x1/4' },
    { perFoot: 600, section: 'L5x3x1/4' },
  ])('$perFoot lbf/ft on 6 ft: $section', ({ perFoot, section }) => {
    expect(lightest(`${perFoot * 6} lbf`, '6 ft').value).toBe(section)
  })

  test('a triangle asks for less than the same weight spread to midspan would', () => {
    // 142 lbf/ft even is the most that L3x3x1/4 takes; as a triangle the same weight needs more
    expect(lightest('840 lbf', '6 ft').value).toBe('L3x3x1/4')
    expect(lightest('840 lbf', '6 ft', 'arches').value).not.toBe('L3x3x1/4')
  })

  test('carries its own weight too', () => {
    expect(lightest('850 lbf', '6 ft').value).toBe('L3x3x1/4')
    // 145 lbf/ft is within what the section takes before its own 4.9 lbf/ft
    expect(lightest('870 lbf', '6 ft').value).not.toBe('L3x3x1/4')
  })

  test('the whole opening, from its description', () => {
    const result = evaluate(lintelLightestAngle, { ...arched72, limits }, lintelQuantities)
    expect(result.value).toBe('L3x3x1/4')
    expect(result.steps).toEqual([expect.stringMatching(/^L3x3x1\/4, 4\.9 lb\/ft: 0\.\d+ of the allowable stress, 0\.\d+ of the allowed deflection$/), expect.stringMatching(/^next: L3-1\/2x3x1\/4, 5\.4 lb\/ft: /)])
    expect(result.assumptions).toEqual([])
  })

  test('is asked before any angle was chosen', () => {
    expect(evaluate(lintelLightestAngle, { ...arched72With({ 'head.support.section': null }), limits }, lintelQuantities).value).toBe('L3x3x1/4')
  })

  test('says when no least leg or thickness is in force', () => {
    expect(evaluate(lintelLightestAngle, arched72, lintelQuantities).assumptions).toHaveLength(2)
  })

  test('leaves what no angle carries to a professional', () => {
    expect(lightest('40000 lbf', '20 ft')).toMatchObject({ status: 'notDetermined', reason: 'outsidePrescriptive' })
  })

  test('leaves other loads to a professional, and asks about them', () => {
    expect(evaluate(lintelLightestAngle, { ...arched72With({ 'wall.loadAbove': true }), limits }, lintelQuantities).reason).toBe('outsidePrescriptive')
    expect(evaluate(lintelLightestAngle, { ...arched72With({ 'wall.loadAbove': null, 'wall.veneer.bond': 'stack' }), limits }, lintelQuantities).missing).toEqual(['wall.loadAbove'])
  })
})

describe('lightest metric angle', () => {
  // 322 lbf/ft on 6 ft, worked by hand: 1449 lbf ft on 22,000 psi is 12.95 cm3, and 6 ft / 600 asks for 97.6 cm4.
  // L100x65x7 (8.77 kg/m, 16.6 cm3, 113 cm4) has both; L80x80x8 (9.63) has the strength but not the stiffness, and lighter ones of the least leg and thickness neither
  test('is the lightest of both', () => {
    const given = { ...arched72, limits: { ...limits, 'lintel.horizontal-leg': '2 1/2 in' }, quantities: { 'lintel.brick-load': '1900 lbf', 'lintel.effective-span': '6 ft', 'lintel.arching': 'does not arch' } }
    const result = evaluate(lintelLightestMetricAngle, given, lintelQuantities)
    expect(result.value).toBe('L100x65x7')
    expect(result.steps).toEqual([expect.stringMatching(/^L100x65x7, 8\.77 kg\/m: 0\.\d+ of the allowable stress, 0\.\d+ of the allowed deflection$/), expect.stringMatching(/^next: L100x65x8, 9\.94 kg\/m: /)])
  })

  test('is never of inch sizes', () => {
    expect(evaluate(lintelLightestMetricAngle, { ...arched72, limits }, lintelQuantities).value).toMatch(/^L\d+x\d+x\d+$/)
  })

  test('leaves what no angle carries to a professional', () => {
    const given = { ...arched72, limits, quantities: { 'lintel.brick-load': '40000 lbf', 'lintel.effective-span': '20 ft', 'lintel.arching': 'does not arch' } }
    expect(evaluate(lintelLightestMetricAngle, given, lintelQuantities)).toMatchObject({ status: 'notDetermined', reason: 'outsidePrescriptive' })
  })
})
