import { describe, expect, test } from 'vitest'
import type { Table } from '../../src/catalog/reference.ts'
import { headWeepOpenArea, sillWeepOpenArea } from '../../src/quantities/weep-open-area.ts'
import { evaluate, valueOf, type Given } from './inputs.ts'

const over = (facts: Record<string, unknown>, count = '3', length = '56 in', tables: Given['tables'] = {}): Given => ({
  facts: { 'wall.veneer.unit': 'modular', 'wall.veneer.headCourse': 'stretcher', ...facts }, tables, quantities: { 'weeps.head-count': count, 'flashing.head-pan-length': length, 'weeps.sill-count': count, 'sill.flashing-length': length },
})

describe('clear opening over the head', () => {
  test.each([
    // worked by hand: 3 × 3/8 × 2 1/4 in2 in 56 in = 0.5424 in2/ft, and so on
    { name: 'open stretcher joints', facts: { 'head.weeps.kind': 'openHeadJoint' }, squareInches: 3 * 0.375 * 2.25 },
    { name: 'open soldier joints', facts: { 'head.weeps.kind': 'openHeadJoint', 'wall.veneer.headCourse': 'soldier' }, squareInches: 3 * 0.375 * 7.625 },
    { name: 'open rowlock joints', facts: { 'head.weeps.kind': 'openHeadJoint', 'wall.veneer.headCourse': 'rowlock' }, squareInches: 3 * 0.375 * 3.625 },
    { name: 'a half-high opening as drawn, 1/2 in wide', facts: { 'head.weeps.kind': 'openHeadJoint', 'head.weeps.openHeight': '1 in', 'head.weeps.diameter': '1/2 in' }, squareInches: 3 * 0.5 * 1 },
    // π × (3/8)² / 4 = 0.11045 in2
    { name: 'tubes', facts: { 'head.weeps.kind': 'tube', 'head.weeps.diameter': '3/8 in' }, squareInches: 3 * 0.110447 },
  ])('$name', ({ facts, squareInches }) => {
    expect(valueOf(evaluate(headWeepOpenArea, over(facts)))).toBeCloseTo((squareInches * 645.16) / (56 * 0.0254), 2)
  })

  test('in words', () => {
    expect(evaluate(headWeepOpenArea, over({ 'head.weeps.kind': 'tube', 'head.weeps.diameter': '3/8 in' }))).toMatchObject({ text: '0.071 in2/ft', steps: ['3 × 0.1104 in2 (71.26 mm2) in 56 in'], assumptions: [] })
  })

  test('of metric brick', () => {
    // worked by hand: 4 joints of 10 mm by 65 mm in 1.5 m = 1733.3 mm2/m
    const metric: Table = {
      table: 'masonry.brick-units', title: 'Metric brick', publication: 'test', edition: '1', locator: 'test', evidence: 'memory', lastReviewed: '2026-11-26', columns: {},
      rows: [{ unit: 'modular', thickness: '102.5 mm', height: '65 mm', length: '215 mm', courses: 1, coursingHeight: '75 mm' }],
    }
    const given = over({ 'head.weeps.kind': 'openHeadJoint' }, '4', '1500 mm', { 'masonry.brick-units': metric })
    expect(valueOf(evaluate(headWeepOpenArea, { ...given, parameters: { 'masonry.joint-thickness': '10 mm' } }))).toBeCloseTo(1733.33, 2)
  })

  test('says what it took', () => {
    const result = evaluate(headWeepOpenArea, over({}))
    expect(result.assumptions).toEqual(expect.arrayContaining([expect.stringMatching(/No kind of weep/), expect.stringMatching(/width of the open joints/), expect.stringMatching(/whole joint/)]))
  })

  test.each(['cellVent', 'mesh', 'wick', 'rope'])('gives no figure for %s, and why', (kind) => {
    expect(evaluate(headWeepOpenArea, over({ 'head.weeps.kind': kind }))).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold', why: expect.stringMatching(/clear/) as unknown })
  })

  test('names the diameter of a tube', () => {
    expect(evaluate(headWeepOpenArea, over({ 'head.weeps.kind': 'tube' })).missing).toEqual(['head.weeps.diameter'])
  })

  test('does not apply where there are no weeps, and does not hold among stones', () => {
    expect(evaluate(headWeepOpenArea, over({ 'head.weeps.kind': 'none' })).status).toBe('notApplicable')
    expect(evaluate(headWeepOpenArea, over({ 'head.weeps.kind': 'openHeadJoint', 'wall.veneer.headCourse': 'stone' })).reason).toBe('methodDoesNotHold')
  })
})

describe('clear opening under the sill', () => {
  test.each([
    // worked by hand: joints between rowlocks stand as high as the brick is thick, between headers as high as the brick
    { name: 'rowlocks', facts: { 'sill.kind': 'brickRowlock' }, squareInches: 3 * 0.375 * 3.625 },
    { name: 'headers', facts: { 'sill.kind': 'brickHeader' }, squareInches: 3 * 0.375 * 2.25 },
    { name: 'tubes under a slab', facts: { 'sill.kind': 'stone', 'sill.weeps.kind': 'tube', 'sill.weeps.diameter': '1/4 in' }, squareInches: 3 * 0.0490874 },
  ])('$name', ({ facts, squareInches }) => {
    expect(valueOf(evaluate(sillWeepOpenArea, over({ 'sill.weeps.kind': 'openHeadJoint', ...facts })))).toBeCloseTo((squareInches * 645.16) / (56 * 0.0254), 2)
  })

  test('says an assumption once, however often it was made', () => {
    const { assumptions } = evaluate(sillWeepOpenArea, over({ 'sill.kind': 'brickRowlock' }))
    expect(assumptions.filter((one) => one.startsWith('No kind of weep'))).toHaveLength(1)
  })

  test('does not hold for open joints under a slab', () => {
    expect(evaluate(sillWeepOpenArea, over({ 'sill.weeps.kind': 'openHeadJoint', 'sill.kind': 'stone' })).reason).toBe('methodDoesNotHold')
  })
})
