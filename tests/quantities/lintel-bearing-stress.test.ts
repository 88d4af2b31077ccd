import { describe, expect, test } from 'vitest'
import { lintelBearingStress, lintelBearingStressPeak, pressureOf } from '../../src/quantities/lintel-bearing-stress.ts'
import { amount, evaluate, valueOf } from './inputs.ts'
import { arched72, arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

describe('pressure under the lintel end', () => {
  // Worked by hand: 218.9 lbf on 4 in by a 3 1/2 in leg
  test('arching brick on a 72 in opening', () => {
    const result = evaluate(lintelBearingStress, arched72, lintelQuantities)
    expectNear(valueOf(result), '15.64 [psi]', 0.0005)
    expect(result.steps).toEqual(['218.9 lbf / (4 in × 3 1/2 in) = 15.64 psi'])
    expect(result.notes[0]).toBe('The whole flat leg is taken to rest on brick; the thickness of the brick is not known.')
  })

  test('goes by the shorter end', () => {
    const given = { ...arched72With({ 'head.support.bearing': ['6 in', '2 in'] }), quantities: { 'lintel.load': '448 lbf' } }
    // 224 lbf on 2 in by 3 1/2 in
    expectNear(valueOf(evaluate(lintelBearingStress, given, lintelQuantities)), '32 [psi]', 1e-9)
  })

  // Worked by hand: 6 kip on a knife edge at the left jamb, 2 in inside the left support of a 76 in span; 5842 lbf and 158 lbf with it
  test('goes by the end that is pressed harder', () => {
    const given = arched72With({
      'head.support.bearing': ['4 in', '4 in'], 'wall.loadAbove': true, 'wall.imposedLoad': '0 lbf/ft', 'wall.pointLoad': '6000 lbf', 'wall.pointLoadHeight': '0 in', 'wall.pointLoadFromJamb': '0 in', 'wall.pointLoadPlate': '0 in',
    })
    const result = evaluate(lintelBearingStress, given, lintelQuantities)
    expectNear(valueOf(result), `${(218.92 + 6_000 * 74 / 76) / 14} [psi]`, 0.0001)
    expect(result.steps).toHaveLength(2)
  })

  test('a masonry lintel bears on its own width', () => {
    const precast = arched72With({ 'head.support.kind': 'precastLintel', 'head.support.section': null, 'head.support.width': '3 5/8 in', 'head.support.lineWeight': '30 lbf/ft' })
    // Worked by hand: (401.1 + 190) lbf / 2 on 4 in by 3 5/8 in
    expectNear(valueOf(evaluate(lintelBearingStress, precast, lintelQuantities)), '20.383 [psi]', 0.0002)
    expect(evaluate(lintelBearingStress, { ...precast, facts: { ...precast.facts, 'head.support.width': null } }, lintelQuantities).missing).toEqual(['head.support.width'])
  })

  test('a leg wider than the brick rests on the brick only', () => {
    const given = { ...arched72With({ 'wall.veneer.thickness': '2 3/4 in' }), quantities: { 'lintel.load': '440 lbf' } }
    // 220 lbf on 4 in by 2 3/4 in
    expectNear(valueOf(evaluate(lintelBearingStress, given, lintelQuantities)), '20 [psi]', 1e-9)
  })

  test('metric', () => {
    const given = { ...arched72With({ 'wall.veneer.thickness': '75 mm', 'head.support.bearing': '100 mm' }), quantities: { 'lintel.load': '3 kN' } }
    expectNear(valueOf(evaluate(lintelBearingStress, given, lintelQuantities)), '0.2 MPa', 1e-9)
  })

  test('an end without bearing has no pressure to compute', () => {
    expect(evaluate(lintelBearingStress, arched72With({ 'head.support.bearing': ['0 in', '4 in'] }), lintelQuantities)).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
  })

  test('names the section while it is not known', () => {
    expect(evaluate(lintelBearingStress, arched72With({ 'head.support.section': null }), lintelQuantities).missing).toEqual(['head.support.section'])
  })
})

describe('greatest pressure', () => {
  // UFC 3-310-05A, lintel example: 2 × 224 lb on 8 in by 7.62 in is 7.3 psi
  test('agrees with the published example', () => {
    const average = pressureOf(amount('224 lbf'), amount('8 in'), amount('7.62 in'))
    expectNear(2 * average, '7.3 [psi]', 0.01)
    const result = evaluate(lintelBearingStressPeak, { ...arched72, quantities: { 'lintel.bearing-stress': `${(average / amount('1 [psi]')).toFixed(6)} [psi]` } })
    expectNear(valueOf(result), '7.3 [psi]', 0.01)
  })

  test('is twice the average', () => {
    const given = evaluate(lintelBearingStressPeak, arched72, lintelQuantities)
    expectNear(valueOf(given), '31.28 [psi]', 0.001)
  })
})
