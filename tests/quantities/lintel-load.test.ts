import { describe, expect, test } from 'vitest'
import { beamLoadOf, lintelBrickLoad, lintelLoad, lintelLoadWithoutArching } from '../../src/quantities/lintel-load.ts'
import { lintelSelfWeight } from '../../src/quantities/lintel-self-weight.ts'
import { evaluate, valueOf } from './inputs.ts'
import { arched72, arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

describe('brick the lintel carries', () => {
  // Worked by hand: 40 psf × (76 in)² / 4 = 401.1 lbf
  test('is the triangle under the arch', () => {
    const result = evaluate(lintelBrickLoad, arched72, lintelQuantities)
    expectNear(valueOf(result), '401.1 lbf', 0.0002)
    expect(result.steps).toEqual(['40 psf × (76 in)² / 4 × tan(45 deg) = 401.1 lbf'])
  })

  // UFC 3-310-05A, lintel example: 50 psf on 4 ft is 200 lbf
  test('agrees with the published example', () => {
    const given = { ...arched72With({ 'wall.veneer.weight': '50 psf' }), quantities: { 'lintel.effective-span': '4 ft', 'lintel.arching': 'arches' } }
    expectNear(valueOf(evaluate(lintelBrickLoad, given, lintelQuantities)), '200 lbf', 1e-9)
  })

  // Worked by hand: 1.92 kN/m2 × 2 m × 2 m / 4 = 1.92 kN
  test('works in metric', () => {
    const given = { ...arched72With({ 'wall.veneer.weight': '1.92 kN/m2' }), quantities: { 'lintel.effective-span': '2 m', 'lintel.arching': 'arches' } }
    expectNear(valueOf(evaluate(lintelBrickLoad, given, lintelQuantities)), '1.92 kN', 1e-9)
  })

  // Worked by hand: 40 psf × 8 ft × 76 in = 2026.7 lbf
  test('is all of it in stack bond', () => {
    const result = evaluate(lintelBrickLoad, arched72With({ 'wall.veneer.bond': 'stack' }), lintelQuantities)
    expectNear(valueOf(result), '2026.667 lbf', 1e-6)
  })

  test('takes a usual weight of brick and says so', () => {
    const result = evaluate(lintelBrickLoad, arched72With({ 'wall.veneer.weight': null }), lintelQuantities)
    expectNear(valueOf(result), '401.1 lbf', 0.0002)
    expect(result.assumptions).toEqual(['The weight of the veneer is not known; the usual weight of one wythe of brick is taken.'])
  })

  test('names the height above when nothing else decides about arching', () => {
    expect(evaluate(lintelBrickLoad, arched72With({ 'wall.heightAboveHead': null }), lintelQuantities)).toMatchObject({ status: 'notDetermined', missing: ['wall.heightAboveHead'] })
  })
})

describe('brick over the span if it did not arch', () => {
  test('is shown where the brick arches', () => {
    const result = evaluate(lintelLoadWithoutArching, arched72, lintelQuantities)
    expectNear(valueOf(result), '2026.667 lbf', 1e-6)
    expect(result.steps).toEqual(['40 psf × 96 in × 76 in = 2027 lbf'])
  })

  // An engineers' forum: 5 ft 4 in of brick at 40 psf is 213 plf, here over 10 ft
  test('agrees with the published check', () => {
    const given = { ...arched72With({ 'wall.heightAboveHead': '5 ft 4 in' }), quantities: { 'lintel.effective-span': '10 ft' } }
    expectNear(valueOf(evaluate(lintelLoadWithoutArching, given)), '2130 lbf', 0.02)
  })

  test('says that other loads are not counted while they are not known', () => {
    expect(evaluate(lintelLoadWithoutArching, arched72With({ 'wall.loadAbove': null }), lintelQuantities).notes).toContain('Nothing but the brick is counted; whether anything else rests on it is not known.')
    expect(evaluate(lintelLoadWithoutArching, arched72, lintelQuantities).notes.join()).not.toContain('Nothing but the brick')
  })

  test('is left to a professional under other loads', () => {
    expect(evaluate(lintelLoadWithoutArching, arched72With({ 'wall.loadAbove': true }), lintelQuantities)).toMatchObject({ status: 'notDetermined', reason: 'outsidePrescriptive' })
  })
})

describe('load on the lintel', () => {
  // Worked by hand: 401.1 lbf + 5.8 plf × 76 in = 437.8 lbf
  test('is brick and steel', () => {
    const result = evaluate(lintelLoad, arched72, lintelQuantities)
    expectNear(valueOf(result), '437.8 lbf', 0.0002)
    expect(result.steps).toEqual(['401.1 lbf of brick + 36.73 lbf of steel = 437.8 lbf'])
  })

  test('weighs two angles in a pair', () => {
    const one = valueOf(evaluate(lintelLoad, arched72With({ 'head.support.section': 'L6x3-1/2x5/16' }), lintelQuantities))
    const pair = valueOf(evaluate(lintelLoad, arched72With({ 'head.support.section': '2L6x3-1/2x5/16' }), lintelQuantities))
    // 9.8 plf × 76 in
    expectNear(pair - one, '62.067 lbf', 0.001)
  })

  test('asks about other loads even when something else took arching away', () => {
    const result = evaluate(lintelLoad, arched72With({ 'wall.veneer.bond': 'stack', 'wall.loadAbove': null }), lintelQuantities)
    expect(result).toMatchObject({ status: 'notDetermined', missing: ['wall.loadAbove'] })
  })

  test('is left to a professional under other loads and for an angle more slender than those of the table', () => {
    expect(evaluate(lintelLoad, arched72With({ 'wall.loadAbove': true }), lintelQuantities).reason).toBe('outsidePrescriptive')
    expect(evaluate(lintelLoad, arched72With({ 'head.support.section': 'L9x4x1/4' }), lintelQuantities)).toMatchObject({ reason: 'outsidePrescriptive', why: expect.stringContaining('L9x4x1/4') as string })
  })

  // Worked by hand: 401.1 lbf + 30 plf × 76 in = 591.1 lbf
  test('of a precast lintel asks for its own weight', () => {
    const precast = { 'head.support.kind': 'precastLintel', 'head.support.section': null }
    const result = evaluate(lintelLoad, arched72With({ ...precast, 'head.support.lineWeight': '30 lbf/ft' }), lintelQuantities)
    expectNear(valueOf(result), '591.11 lbf', 0.0001)
    expect(result.steps).toEqual(['401.1 lbf of brick + 190 lbf of lintel = 591.1 lbf'])
    expect(evaluate(lintelLoad, arched72With(precast), lintelQuantities).missing).toEqual(['head.support.lineWeight'])
  })

  test('is not asked of a shelf angle', () => {
    expect(evaluate(lintelLoad, arched72With({ 'head.support.kind': 'shelfAngle' }), lintelQuantities).status).toBe('notApplicable')
  })

  // Worked by hand: all the brick 2026.7 lbf, 36.7 lbf of steel, 100 plf of floor on 76 in
  test('counts a floor where the brick does not arch, and says that the code lets none stand there', () => {
    const result = evaluate(lintelLoad, arched72With({ 'wall.loadAbove': true, 'wall.imposedLoad': '100 lbf/ft', 'wall.imposedLoadHeight': '40 in', 'wall.pointLoad': '0 lbf' }), lintelQuantities)
    expect(result.steps).toEqual(['2027 lbf of brick + 36.73 lbf of steel + 633.3 lbf of floor or roof load = 2697 lbf'])
    expect(result.notes.join()).toContain('no load but its own weight')
  })
})

describe('weight of the lintel', () => {
  // AISC weights per foot on 76 in, worked by hand
  test.each([{ section: 'L3-1/2x3-1/2x1/4', weighs: '36.733 lbf' }, { section: '2L6x3-1/2x5/16', weighs: '124.133 lbf' }])('$section', ({ section, weighs }) => {
    expectNear(valueOf(evaluate(lintelSelfWeight, arched72With({ 'head.support.section': section }), lintelQuantities)), weighs, 0.0001)
  })

  // Worked by hand: 1.2 kN/m on 2 m
  test('metric, of a precast lintel', () => {
    const given = { ...arched72With({ 'head.support.kind': 'precastLintel', 'head.support.section': null, 'head.support.lineWeight': '1.2 kN/m' }), quantities: { 'lintel.effective-span': '2 m' } }
    expectNear(valueOf(evaluate(lintelSelfWeight, given)), '2.4 kN', 1e-9)
  })
})

test('the steel is spread evenly whether or not the brick arches', () => {
  expect(beamLoadOf('arches', 400, 30)).toEqual({ triangle: 400, uniform: 30 })
  expect(beamLoadOf('does not arch', 400, 30)).toEqual({ triangle: 0, uniform: 430 })
})

test('a load on a part of the span stays what it is', () => {
  const part = { shape: 'part', total: 50, from: 0, to: 0.5 } as const
  expect(beamLoadOf('arches', 400, 30, part)).toEqual({ triangle: 400, uniform: 30, part })
  expect(beamLoadOf('does not arch', 400, 30, { ...part, total: 0 })).toEqual({ triangle: 0, uniform: 430 })
})
