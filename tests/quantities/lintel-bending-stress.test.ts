import { describe, expect, test } from 'vitest'
import { lintelBendingMoment, lintelBendingStress, lintelBendingStressRatio, lintelSectionModulusNeeded } from '../../src/quantities/lintel-bending-stress.ts'
import { evaluate, valueOf } from './inputs.ts'
import { arched72, arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

/** Loads of a published check in place of ours: on a 10 ft span, all of it spread evenly. */
const forumCheck = {
  ...arched72With({ 'head.support.section': 'L7x4x3/8' }),
  quantities: { 'lintel.arching': 'does not arch', 'lintel.brick-load': '2130 lbf', 'lintel.load': '2130 lbf', 'lintel.effective-span': '10 ft' },
}

describe('bending of the lintel', () => {
  // Worked by hand, triangle of 401.1 lbf and 5.8 plf of steel on 76 in, section modulus 0.787 in3
  test('arching brick on a 72 in opening', () => {
    expectNear(valueOf(evaluate(lintelBendingMoment, arched72, lintelQuantities)), '5429.7 [lbf_av].[in_i]', 0.0005)
    expectNear(valueOf(evaluate(lintelBendingStress, arched72, lintelQuantities)), '6899 [psi]', 0.0005)
    expectNear(valueOf(evaluate(lintelBendingStressRatio, arched72, lintelQuantities)) * 22_000, '6899', 0.0005)
  })

  // An engineers' forum, https://eng-tips.com/threads/brick-veneer-angle-lintel-design-limited-veneer-height-above.474516/post-8606928
  test('a published check of all the brick on L7x4x3/8', () => {
    const moment = evaluate(lintelBendingMoment, forumCheck, lintelQuantities)
    expectNear(valueOf(moment), '32000 [lbf_av].[in_i]', 0.02)
    expectNear(valueOf(evaluate(lintelSectionModulusNeeded, forumCheck, lintelQuantities)), '1.45 [in_i]3', 0.02)
  })

  // UFC 3-310-05A, lintel example: 200 lb of brick and 248 lb of lintel on 4 ft
  test('a published triangle', () => {
    const given = { ...arched72, quantities: { 'lintel.arching': 'arches', 'lintel.brick-load': '200 lbf', 'lintel.load': '448 lbf', 'lintel.effective-span': '4 ft' } }
    expectNear(valueOf(evaluate(lintelBendingMoment, given)), '257 [lbf_av].[ft_i]', 0.01)
  })

  // Worked by hand: 9 ft × 40 psf and 5.8 plf of steel on 104 in, section modulus 0.988 in3
  test('a joint at the jamb overstresses a small angle', () => {
    const given = arched72With({ 'opening.width': '100 in', 'wall.heightAboveHead': '9 ft', 'wall.movementJointAtJamb': [true, false], 'head.support.section': 'L4x3x1/4' })
    expectNear(valueOf(evaluate(lintelBendingStress, given, lintelQuantities)), '41715 [psi]', 0.0005)
    expect(valueOf(evaluate(lintelBendingStressRatio, given, [...lintelQuantities]))).toBeGreaterThan(1)
  })

  // Allowable even load in lbf/ft beside the angle's own weight, worked by hand for 22,000 psi
  test.each([
    { section: 'L4x3x1/4', feet: 4, load: 900, own: 5.8 },
    { section: 'L5x3-1/2x1/4', feet: 5, load: 902, own: 7 },
    { section: 'L5x3-1/2x5/16', feet: 6, load: 774, own: 8.7 },
    { section: 'L6x3-1/2x5/16', feet: 7, load: 804, own: 9.8 },
  ])('$section on $feet ft just reaches the allowable stress', ({ section, feet, load, own }) => {
    const given = {
      ...arched72With({ 'head.support.section': section }),
      quantities: { 'lintel.arching': 'does not arch', 'lintel.brick-load': `${load * feet} lbf`, 'lintel.load': `${((load + own) * feet).toFixed(3)} lbf`, 'lintel.effective-span': `${feet} ft` },
    }
    expectNear(valueOf(evaluate(lintelBendingStressRatio, given, lintelQuantities)), '1', 0.005)
  })

  test('metric: the same wall in millimeters gives the same stress', () => {
    const metric = arched72With({ 'opening.width': '1828.8 mm', 'wall.veneer.weight': '1.91521 kPa', 'wall.heightAboveHead': '2438.4 mm', 'head.support.bearing': '101.6 mm', 'opening.pierWidth': '1220 mm' })
    expectNear(valueOf(evaluate(lintelBendingStress, metric, lintelQuantities)), '47.57 MPa', 0.0005)
  })

  test('names what is missing', () => {
    expect(evaluate(lintelBendingStressRatio, arched72With({ 'head.support.section': null }), lintelQuantities)).toMatchObject({ status: 'notDetermined', missing: ['head.support.section'] })
  })

  test('withholds a stress beyond the allowed one where the joints above are reinforced', () => {
    const heavy = { 'wall.veneer.bond': 'stack', 'wall.heightAboveHead': '30 ft' }
    const plain = evaluate(lintelBendingStress, arched72With({ ...heavy, 'head.support.jointReinforcementCourses': 0 }), lintelQuantities)
    const reinforced = evaluate(lintelBendingStressRatio, arched72With({ ...heavy, 'head.support.jointReinforcementCourses': 2 }), lintelQuantities)
    expect(plain.status).toBe('computed')
    expect(reinforced).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold', why: expect.stringContaining('act together') as string })
    expect(evaluate(lintelBendingStress, arched72With({ 'head.support.jointReinforcementCourses': 2 }), lintelQuantities).status).toBe('computed')
  })

  test('every result is to be confirmed by a licensed professional', () => {
    for (const definition of [lintelBendingMoment, lintelBendingStress, lintelBendingStressRatio, lintelSectionModulusNeeded]) {
      expect(definition.structural).toBe(true)
      expect(evaluate(definition, arched72, lintelQuantities).notes.join()).toContain('licensed professional')
    }
  })
})
