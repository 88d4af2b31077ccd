import { describe, expect, test } from 'vitest'
import { lintelEffectiveSpan } from '../../src/quantities/lintel-effective-span.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const angle = { 'head.support.kind': 'looseSteelAngle' }
const limits = { 'lintel.bearing-length': '4 in' }

describe('effective span', () => {
  test.each([
    // Design of Reinforced Masonry Structures, p. 231, example 4.26(c): 8.67 ft
    { name: '8 ft clear on 8 in', width: '8 ft', bearing: '8 in', span: '8 ft 8 in' },
    // the same, p. 230: 6 ft
    { name: '5 ft 4 in clear on 8 in', width: '5 ft 4 in', bearing: '8 in', span: '6 ft' },
    // worked by hand
    { name: 'ends that differ', width: '48 in', bearing: ['4 in', '4 1/4 in'], span: '52 1/8 in' },
    { name: 'millimeters', width: '1200 mm', bearing: ['100 mm', '150 mm'], span: '1325 mm' },
    { name: 'no bearing at all', width: '48 in', bearing: '0 in', span: '48 in' },
  ])('$name', ({ width, bearing, span }) => {
    const result = evaluate(lintelEffectiveSpan, { facts: { ...angle, 'opening.width': width, 'head.support.bearing': bearing }, limits })
    expect(result).toMatchObject({ status: 'computed', value: amount(span), assumptions: [] })
  })

  test('takes the required bearing at the end that is not measured, and says so', () => {
    const result = evaluate(lintelEffectiveSpan, { facts: { ...angle, 'opening.width': '48 in', 'head.support.bearing': ['6 in', null] }, limits })
    expect(valueOf(result)).toBe(amount('53 in'))
    expect(result.assumptions).toEqual(['The right bearing is not known; the least bearing of the rule in force is taken.'])
  })

  test('names the bearing when no rule gives one either', () => {
    const result = evaluate(lintelEffectiveSpan, { facts: { ...angle, 'opening.width': '48 in' } })
    expect(result).toMatchObject({ status: 'notDetermined', missing: ['head.support.bearing'] })
  })
})
