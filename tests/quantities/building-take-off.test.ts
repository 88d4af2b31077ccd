import { describe, expect, test } from 'vitest'
import { buildingTakeOff } from '../../src/quantities/building-take-off.ts'
import { computeQuantities } from '../../src/quantities/compute.ts'
import { quantities } from '../../src/quantities/index.ts'
import type { QuantityResult } from '../../src/quantities/result.ts'
import { amount, inputsOf } from './inputs.ts'

const limits = {
  'lintel.bearing-length': '4 in', 'flashing.end-dam-height': '1 in', 'flashing.past-jamb': '8 in', 'flashing.upstand': '8 in', 'flashing.drip-projection': '1/4 in',
  'air-space.recommended': '2 in', 'weep.spacing': '24 in', 'sill.end-dam-height': '1 in', 'sill.flashing-past-jamb': '6 in', 'weep.sill-spacing-open-head-joint': '24 in',
}

const window = {
  'opening.kind': 'window', 'opening.width': '48 in', 'opening.height': '60 in', 'opening.headShape': 'flat', 'opening.frameSetback': '3 in',
  'wall.veneer.unit': 'modular', 'wall.veneer.thickness': '3 5/8 in', 'wall.veneer.headCourse': 'soldier', 'head.support.kind': 'looseSteelAngle', 'sill.kind': 'brickRowlock',
}

function results(facts: Readonly<Record<string, unknown>>): ReadonlyMap<string, QuantityResult> {
  return computeQuantities(quantities, inputsOf({ facts, limits }))
}

const total = (take: ReturnType<typeof buildingTakeOff>, quantity: string) => take.totals.find((one) => one.quantity === quantity)

describe('a building', () => {
  const openings = [
    { reference: 'W1', count: 3, section: 'L3-1/2x3-1/2x1/4', results: results(window) },
    { reference: 'W2', count: 2, section: 'L3-1/2x3-1/2x1/4', results: results({ ...window, 'opening.height': '48 in' }) },
    { reference: 'D1', count: 1, results: results({ ...window, 'opening.kind': 'door', 'opening.width': '36 in', 'sill.kind': 'doorThreshold' }) },
  ]
  const take = buildingTakeOff(openings)

  test('counts its openings', () => expect(take.openings).toBe(6))

  // worked by hand: 48 + 2 x 4 in for both windows, 36 + 2 x 4 in for the door
  test('schedules lintels of one section and length together', () => {
    expect(take.lintels).toEqual([
      { section: 'L3-1/2x3-1/2x1/4', chosen: 'described', length: amount('56 in'), count: 5, references: ['W1', 'W2'] },
      { section: null, chosen: 'notKnown', length: amount('44 in'), count: 1, references: ['D1'] },
    ])
    expect(take.gaps).toContainEqual(expect.objectContaining({ reference: 'D1', quantity: 'lintel.lightest-angle' }))
    expect(take.gaps.filter(({ quantity }) => quantity === 'lintel.lightest-angle')).toHaveLength(1)
  })

  // worked by hand: 48 + 2 x 8 + 2 x 1 = 66 in over the windows, 54 in over the door; 8 + 2 + 3 5/8 + 1/4 in across; 48 + 2 x 6 + 2 x 1 in at the sills
  test('cuts flashing by place and size', () => {
    expect(take.flashing).toEqual([
      { place: 'head', length: amount('66 in'), girth: amount('13 7/8 in'), count: 5, references: ['W1', 'W2'] },
      { place: 'sill', length: amount('62 in'), girth: null, count: 5, references: ['W1', 'W2'] },
      { place: 'head', length: amount('54 in'), girth: amount('13 7/8 in'), count: 1, references: ['D1'] },
    ])
  })

  // worked by hand: 3 x 216 in + 2 x 192 in + (2 x 60 + 36) in; 19 rowlocks in each of 5 sills; 135 x 3 + 108 x 2 + 101 (15 ft2 x 6.75 = 101.25)
  test('adds up what is known', () => {
    expect(total(take, 'takeoff.sealant-length')).toMatchObject({ dimension: 'length', total: amount('1188 in'), counted: ['W1', 'W2', 'D1'], notKnown: [] })
    expect(total(take, 'coursing.sill-units')).toMatchObject({ dimension: 'count', total: 95, counted: ['W1', 'W2'], notApplicable: ['D1'], notKnown: [] })
    expect(total(take, 'takeoff.opening-deduction')?.total).toBe(135 * 3 + 108 * 2 + 101)
    const [three, two, one] = openings.map((opening) => opening.results.get('weeps.head-count')?.value)
    expect(total(take, 'weeps.head-count')?.total).toBe(3 * Number(three) + 2 * Number(two) + Number(one))
  })

  test('lists what could not be computed, with what is missing', () => {
    // no rule on ties is in force here, and all of the openings are large
    expect(total(take, 'ties.around-opening')).toMatchObject({ total: 0, counted: [], notKnown: ['W1', 'W2', 'D1'] })
    expect(take.gaps.filter(({ quantity }) => quantity === 'ties.around-opening')).toEqual([
      expect.objectContaining({ reference: 'W1', count: 3, title: 'Ties around the openings', missing: ['rule tie.opening-spacing', 'rule tie.opening-distance'] }),
      expect.objectContaining({ reference: 'W2' }), expect.objectContaining({ reference: 'D1' }),
    ])
  })
})

describe('what is not there', () => {
  test('was not computed: a gap, and not a nought', () => {
    const take = buildingTakeOff([{ reference: 'W1', count: 1, results: new Map() }])
    expect(take.lintels).toEqual([])
    expect(take.flashing).toEqual([])
    expect(take.totals.every(({ counted, notKnown }) => counted.length === 0 && notKnown.length === 1)).toBe(true)
    expect(take.gaps.map(({ quantity }) => quantity)).toEqual(['lintel.length', 'flashing.head-cut-length', 'flashing.head-girth', 'sill.flashing-cut-length', 'sill.flashing-girth', ...take.totals.map(({ quantity }) => quantity)])
    expect(take.gaps[0]).toMatchObject({ missing: [], why: 'It was not computed for this opening.' })
  })

  test('a method that does not hold says why', () => {
    const take = buildingTakeOff([{ reference: 'W1', count: 1, results: results({ ...window, 'opening.headShape': 'otherArch' }) }])
    expect(take.gaps.find(({ quantity }) => quantity === 'takeoff.sealant-length')?.why).toMatch(/measure the opening/)
  })

  test('the lightest angle stands in for one that is not described', () => {
    const lightest = { ...results(window).get('lintel.lightest-angle'), status: 'computed', value: 'L3x3x1/4' } as QuantityResult
    const take = buildingTakeOff([{ reference: 'W1', count: 2, results: new Map([...results(window), ['lintel.lightest-angle', lightest]]) }])
    expect(take.lintels).toEqual([{ section: 'L3x3x1/4', chosen: 'lightest', length: amount('56 in'), count: 2, references: ['W1'] }])
    expect(take.gaps.some(({ quantity }) => quantity === 'lintel.lightest-angle')).toBe(false)
  })

  test('an empty schedule has nothing in it', () => {
    expect(buildingTakeOff([])).toMatchObject({ openings: 0, lintels: [], flashing: [], gaps: [] })
  })

  test.each([-1, 1.5, NaN])('%f is no number of openings', (count) => {
    expect(() => buildingTakeOff([{ reference: 'W1', count, results: new Map() }])).toThrow(RangeError)
  })
})
