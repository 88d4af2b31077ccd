import { describe, expect, test } from 'vitest'
import { lintelBearingLengthNeeded, lintelBearingStressAllowed, lintelBearingStressRatio } from '../../src/quantities/lintel-bearing-check.ts'
import { lintelBearingStressPeak } from '../../src/quantities/lintel-bearing-stress.ts'
import { amount, evaluate, valueOf } from './inputs.ts'
import { arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

const buildsOn = [...lintelQuantities, lintelBearingStressPeak, lintelBearingStressAllowed]
const strong = arched72With({ 'wall.veneer.compressiveStrength': '1350 psi' })

describe('pressure under the lintel end against the masonry', () => {
  // UFC 3-310-05A, lintel example: 0.25 of 1350 psi is 338 psi
  test('agrees with the published example', () => {
    const result = evaluate(lintelBearingStressAllowed, strong, buildsOn)
    expectNear(valueOf(result), '338 [psi]', 0.002)
    expect(result.steps).toEqual(['0.25 × 1350 psi = 337.5 psi'])
  })

  // Worked by hand: twice 15.637 psi of 337.5 psi
  test('uses so much of it at its greatest', () => {
    expectNear(valueOf(evaluate(lintelBearingStressRatio, strong, buildsOn)), `${(2 * 15.637) / 337.5}`, 0.0005)
  })

  test('the rule asks for more bearing than the strength does', () => {
    const result = evaluate(lintelBearingLengthNeeded, strong, buildsOn)
    expect(result.value).toBe(amount('4 in'))
    // Worked by hand: 2 × 218.92 lbf / (337.5 psi × 3.5 in)
    expect(result.steps).toEqual(['2 × 218.9 lbf / (337.5 psi × 3 1/2 in) = 0.371 in', 'required bearing 4 in'])
  })

  // Worked by hand: 2 × 6000 lbf / (337.5 psi × 3.5 in) = 10.159 in
  test('a heavy load asks for more than the rule', () => {
    expectNear(valueOf(evaluate(lintelBearingLengthNeeded, { ...strong, quantities: { 'lintel.shear': '6000 lbf' } }, buildsOn)), '10.1587 in', 0.0001)
  })

  // Worked by hand: 2 × 20 kN / (0.25 × 10 MPa × 90 mm) = 177.8 mm
  test('metric, under a masonry lintel', () => {
    const given = { ...arched72With({ 'head.support.kind': 'precastLintel', 'head.support.section': null, 'head.support.width': '90 mm', 'wall.veneer.compressiveStrength': '10 MPa' }), quantities: { 'lintel.shear': '20 kN' } }
    expectNear(valueOf(evaluate(lintelBearingLengthNeeded, given, buildsOn)), '177.778 mm', 0.0001)
  })

  test('asks for the strength of the masonry', () => {
    for (const definition of [lintelBearingStressAllowed, lintelBearingStressRatio, lintelBearingLengthNeeded]) {
      expect(evaluate(definition, arched72With({}), buildsOn).missing).toEqual(['wall.veneer.compressiveStrength'])
      expect(definition.onlyWhenKnown).toBe(true)
    }
  })
})
