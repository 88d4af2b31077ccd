import { describe, expect, test } from 'vitest'
import { lintelBrickOverhang, lintelHorizontalLeg, lintelThickness } from '../../src/quantities/lintel-legs.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const legs = [lintelHorizontalLeg, lintelThickness]

function given(section: string | null, facts: Readonly<Record<string, unknown>> = {}) {
  return { facts: { 'head.support.kind': 'looseSteelAngle', 'head.support.section': section, ...facts } }
}

describe('flat leg and thickness', () => {
  test.each([
    { section: 'L5x3-1/2x5/16', longLeg: 'vertical', leg: '3 1/2 in', thickness: '5/16 in' },
    { section: 'L5x3-1/2x5/16', longLeg: 'horizontal', leg: '5 in', thickness: '5/16 in' },
    { section: 'L3x4x1/4', longLeg: null, leg: '4 in', thickness: '1/4 in' },
    { section: '2L6x3-1/2x5/16', longLeg: null, leg: '3 1/2 in', thickness: '5/16 in' },
    { section: 'L127x89x7.9', longLeg: 'vertical', leg: '89 mm', thickness: '7.9 mm' },
    { section: 'L3x3x1/4', longLeg: 'horizontal', leg: '3 in', thickness: '1/4 in' },
  ])('$section, long leg $longLeg', ({ section, longLeg, leg, thickness }) => {
    expect(valueOf(evaluate(lintelHorizontalLeg, given(section, { 'head.support.longLeg': longLeg })))).toBe(amount(leg))
    expect(valueOf(evaluate(lintelThickness, given(section)))).toBe(amount(thickness))
  })

  test('says that the first leg is taken to stand', () => {
    expect(evaluate(lintelHorizontalLeg, given('L5x3-1/2x5/16')).assumptions).toHaveLength(1)
    expect(evaluate(lintelHorizontalLeg, given('L5x3-1/2x5/16', { 'head.support.longLeg': 'vertical' })).assumptions).toEqual([])
  })

  test('is asked of angles held by the frame too, not of precast', () => {
    expect(evaluate(lintelThickness, given('L5x5x5/16', { 'head.support.kind': 'shelfAngle' })).text).toBe('5/16 in')
    expect(evaluate(lintelThickness, given(null, { 'head.support.kind': 'precastLintel' })).status).toBe('notApplicable')
  })

  test('names the section while it is not known', () => {
    expect(evaluate(lintelThickness, given(null)).missing).toEqual(['head.support.section'])
  })
})

describe('brick past the flat leg', () => {
  // Worked by hand for 3 5/8 in brick and 1/4 in steel with the standing leg against the back of the brick
  test.each([
    { section: 'L3-1/2x3-1/2x1/4', overhang: '3/8 in' },
    { section: 'L3x3x1/4', overhang: '7/8 in' },
    { section: 'L2-1/2x2-1/2x1/4', overhang: '1 3/8 in' },
    { section: 'L4x4x1/4', overhang: '-1/8 in' },
  ])('$section: $overhang', ({ section, overhang }) => {
    const result = evaluate(lintelBrickOverhang, given(section, { 'wall.veneer.thickness': '3 5/8 in' }), legs)
    expect(valueOf(result)).toBe(amount(overhang))
  })

  test('a third of the brick decides between a 3 in and a 2 1/2 in leg', () => {
    // Two thirds of the wythe bearing: BIA Technical Notes 28B (2005)
    const past = (section: string) => valueOf(evaluate(lintelBrickOverhang, given(section, { 'wall.veneer.thickness': '3 5/8 in' }), legs))
    const third = amount('3 5/8 in') / 3
    expect(past('L3x3x1/4')).toBeLessThan(third)
    expect(past('L2-1/2x2-1/2x1/4')).toBeGreaterThan(third)
  })

  test('names the brick while it is not measured', () => {
    expect(evaluate(lintelBrickOverhang, given('L3x3x1/4'), legs).missing).toEqual(['wall.veneer.thickness'])
  })
})
