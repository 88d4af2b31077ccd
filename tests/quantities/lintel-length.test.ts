import { describe, expect, test } from 'vitest'
import { lintelLength } from '../../src/quantities/lintel-length.ts'
import { amount, evaluate } from './inputs.ts'

const angle = { 'head.support.kind': 'looseSteelAngle' }

describe('least lintel length', () => {
  test.each([
    // IRC R703.8.3, bearing 4 in (from memory); worked by hand
    { name: 'a 4 ft window', width: '48 in', bearing: '4 in', length: '56 in', steps: ["48 in + 2 × 4 in = 56 in, that is 4'-8\""] },
    // Norton, Ohio, 1434.21(c): 6 in at each end
    { name: 'a city that asks for 6 in', width: '48 in', bearing: '6 in', length: '60 in', steps: ["48 in + 2 × 6 in = 60 in, that is 5'-0\""] },
    // Ontario Building Code 9.20.5.2: 150 mm
    { name: 'an opening in millimeters', width: '2100 mm', bearing: '150 mm', length: '2400 mm', steps: ['2100 mm + 2 × 150 mm = 2400 mm'] },
  ])('$name', ({ width, bearing, length, steps }) => {
    const result = evaluate(lintelLength, { facts: { ...angle, 'opening.width': width }, limits: { 'lintel.bearing-length': bearing } })
    expect(result).toMatchObject({ status: 'computed', value: amount(length), steps })
  })

  test('goes by the bearing required, whatever was measured', () => {
    const facts = { ...angle, 'opening.width': '36 in', 'head.support.bearing': ['3 15/16 in', '3 3/4 in'] }
    expect(evaluate(lintelLength, { facts, limits: { 'lintel.bearing-length': '4 in' } }).text).toBe('44 in')
  })

  test('names the rule where no bearing is in force', () => {
    expect(evaluate(lintelLength, { facts: { ...angle, 'opening.width': '36 in' } })).toMatchObject({ status: 'notDetermined', reason: 'missing', missing: ['rule lintel.bearing-length'] })
  })

  test('names the support where it is not known', () => {
    expect(evaluate(lintelLength, { facts: { 'opening.width': '36 in' }, limits: { 'lintel.bearing-length': '4 in' } }).missing).toEqual(['head.support.kind'])
  })

  test('an arch has no lintel', () => {
    expect(evaluate(lintelLength, { facts: { 'head.support.kind': 'masonryArch', 'opening.width': '36 in' } }).status).toBe('notApplicable')
  })
})
