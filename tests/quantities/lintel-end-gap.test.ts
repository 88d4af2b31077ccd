import { describe, expect, test } from 'vitest'
import { lintelEndGap, lintelThermalMovement } from '../../src/quantities/lintel-end-gap.ts'
import { lintelLength } from '../../src/quantities/lintel-length.ts'
import { amount, evaluate, valueOf } from './inputs.ts'
import { arched72With, expectNear } from './lintel-example.ts'

const buildsOn = [lintelThermalMovement, lintelLength]
const gap = (facts: Readonly<Record<string, unknown>>) => evaluate(lintelEndGap, arched72With(facts), buildsOn)

describe('space at the lintel end', () => {
  // BIA Technical Note 18A (2006): 1/8 to 1/4 in at the ends of a lintel beside a joint
  test.each([
    { 'wall.movementJointAtJamb': [true, false] },
    { 'wall.movementJointAtJamb': [true, null] },
    { 'wall.movementJointAtJamb': false, 'head.support.bearingSeat': ['solidMasonry', 'slipPlane'] },
    { 'wall.movementJointAtJamb': null, 'head.support.bearingSeat': ['slipPlane', null] },
  ])('is an eighth to a quarter of an inch: %j', (facts) => {
    expect(gap(facts)).toMatchObject({ status: 'computed', value: { least: amount('1/8 in'), greatest: amount('1/4 in') }, text: '1/8 in to 1/4 in' })
  })

  test('is not asked of an end that is built in', () => {
    expect(gap({ 'wall.movementJointAtJamb': false, 'head.support.bearingSeat': 'mortarBed' }).status).toBe('notApplicable')
    expect(gap({ 'wall.movementJointAtJamb': true, 'head.support.kind': 'precastLintel' }).status).toBe('notApplicable')
  })

  test('asks while it may be free', () => {
    expect(gap({ 'wall.movementJointAtJamb': [false, null], 'head.support.bearingSeat': 'mortarBed' }).missing).toEqual(['wall.movementJointAtJamb'])
    expect(gap({ 'wall.movementJointAtJamb': false, 'head.support.bearingSeat': ['mortarBed', null] }).missing).toEqual(['head.support.bearingSeat'])
  })

  test('says how far steel and brick move, and when the least space is less than that', () => {
    const facts = { 'wall.movementJointAtJamb': true, 'head.support.length': '10 ft', 'exposure.temperatureRange': '100 degF' }
    expect(gap(facts).steps).toEqual(['Steel and brick move 0.03 in against each other; where one end is held, the free end takes all of it'])
    expect(gap(facts).notes.join()).not.toContain('leave more')
    // Worked by hand: 480 in × 2.5 millionths × 150 °F = 0.18 in
    expect(gap({ ...facts, 'head.support.length': '40 ft', 'exposure.temperatureRange': '150 degF' }).notes).toContain('The least space is smaller than the movement; leave more than 0.18 in.')
  })
})

describe('movement of the lintel against the brick', () => {
  // Worked by hand from 6.5 and 4 millionths per degree Fahrenheit: 120 in × 2.5e-6 × 100 = 0.03 in
  test('of 10 ft over 100 degrees', () => {
    const result = evaluate(lintelThermalMovement, arched72With({ 'head.support.length': '10 ft', 'exposure.temperatureRange': '100 degF' }))
    expectNear(valueOf(result), '0.03 in', 1e-6)
    expect(result.steps[0]).toContain('= 0.03 in')
  })

  // Worked by hand: 3 m × 4.5e-6 / K × 50 K = 0.675 mm
  test('metric', () => {
    expectNear(valueOf(evaluate(lintelThermalMovement, arched72With({ 'head.support.length': '3 m', 'exposure.temperatureRange': '50 K' }))), '0.675 mm', 1e-6)
  })

  test('takes the least length where none was measured, and asks for the range', () => {
    expect(evaluate(lintelThermalMovement, arched72With({ 'exposure.temperatureRange': '100 degF' }), buildsOn).assumptions).toEqual(['The length of the lintel is not known; the least length is taken.'])
    expect(evaluate(lintelThermalMovement, arched72With({}), buildsOn).missing).toEqual(['exposure.temperatureRange'])
  })
})
