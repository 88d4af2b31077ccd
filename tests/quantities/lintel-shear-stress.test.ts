import { describe, expect, test } from 'vitest'
import { lintelMomentRatio } from '../../src/quantities/lintel-moment-ratio.ts'
import { lintelDeflection, lintelDeflectionRatio } from '../../src/quantities/lintel-deflection.ts'
import { lintelReactionLeft, lintelReactionRight, lintelShear } from '../../src/quantities/lintel-reactions.ts'
import { lintelShearRatio, lintelShearStress } from '../../src/quantities/lintel-shear-stress.ts'
import { evaluate, valueOf } from './inputs.ts'
import { arched72, arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

const precast = arched72With({
  'head.support.kind': 'precastLintel', 'head.support.section': null, 'head.support.lineWeight': '30 lbf/ft', 'head.support.depth': '7 5/8 in', 'head.support.width': '3 5/8 in',
  'head.support.allowableMoment': '1500 lbf ft', 'head.support.allowableShear': '1200 lbf', 'head.support.momentOfInertia': '133.9 in4', 'head.support.elasticModulus': '3000 ksi',
})
const without = (...facts: readonly string[]) => ({ ...precast, facts: { ...precast.facts, ...Object.fromEntries(facts.map((fact) => [fact, null])) } })

describe('loads on the bearings', () => {
  test('are half of everything each while nothing stands to one side', () => {
    for (const end of [lintelReactionLeft, lintelReactionRight]) {
      const result = evaluate(end, arched72, lintelQuantities)
      expectNear(valueOf(result), '218.92 lbf', 0.0002)
      expect(result.steps).toEqual(['437.8 lbf / 2 = 218.9 lbf'])
      expect(end.structural).toBe(true)
    }
    expectNear(valueOf(evaluate(lintelShear, arched72, lintelQuantities)), '218.92 lbf', 0.0002)
  })

  test('name what is missing', () => {
    expect(evaluate(lintelShear, arched72With({ 'wall.loadAbove': null, 'wall.veneer.bond': 'stack' }), lintelQuantities).missing).toEqual(['wall.loadAbove'])
  })
})

describe('shear in an angle', () => {
  // Worked by hand: 218.92 lbf on 3 1/2 in by 1/4 in; of 12,900 psi
  test('is on the standing leg', () => {
    const result = evaluate(lintelShearStress, arched72, lintelQuantities)
    expectNear(valueOf(result), '250.2 [psi]', 0.0002)
    expect(result.steps).toEqual(['218.9 lbf / (3 1/2 in × 1/4 in) = 250.2 psi'])
    expectNear(valueOf(evaluate(lintelShearRatio, arched72, lintelQuantities)), `${250.2 / 12_900}`, 0.0005)
  })

  test('of a pair is on both standing legs', () => {
    const given = { ...arched72With({ 'head.support.section': '2L6x3-1/2x5/16' }), quantities: { 'lintel.shear': '3000 lbf' } }
    // Worked by hand: 3000 lbf on 2 × 6 in × 5/16 in
    expectNear(valueOf(evaluate(lintelShearStress, given, lintelQuantities)), '800 [psi]', 1e-9)
  })

  // Worked by hand: 10 kN on 152 mm by 7.9 mm, in inches 6 by 5/16
  test('metric', () => {
    const given = { ...arched72With({ 'head.support.section': 'L152x89x7.9' }), quantities: { 'lintel.shear': '10 kN' } }
    expectNear(valueOf(evaluate(lintelShearStress, given, lintelQuantities)), '8.267 MPa', 0.001)
  })
})

describe('a lintel that comes with its own strength', () => {
  // Worked by hand: triangle 401.1 lbf and 190 lbf of lintel on 76 in; 423.4 + 150.4 lbf ft, 295.6 lbf
  test('uses so much of it', () => {
    expectNear(valueOf(evaluate(lintelMomentRatio, precast, lintelQuantities)), `${(401.11 * 76 / 72 + 190 * 76 / 96) / 1_500}`, 0.0002)
    expectNear(valueOf(evaluate(lintelShearRatio, precast, lintelQuantities)), `${295.56 / 1_200}`, 0.0002)
    expectNear(valueOf(evaluate(lintelShearStress, precast, lintelQuantities)), `${295.56 / (7.625 * 3.625)} [psi]`, 0.0002)
  })

  // Worked by hand: (401.11 / 60 + 5 × 190 / 384) × 76³ / (3,000,000 × 133.9)
  test('bends by its own stiffness', () => {
    expectNear(valueOf(evaluate(lintelDeflection, precast, lintelQuantities)), `${(401.11 / 60 + (5 * 190) / 384) * 76 ** 3 / (3e6 * 133.9)} in`, 0.0005)
    expectNear(valueOf(evaluate(lintelDeflectionRatio, precast, lintelQuantities)), `${(401.11 / 60 + (5 * 190) / 384) * 76 ** 2 * 600 / (3e6 * 133.9)}`, 0.0005)
  })

  test('asks for what its maker states', () => {
    expect(evaluate(lintelMomentRatio, without('head.support.allowableMoment'), lintelQuantities).missing).toEqual(['head.support.allowableMoment'])
    expect(evaluate(lintelShearRatio, without('head.support.allowableShear'), lintelQuantities).missing).toEqual(['head.support.allowableShear'])
    expect(evaluate(lintelDeflection, without('head.support.momentOfInertia', 'head.support.elasticModulus'), lintelQuantities).missing).toEqual(['head.support.momentOfInertia', 'head.support.elasticModulus'])
  })

  test('is not an angle, whose moment is judged by its stress', () => {
    expect(evaluate(lintelMomentRatio, arched72, lintelQuantities).status).toBe('notApplicable')
  })
})
