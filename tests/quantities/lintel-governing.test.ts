import { describe, expect, test } from 'vitest'
import { quantities } from '../../src/quantities/index.ts'
import { lintelGoverning } from '../../src/quantities/lintel-governing.ts'
import { evaluate, type Given } from './inputs.ts'
import { arched72With } from './lintel-example.ts'

const judge = (given: Given) => evaluate(lintelGoverning, given, quantities)
const known = { 'wall.storiesAbove': 1, 'head.support.section': 'L4x3x1/4' }

const taken = { 'lintel.bending-stress-ratio': '0.3', 'lintel.deflection-ratio': '0.42', 'lintel.deflection': '0.06 in', 'lintel.shear-ratio': '0.02', 'lintel.bearing-stress-ratio': '0.09' }

describe('what governs', () => {
  // Worked by hand: 0.06 in of 0.3 in; 72 in of 6 ft
  test('is the check that uses most of what is allowed', () => {
    const result = judge({ ...arched72With(known), quantities: taken })
    expect(result.value).toBe('prescriptive span')
    expect(result.tables[0]?.rows.filter(([check]) => check !== 'steel specification')).toEqual([
      ['bending', 0.3, 'within what is allowed'], ['deflection', 0.42, 'within what is allowed'], ['greatest deflection', 0.2, 'within what is allowed'],
      ['shear', 0.02, 'within what is allowed'], ['bearing', 0.09, 'within what is allowed'], ['prescriptive span', 1, 'within what is allowed'],
    ])
  })

  test.each([
    { part: 'lintel.bending-stress-ratio', governing: 'bending' }, { part: 'lintel.deflection-ratio', governing: 'deflection' }, { part: 'lintel.shear-ratio', governing: 'shear' },
    { part: 'lintel.bearing-stress-ratio', governing: 'bearing' }, { part: 'lintel.specification-ratio', governing: 'steel specification' },
  ])('$part at 1.2: $governing, and it is too much', ({ part, governing }) => {
    const result = judge({ ...arched72With(known), quantities: { ...taken, [part]: '1.2' } })
    expect(result.value).toBe(governing)
    expect(result.steps).toContain(`${governing}: 1.2, too much`)
    expect(result.notes[0]).toBe('This lintel is not enough as it stands.')
  })

  test('a sag beyond the cap governs though the span would allow more', () => {
    expect(judge({ ...arched72With(known), quantities: { ...taken, 'lintel.deflection': '0.33 in' } }).value).toBe('greatest deflection')
  })

  test('says which checks are not known, and why a table does not reach', () => {
    const result = judge(arched72With({}))
    expect(result.value).toBe('deflection')
    expect(result.steps).toContain('bearing: not known; missing wall.veneer.compressiveStrength')
    expect(result.steps).toContain('prescriptive span: not known; missing wall.storiesAbove')
    expect(judge(arched72With({ 'wall.storiesAbove': 1 })).steps).toContain('prescriptive span: The span table of the code has no row for L3-1/2x3-1/2x1/4 under 1 story of brick.')
    expect(result.notes[0]).toMatch(/^Not known and able to govern instead: .*bearing/)
  })

  test('of a precast lintel goes by what its maker states', () => {
    const precast = { 'head.support.kind': 'precastLintel', 'head.support.section': null, 'head.support.lineWeight': '30 lbf/ft', 'head.support.allowableMoment': '600 lbf ft', 'head.support.allowableShear': '1200 lbf' }
    const result = judge(arched72With(precast))
    // Worked by hand: 573.8 lbf ft of 600
    expect(result.value).toBe('bending')
    expect(result.steps[0]).toMatch(/^bending: 0\.956\d, within/)
    expect(result.steps).toContain('deflection: not known; missing head.support.momentOfInertia, head.support.elasticModulus')
    expect(result.steps.join()).not.toContain('prescriptive')
  })

  test('is not known while nothing is, and says what the bending needs', () => {
    expect(judge(arched72With({ 'head.support.section': null, 'wall.storiesAbove': null }))).toMatchObject({ status: 'notDetermined', missing: ['head.support.section'] })
    expect(judge(arched72With({ 'wall.loadAbove': true }))).toMatchObject({ status: 'notDetermined', reason: 'outsidePrescriptive' })
  })

  test('is not asked of a shelf angle', () => {
    expect(judge(arched72With({ 'head.support.kind': 'shelfAngle' })).status).toBe('notApplicable')
  })
})
