import { describe, expect, test } from 'vitest'
import { headPanLength } from '../../src/quantities/head-flashing-pan.ts'
import { sillFlashingLength } from '../../src/quantities/sill-pan.ts'
import { sillWeepCount } from '../../src/quantities/weep-layout.ts'
import { headWeepPositions, sillWeepPositions } from '../../src/quantities/weep-positions.ts'
import { amount, evaluate, type Given } from './inputs.ts'

/** IRC R703.8.6 (from memory); BIA Technical Notes 28B (2005) and 36 (1982); 8 in past the jamb is common practice, no source. */
const limits = {
  'weep.spacing': { text: '33 in', comparator: 'notMoreThan' }, 'weep.spacing-open-head-joint': { text: '24 in', comparator: 'notMoreThan' },
  'weep.sill-spacing-open-head-joint': { text: '24 in', comparator: 'notMoreThan' }, 'weep.sill-spacing-wick': { text: '16 in', comparator: 'notMoreThan' }, 'flashing.past-jamb': '8 in',
} as const

describe('places of the weeps over the head', () => {
  test('by the number of the head joint, from the dam and from the jamb', () => {
    // worked by hand: 8 in past each jamb of a 40 in opening; joints every 8 in, weeps in the 1st, 4th and 6th
    const facts = { 'wall.veneer.unit': 'modular', 'head.weeps.kind': 'openHeadJoint', 'opening.width': '40 in', 'opening.headShape': 'flat', 'head.support.kind': 'masonryArch', 'head.flashing.continuousPastOpening': false }
    const result = evaluate(headWeepPositions, { facts, limits }, [headPanLength])
    expect(result.text).toBe('8 in, 32 in, 48 in')
    expect(result.tables[0]?.rows).toEqual([[1, 1, amount('8 in'), 0], [2, 4, amount('32 in'), amount('24 in')], [3, 6, amount('48 in'), amount('40 in')]])
  })

  test('leaves the jamb out where it is not known how far the flashing runs past it', () => {
    const given: Given = { facts: { 'wall.veneer.unit': 'modular', 'head.weeps.kind': 'openHeadJoint' }, limits: { ...limits, 'flashing.past-jamb': undefined }, quantities: { 'flashing.head-pan-length': '16 in' } }
    expect(evaluate(headWeepPositions, given).tables[0]?.rows).toEqual([[1, 1, amount('8 in'), null]])
  })
})

describe('places of the weeps under the sill', () => {
  const under = (facts: Record<string, unknown>) => evaluate(sillWeepPositions, { facts: { 'wall.veneer.unit': 'modular', 'opening.width': '40 in', 'sill.flashing.extensionPastJamb': '8 in', 'sill.weeps.kind': 'openHeadJoint', ...facts }, limits }, [sillFlashingLength])

  test('between rowlocks', () => {
    // worked by hand: 2 5/8 in from joint to joint, 21 joints in 56 in, at most 9 apart: the 1st, 10th, 19th and 21st
    const result = under({ 'sill.kind': 'brickRowlock' })
    expect(result.text).toBe('2 5/8 in, 26 1/4 in, 49 7/8 in, 55 1/8 in')
    expect(result.tables[0]?.rows.map(([weep, joint, , fromJamb]) => [weep, joint, fromJamb])).toEqual([
      [1, 1, amount('-5 3/8 in')], [2, 10, amount('18 1/4 in')], [3, 19, amount('41 7/8 in')], [4, 21, amount('47 1/8 in')],
    ])
  })

  test('between headers, with wicks', () => {
    // worked by hand: 4 in from joint to joint, 13 joints in 56 in, at most 4 apart: the 1st, 5th, 9th and 13th
    expect(under({ 'sill.kind': 'brickHeader', 'sill.weeps.kind': 'wick' }).text).toBe('4 in, 20 in, 36 in, 52 in')
  })

  test('evenly under a slab, as many as are counted', () => {
    // worked by hand: ⌈56 / 24⌉ = 3 gaps of 18 2/3 in
    const facts = { 'sill.kind': 'stone' }
    const result = under(facts)
    expect(result.value).toEqual([0, 474_133_333, 948_266_667, amount('56 in')])
    expect(result.tables[0]?.rows.map(([, joint]) => joint)).toEqual([null, null, null, null])
    const given = { facts: { ...facts, 'sill.weeps.kind': 'openHeadJoint' }, limits, quantities: { 'sill.flashing-length': '56 in' } }
    expect(evaluate(sillWeepCount, { ...given, facts: { ...given.facts, 'wall.veneer.unit': 'modular' } }).value).toBe(4)
  })

  test('in millimeters', () => {
    // worked by hand: 1200 + 2 × 100 = 1400 mm under a slab; ⌈1400 / 600⌉ = 3 gaps; BIA Technical Notes 36 (1982) print 600 mm beside 24 in
    const facts = { 'wall.veneer.unit': 'modular', 'opening.width': '1200 mm', 'sill.flashing.extensionPastJamb': '100 mm', 'sill.kind': 'precastConcrete', 'sill.weeps.kind': 'openHeadJoint' }
    const metric = { 'weep.sill-spacing-open-head-joint': { text: '600 mm', comparator: 'notMoreThan' } } as const
    expect(evaluate(sillWeepPositions, { facts, limits: metric }, [sillFlashingLength]).value).toEqual([0, 466_666_667, 933_333_333, amount('1400 mm')])
  })

  test('does not apply to a threshold; names the brick', () => {
    expect(under({ 'sill.kind': 'doorThreshold' }).status).toBe('notApplicable')
    expect(under({ 'sill.kind': 'brickRowlock', 'wall.veneer.unit': undefined }).missing).toEqual(['wall.veneer.unit'])
  })
})
