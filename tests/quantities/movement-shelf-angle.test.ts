import { describe, expect, test } from 'vitest'
import { movementShelfAngleGap } from '../../src/quantities/movement-shelf-angle.ts'
import { movementStrain } from '../../src/quantities/movement-strain.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const inch_nm = 25_400_000
/** BIA Technical Notes 18A, 2006: at least 1/4 in below a shelf angle. */
const limits = { 'movement.shelf-angle-gap': '1/4 in' } as const
const shelf = { 'head.support.kind': 'shelfAngle', 'exposure.freezesWet': false }

const gap = (facts: Record<string, unknown>) => evaluate(movementShelfAngleGap, { facts: { ...shelf, ...facts }, limits }, [movementStrain])

describe('room under a shelf angle', () => {
  test('takes 0.06 in of moisture and 0.06 in of warmth over a story of 10 ft', () => {
    // The Construction Specifier, September 2017: 0.0005 × 120 in, and 0.000004 × (140 − 10) × 120 in; width worked by hand: 0.1224 / 0.5 + 0.125
    const result = gap({ 'wall.storyHeight': '10 ft', 'exposure.temperatureRange': '130 °F' })
    expect(result.steps[0]).toBe('120 in × 0.00102 = 0.122 in')
    expect(valueOf(result) / inch_nm).toBeCloseTo(0.3698, 4)
  })

  test('in SI: 3 m × 0.00086 / 0.5 + 1/8 in', () => {
    // worked by hand: 5.16 + 3.175 mm
    expect(valueOf(gap({ 'wall.storyHeight': '3 m', 'exposure.temperatureRange': '50 °C' })) / 1e6).toBeCloseTo(8.335, 6)
  })

  test('is never less than 1/4 in, and leaves the frame to a licensed professional', () => {
    const result = gap({ 'wall.storyHeight': '4 ft', 'exposure.temperatureRange': '50 °F' })
    expect(result).toMatchObject({ value: amount('1/4 in'), notes: [expect.stringMatching(/creep/), expect.stringMatching(/licensed professional/)] })
  })

  test('does not apply to a loose lintel, and names the height where it is missing', () => {
    expect(gap({ 'head.support.kind': 'looseSteelAngle', 'wall.storyHeight': '10 ft' }).status).toBe('notApplicable')
    expect(gap({}).missing).toEqual(['wall.storyHeight'])
  })
})
