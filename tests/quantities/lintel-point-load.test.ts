import { describe, expect, test } from 'vitest'
import { lintelBendingMoment } from '../../src/quantities/lintel-bending-stress.ts'
import { lintelDeflection } from '../../src/quantities/lintel-deflection.ts'
import { lintelImposedLoad } from '../../src/quantities/lintel-imposed-load.ts'
import { lintelLoad } from '../../src/quantities/lintel-load.ts'
import { lintelPointLoad } from '../../src/quantities/lintel-point-load.ts'
import { lintelReactionLeft, lintelReactionRight, lintelShear } from '../../src/quantities/lintel-reactions.ts'
import { amount, evaluate, valueOf } from './inputs.ts'
import { arched72With, expectNear, lintelQuantities } from './lintel-example.ts'

/** Design of Reinforced Masonry Structures, pp. 235-236, example 4.27: 12 kip, 4 ft above a lintel of 6 ft effective span, 1 ft outside its left support. */
const publishedWall = { 'opening.width': '64 in', 'head.support.bearing': '8 in', 'wall.loadAbove': true, 'wall.imposedLoad': '0 lbf/ft' }
const published = arched72With({ ...publishedWall, 'wall.pointLoad': '12 kip', 'wall.pointLoadHeight': '4 ft', 'wall.pointLoadFromJamb': '-16 in', 'wall.pointLoadPlate': '0 in' })

const onSpan = (facts: Readonly<Record<string, unknown>>) => evaluate(lintelPointLoad, { ...published, facts: { ...published.facts, ...facts } }, lintelQuantities)

describe('a point load', () => {
  // Printed: base 4.62 ft, 2597 lb/ft on the last 1.31 ft of the span
  test('spreads as in the published example', () => {
    const result = evaluate(lintelPointLoad, published, lintelQuantities)
    expectNear(valueOf(result), `${2_597 * 1.31} lbf`, 0.002)
    expect(result.steps).toEqual(['spread 0 in + 2 × 48 in / tan(60 deg) = 55.426 in', '12000 lbf / 55.426 in × 15.713 in of the span = 3402 lbf'])
  })

  test('is the same from the other side', () => {
    const mirrored = { ...published, facts: { ...published.facts, 'wall.pointLoadFromJamb': '80 in' } }
    expectNear(valueOf(evaluate(lintelPointLoad, mirrored, lintelQuantities)), '3401.9 lbf', 0.0001)
    expectNear(valueOf(evaluate(lintelReactionRight, mirrored, lintelQuantities)), `${(valueOf(evaluate(lintelReactionLeft, published, lintelQuantities)) / 4.4482216152605).toFixed(6)} lbf`, 1e-6)
  })

  // Printed: 1092 lb/ft × 1.31 ft at both ends of the span puts 1431 lb on each support; one load alone shares the same sum between them
  test('leans on the support that is nearer', () => {
    const alone = arched72With({ ...publishedWall, 'wall.veneer.weight': '5 psf', 'wall.pointLoad': `${1_092 * 4.6188} lbf`, 'wall.pointLoadHeight': '4 ft', 'wall.pointLoadFromJamb': '-16 in', 'wall.pointLoadPlate': '0 in' })
    const without = arched72With({ ...publishedWall, 'wall.veneer.weight': '5 psf', 'wall.loadAbove': false })
    const ends = [lintelReactionLeft, lintelReactionRight].map((end) => valueOf(evaluate(end, alone, lintelQuantities)) - valueOf(evaluate(end, without, lintelQuantities)))
    expectNear((ends[0] ?? NaN) + (ends[1] ?? NaN), '1431 lbf', 0.001)
    // Worked by hand: the middle of the spread is 0.655 ft from the left support of 6 ft
    expectNear(ends[0] ?? NaN, `${1_431 * (6 - 0.655) / 6} lbf`, 0.001)
    expectNear(valueOf(evaluate(lintelShear, alone, lintelQuantities)), `${(valueOf(evaluate(lintelReactionLeft, alone, lintelQuantities)) / 4.4482216152605).toFixed(6)} lbf`, 1e-6)
  })

  // Worked by hand, metric: plate 200 mm, 0.5 m up, 60 degrees: 0.2 + 1 / 1.73205 = 0.77735 m; all of it over a span of 2 m
  test('metric, wholly over the opening', () => {
    const metric = arched72With({
      'opening.width': '1900 mm', 'head.support.bearing': '100 mm', 'wall.loadAbove': true, 'wall.imposedLoad': '0 kN/m', 'wall.pointLoad': '10 kN', 'wall.pointLoadHeight': '500 mm', 'wall.pointLoadFromJamb': '950 mm', 'wall.pointLoadPlate': '200 mm',
    })
    const result = evaluate(lintelPointLoad, metric, lintelQuantities)
    expectNear(valueOf(result), '10 kN', 1e-9)
    const bare = { ...metric, facts: { ...metric.facts, 'wall.loadAbove': false, 'wall.imposedLoad': null, 'wall.pointLoad': null } }
    // Worked by hand: of a load P spread over a in the middle of L, P L / 4 − P a / 8
    expectNear(valueOf(evaluate(lintelBendingMoment, metric, lintelQuantities)) - valueOf(evaluate(lintelBendingMoment, bare, lintelQuantities)), `${10_000 * 2 / 4 - 10_000 * 0.77735 / 8} N.m`, 1e-5)
    expect(evaluate(lintelBendingMoment, metric, lintelQuantities).steps[0]).toContain('from the left support')
    expect(valueOf(evaluate(lintelDeflection, metric, lintelQuantities))).toBeGreaterThan(valueOf(evaluate(lintelDeflection, bare, lintelQuantities)))
  })

  test.each(['-40 in', '140 in'])('at %s its spread passes the opening, and the jamb is to be checked', (place) => {
    const result = onSpan({ 'wall.pointLoadFromJamb': place })
    expect(result.value).toBe(0)
    expect(result.notes[0]).toContain('nothing of it comes on the lintel. Check the brick at the jamb')
  })

  test.each([{ place: '32 in', on: '12 kip' }, { place: '-4 in', on: '12 kip' }, { place: '-4 1/64 in', on: '0 lbf' }])('a knife edge right on the lintel, at $place', ({ place, on }) => {
    expect(valueOf(onSpan({ 'wall.pointLoadHeight': '0 in', 'wall.pointLoadFromJamb': place }))).toBeCloseTo(amount(on), 6)
  })

  test('counts from the jamb where the clear opening is taken as the span', () => {
    const given = { ...published, facts: { ...published.facts, 'wall.pointLoadHeight': '0 in', 'wall.pointLoadFromJamb': '-1 in' } }
    expectNear(valueOf(evaluate(lintelPointLoad, given, lintelQuantities)), '12 kip', 1e-9)
    expect(evaluate(lintelPointLoad, { ...given, quantities: { 'lintel.effective-span': '64 in' } }, lintelQuantities).value).toBe(0)
  })

  test('without a plate is taken as a knife edge, and that is said', () => {
    expect(onSpan({ 'wall.pointLoadPlate': null }).assumptions).toContain('The plate under the point load is not known; a knife edge is taken.')
  })

  test('asks where it stands', () => {
    expect(onSpan({ 'wall.pointLoadHeight': null, 'wall.pointLoadFromJamb': null }).missing).toEqual(['wall.pointLoadFromJamb', 'wall.pointLoadHeight'])
  })

  test('that is none is not asked about', () => {
    expect(onSpan({ 'wall.loadAbove': false, 'wall.pointLoad': null, 'wall.pointLoadHeight': null }).status).toBe('notApplicable')
  })
})

