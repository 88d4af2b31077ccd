import { describe, expect, test } from 'vitest'
import { lintelArching } from '../../src/quantities/lintel-arching.ts'
import { evaluate } from './inputs.ts'
import { arched72, arched72With, lintelQuantities } from './lintel-example.ts'

const judge = (facts: Readonly<Record<string, unknown>>) => evaluate(lintelArching, arched72With(facts), lintelQuantities)

describe('arching', () => {
  test('brick in running bond with enough of it above and beside the opening arches', () => {
    const result = evaluate(lintelArching, arched72, lintelQuantities)
    expect(result).toMatchObject({ status: 'computed', value: 'arches' })
    expect(result.steps).toHaveLength(6)
    expect(result.steps.every((step) => step.startsWith('met: '))).toBe(true)
  })

  // Worked by hand from Design of Reinforced Masonry Structures, pp. 218-219: 76 in / 2 + 8 in = 46 in
  test.each([
    { above: '46 in', value: 'arches' },
    { above: '45 63/64 in', value: 'does not arch' },
    { above: '1168.4 mm', value: 'arches' },
    { above: '1168 mm', value: 'does not arch' },
  ])('with $above of brick above it $value', ({ above, value }) => {
    const result = judge({ 'wall.heightAboveHead': above })
    expect(result.value).toBe(value)
    expect(result.steps.some((step) => step.includes('46 in needed'))).toBe(true)
  })

  test.each([
    { name: 'stack bond', facts: { 'wall.veneer.bond': 'stack' }, step: 'not met: units overlap in stack bond' },
    { name: 'one short bearing', facts: { 'head.support.bearing': ['4 in', '3 15/16 in'] }, step: 'not met: bearing 4 in and 3 15/16 in, 4 in needed' },
    { name: 'a joint at one jamb', facts: { 'wall.movementJointAtJamb': [false, true] }, step: 'not met: no movement joint at the jambs' },
    { name: 'a floor on the brick', facts: { 'wall.loadAbove': true }, step: 'not met: a floor, roof or point load rests on the brick above, at a level that is not known' },
    { name: 'a corner', facts: { 'opening.atCorner': true }, step: 'not met: masonry at both jambs; the opening runs round a corner' },
    // BS 5977-1 as quoted by engineers: the greater of 600 mm and 0.2 of the clear span
    { name: 'a narrow pier', facts: { 'opening.pierWidth': ['599 mm', '4 ft'] }, step: 'not met: masonry beside the opening 599 mm and 48 in, 600 mm needed to take the thrust' },
  ])('$name takes arching away', ({ facts, step }) => {
    const result = judge(facts)
    expect(result.value).toBe('does not arch')
    expect(result.steps).toContain(step)
  })

  // The same conditions one at a time, each just met: a joint, a corner, a pier, bond, bearing and cover have their reason either way
  test.each([
    { facts: { 'wall.veneer.bond': 'thirdRunning' }, step: 'met: units overlap in thirdRunning bond' },
    { facts: { 'head.support.bearing': ['4 in', '6 in'], 'wall.heightAboveHead': '10 ft' }, step: 'met: bearing 4 in and 6 in, 4 in needed' },
    { facts: { 'wall.movementJointAtJamb': [false, false] }, step: 'met: no movement joint at the jambs' },
    { facts: { 'opening.atCorner': false }, step: 'met: masonry beside the opening 48 in and 48 in, 600 mm needed to take the thrust' },
    { facts: { 'opening.pierWidth': ['600 mm', '4 ft'] }, step: 'met: masonry beside the opening 600 mm and 48 in, 600 mm needed to take the thrust' },
    { facts: { 'wall.loadAbove': false }, step: 'met: no floor, roof or point load on the brick above' },
  ])('$step', ({ facts, step }) => {
    const result = judge(facts)
    expect(result.value).toBe('arches')
    expect(result.steps).toContain(step)
  })

  // Design of Reinforced Masonry Structures, p. 222: at half the effective span and 8 in or higher the arch carries a floor or roof past the opening
  test.each([
    { at: '46 in', value: 'arches', step: 'met: floor or roof load 46 in above the lintel, 46 in needed for the brick to carry it past the opening' },
    { at: '45 63/64 in', value: 'does not arch', step: 'not met: floor or roof load 45 63/64 in above the lintel, 46 in needed for the brick to carry it past the opening' },
    { at: '1169 mm', value: 'arches', step: 'met: floor or roof load 1169 mm above the lintel, 46 in needed for the brick to carry it past the opening' },
  ])('with a roof $at above the lintel it $value', ({ at, value, step }) => {
    const result = judge({ 'wall.loadAbove': true, 'wall.imposedLoad': '200 lbf/ft', 'wall.imposedLoadHeight': at })
    expect(result.value).toBe(value)
    expect(result.steps).toContain(step)
  })

  test('asks how high the floor comes on', () => {
    expect(judge({ 'wall.loadAbove': true, 'wall.imposedLoad': '200 lbf/ft' })).toMatchObject({ status: 'notDetermined', missing: ['wall.imposedLoadHeight'] })
  })

  // The same book, p. 235, example 4.27: the triangle of brick stays under two point loads
  test('a point load does not take it away', () => {
    const result = judge({ 'wall.loadAbove': true, 'wall.pointLoad': '12 kip' })
    expect(result.value).toBe('arches')
    expect(result.steps).toContain('met: a point load does not take arching away; its spread is counted on the lintel')
  })

  test('a description that contradicts itself decides nothing', () => {
    expect(judge({ 'wall.loadAbove': false, 'wall.imposedLoad': '200 lbf/ft' })).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
  })

  test('a wide opening needs wider piers: a fifth of its width', () => {
    expect(judge({ 'opening.width': '12 ft', 'opening.pierWidth': '28 in' }).steps.join()).toContain('28 in, 731.52 mm needed')
  })

  test('one condition that fails decides, whatever else is not known', () => {
    const result = judge({ 'wall.veneer.bond': 'stack', 'wall.heightAboveHead': null, 'opening.pierWidth': null, 'wall.movementJointAtJamb': [false, null] })
    expect(result.value).toBe('does not arch')
    expect(result.steps.some((step) => step.includes('movement joint'))).toBe(false)
  })

  test('names what is missing while nothing decides', () => {
    const result = judge({ 'wall.movementJointAtJamb': [false, null], 'wall.loadAbove': null })
    expect(result).toMatchObject({ status: 'notDetermined', reason: 'missing', missing: ['wall.movementJointAtJamb', 'wall.loadAbove'] })
  })

  test('says that an unmeasured bearing is taken as required', () => {
    const result = judge({ 'head.support.bearing': ['4 in', null] })
    expect(result.value).toBe('arches')
    expect(result.assumptions).toEqual(['The right bearing is not known; the least bearing of the rule in force is taken.'])
  })

  test('a shelf angle is not asked', () => {
    expect(judge({ 'head.support.kind': 'shelfAngle' }).status).toBe('notApplicable')
  })
})
