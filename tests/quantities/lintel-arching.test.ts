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
    { name: 'a floor on the brick', facts: { 'wall.loadAbove': true }, step: 'not met: no floor, roof or point load on the brick above' },
    { name: 'a corner', facts: { 'opening.atCorner': true }, step: 'not met: masonry at both jambs; the opening runs round a corner' },
    // BS 5977-1 as quoted by engineers: the greater of 600 mm and 0.2 of the clear span
    { name: 'a narrow pier', facts: { 'opening.pierWidth': ['599 mm', '4 ft'] }, step: 'not met: masonry beside the opening 599 mm and 48 in, 600 mm needed to take the thrust' },
  ])('$name takes arching away', ({ facts, step }) => {
    const result = judge(facts)
    expect(result.value).toBe('does not arch')
    expect(result.steps).toContain(step)
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