describe('a floor or roof on the brick', () => {
  const roof = { 'wall.loadAbove': true, 'wall.imposedLoad': '200 lbf/ft', 'wall.pointLoad': '0 lbf' }

  // The same book, p. 231: roof loads above the arch are not transmitted to the lintel
  test('above the arch is carried past the opening', () => {
    const result = evaluate(lintelImposedLoad, arched72With({ ...roof, 'wall.imposedLoadHeight': '7 ft' }), lintelQuantities)
    expect(result.value).toBe(0)
    expect(result.steps).toEqual(['200 lbf/ft comes on above the arch of brick, which carries it past the opening'])
    expect(result.notes.join()).toContain('no load but its own weight')
  })

  // p. 222: lower than that it comes on the lintel over its whole span. Worked by hand: 200 plf × 76 in
  test('lower comes on the lintel', () => {
    const result = evaluate(lintelImposedLoad, arched72With({ ...roof, 'wall.imposedLoadHeight': '3 ft' }), lintelQuantities)
    expectNear(valueOf(result), '1266.667 lbf', 1e-6)
    expect(result.steps).toEqual(['no arching: 200 lbf/ft × 76 in = 1267 lbf'])
  })

  test('metric, where a joint takes arching away, its height is not asked', () => {
    const given = { ...arched72With({ ...roof, 'wall.imposedLoad': '3 kN/m', 'wall.movementJointAtJamb': [true, false] }), quantities: { 'lintel.effective-span': '2 m' } }
    expectNear(valueOf(evaluate(lintelImposedLoad, given, lintelQuantities)), '6 kN', 1e-9)
  })

  test('that is none is not asked about; one that is not stated is left to a professional', () => {
    expect(evaluate(lintelImposedLoad, arched72With({}), lintelQuantities).status).toBe('notApplicable')
    expect(evaluate(lintelImposedLoad, arched72With({ 'wall.loadAbove': true }), lintelQuantities)).toMatchObject({ status: 'notDetermined', reason: 'outsidePrescriptive' })
    expect(evaluate(lintelLoad, arched72With({ 'wall.loadAbove': false, 'wall.imposedLoad': '1 kN/m' }), lintelQuantities)).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
  })
})
