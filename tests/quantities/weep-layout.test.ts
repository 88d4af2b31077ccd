import { describe, expect, test } from 'vitest'
import { headPanLength } from '../../src/quantities/head-flashing-pan.ts'
import { headWeepCount, headWeepCountByCode, headWeepSpacingLimit, sillWeepCount } from '../../src/quantities/weep-layout.ts'
import { headWeepPositions } from '../../src/quantities/weep-positions.ts'
import { amount, evaluate, type Given } from './inputs.ts'

/** IRC R703.8.6 (from memory); BIA Technical Notes 28B (2005) and 36 (1982). */
const limits = {
  'weep.spacing': { text: '33 in', comparator: 'notMoreThan' },
  'weep.spacing-open-head-joint': { text: '24 in', comparator: 'notMoreThan' },
  'weep.spacing-wick-or-tube': { text: '16 in', comparator: 'notMoreThan' },
  'weep.sill-spacing-open-head-joint': { text: '24 in', comparator: 'notMoreThan' },
} as const

const wall = { 'wall.veneer.unit': 'modular', 'wall.veneer.bond': 'running', 'wall.veneer.headCourse': 'stretcher', 'head.weeps.kind': 'openHeadJoint' }

function over(length: string, facts: Record<string, unknown> = {}, others: Given['limits'] = limits): Given {
  return { facts: { ...wall, ...facts }, limits: others, quantities: { 'flashing.head-pan-length': length } }
}

describe('weeps over the head', () => {
  test.each([
    // worked by hand; joints at 8 in, the last one inside the right dam at 112, 48 and 16 in
    { name: 'three ganged windows', length: '116 in', weeps: '8 32 56 80 104 112', code: 5 },
    { name: 'a 40 in opening', length: '56 in', weeps: '8 32 48', code: 3 },
    { name: 'a small vent', length: '20 in', weeps: '8 16', code: 2 },
    { name: 'one joint between the dams', length: '16 in', weeps: '8', code: 1 },
    { name: 'a sixteenth more brings one more joint', length: '16 1/16 in', weeps: '8 16', code: 2 },
  ])('$name', ({ length, weeps, code }) => {
    const places = weeps.split(' ').map((place) => amount(`${place} in`))
    expect(evaluate(headWeepPositions, over(length))).toMatchObject({ status: 'computed', value: places })
    expect(evaluate(headWeepCount, over(length)).value).toBe(places.length)
    expect(evaluate(headWeepCountByCode, over(length)).value).toBe(code)
  })

  test('wicks stand in every second joint', () => {
    expect(evaluate(headWeepPositions, over('56 in', { 'head.weeps.kind': 'wick' })).text).toBe('8 in, 24 in, 40 in, 48 in')
  })

  test('soldiers: every ninth joint, 23 5/8 in; the code allows every twelfth, 31 1/2 in', () => {
    const soldiers = over('76 in', { 'wall.veneer.headCourse': 'soldier' })
    expect(evaluate(headWeepPositions, soldiers)).toMatchObject({
      text: '2 5/8 in, 26 1/4 in, 49 7/8 in, 73 1/2 in', steps: ['Head joints every 2 5/8 in; 24 in allows a weep in every 9 joints, 23 5/8 in', '4 weeps in 76 in'],
    })
    expect(evaluate(headWeepCountByCode, soldiers)).toMatchObject({ value: 4, steps: [expect.stringContaining('every 12 joints, 31 1/2 in'), '4 weeps in 76 in'] })
  })

  test('a limit of exactly four joints allows four; "less than" allows three', () => {
    const code = (comparator: 'notMoreThan' | 'lessThan') => evaluate(headWeepCountByCode, over('80 in', {}, { 'weep.spacing': { text: '32 in', comparator } })).value
    expect([code('notMoreThan'), code('lessThan')]).toEqual([3, 4])
  })

  test('an amendment to 24 in changes the number the code asks for', () => {
    // the limit of Wisconsin SPS 321.26(8)
    expect(evaluate(headWeepCountByCode, over('116 in', {}, { 'weep.spacing': { text: '24 in', comparator: 'notMoreThan' } })).value).toBe(6)
  })

  test('Flemish bond uses the joints of both its bricks', () => {
    expect(evaluate(headWeepPositions, over('56 in', { 'wall.veneer.bond': 'flemish' })).text).toBe('8 in, 32 in, 48 in')
  })

  test.each([
    { name: 'stones', given: over('56 in', { 'wall.veneer.headCourse': 'stone' }), why: /no regular head joints/ },
    { name: 'a flashing of one brick', given: over('8 in'), why: /No head joint falls/ },
    { name: 'joints wider than the spacing', given: over('56 in', { 'wall.veneer.unit': 'utility' }, { 'weep.spacing': { text: '10 in', comparator: 'notMoreThan' } }), why: /farther apart than the 10 in/ },
  ])('does not hold for $name', ({ given, why }) => {
    const result = evaluate(headWeepCountByCode, given)
    expect(result).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
    expect(result.why).toMatch(why)
  })

  test('names the brick where it is not known', () => {
    expect(evaluate(headWeepCount, over('56 in', { 'wall.veneer.unit': undefined })).missing).toEqual(['wall.veneer.unit'])
  })

  test('follows the flashing: 40 in between the jambs is 56 in between the dams; none where it runs on', () => {
    const opening = { ...wall, 'opening.width': '40 in', 'opening.headShape': 'flat', 'head.support.kind': 'looseSteelAngle', 'head.support.bearing': '4 in' }
    const asked = { ...limits, 'flashing.past-jamb': '8 in' } // common practice, no source
    const count = (runsOn: boolean) => evaluate(headWeepCount, { facts: { ...opening, 'head.flashing.continuousPastOpening': runsOn }, limits: asked }, [headPanLength])
    expect(count(false)).toMatchObject({ status: 'computed', value: 3 })
    expect(count(true).status).toBe('notApplicable')
  })

  test('says what a missing flashing length is missing', () => {
    expect(evaluate(headWeepCount, { facts: wall, limits }).missing).toEqual(['quantity flashing.head-pan-length'])
  })
})

describe('greatest weep spacing at the head', () => {
  test('is the strictest in force', () => {
    expect(evaluate(headWeepSpacingLimit, over('56 in'))).toMatchObject({ text: '24 in', notes: [] })
    expect(evaluate(headWeepSpacingLimit, over('56 in', { 'head.weeps.kind': 'rope' })).text).toBe('16 in')
  })

  test('warns where the spacing itself is too far', () => {
    const result = evaluate(headWeepSpacingLimit, over('56 in', {}, { 'weep.spacing': { text: '33 in', comparator: 'lessThan' } }))
    expect(result).toMatchObject({ text: '33 in', notes: [expect.stringMatching(/closer/)] })
  })

  test('reads in millimeters where the rule does', () => {
    expect(evaluate(headWeepSpacingLimit, over('1400 mm', {}, { 'weep.spacing': { text: '600 mm', comparator: 'notMoreThan' } })).text).toBe('600 mm')
  })
})

describe('weeps under the sill', () => {
  const under = (length: string, kind: string): Given => ({
    facts: { 'wall.veneer.unit': 'modular', 'sill.kind': kind, 'sill.weeps.kind': 'openHeadJoint' }, limits, quantities: { 'sill.flashing-length': length },
  })

  test.each([
    // worked by hand: 2 5/8 in joints from 2 5/8 to 55 1/8 in, at most 9 apart; 4 in joints from 4 to 52 in, at most 6 apart
    { name: 'rowlocks', given: under('56 in', 'brickRowlock'), count: 4 },
    { name: 'headers', given: under('56 in', 'brickHeader'), count: 3 },
    // ⌈56 / 24⌉ + 1
    { name: 'one slab of stone', given: under('56 in', 'stone'), count: 4 },
  ])('$name', ({ given, count }) => {
    expect(evaluate(sillWeepCount, given)).toMatchObject({ status: 'computed', value: count })
  })

  test('names the spacing where no rule for the sill is in force', () => {
    expect(evaluate(sillWeepCount, { ...under('56 in', 'brickRowlock'), limits: {} }).missing).toEqual(['rule weep.sill-spacing-open-head-joint'])
  })
})
