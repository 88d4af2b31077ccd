import { describe, expect, test } from 'vitest'
import { weepComparison } from '../../src/quantities/weep-comparison.ts'
import { amount, evaluate, inputsOf, type Given } from './inputs.ts'

/** IRC R703.8.6 (from memory); BIA Technical Notes 28B (2005). */
const limits = {
  'weep.spacing': { text: '33 in', comparator: 'notMoreThan' }, 'weep.size': '3/16 in',
  'weep.spacing-open-head-joint': { text: '24 in', comparator: 'notMoreThan' }, 'weep.spacing-wick-or-tube': { text: '16 in', comparator: 'notMoreThan' },
} as const
const given: Given = { facts: { 'wall.veneer.unit': 'modular', 'wall.veneer.bond': 'running', 'wall.veneer.headCourse': 'stretcher' }, limits, quantities: { 'flashing.head-pan-length': '56 in' } }

describe('kinds of weep compared', () => {
  const result = evaluate(weepComparison, given)
  const rows = result.tables[0]?.rows ?? []

  test('each with the spacing of its own, and the count for this flashing', () => {
    // worked by hand: joints every 8 in in 56 in; every third for open joints, every second for the rest
    expect(result.value).toBe('open joints: 3; tubes or wicks: 4')
    expect(rows.map(([kind, spacing, count]) => [kind, spacing, count])).toEqual([
      ['Open head joint', amount('24 in'), 3], ['Open head joint with a cell vent or mesh', amount('24 in'), 3],
      ['Tube, 3/8 in', amount('16 in'), 4], ['Tube, 1/4 in', amount('16 in'), 4], ['Round hole of the least size allowed, 3/16 in', amount('16 in'), 4], ['Wick, or rope left in place', amount('16 in'), 4],
    ])
  })

  test('water held back: 1.6 mm in the joint, 3.1, 4.7 and 6.2 mm in round holes', () => {
    // worked by hand with 0.0728 N/m and 998.2 kg/m3 × 9.81 m/s2: 2 σ / (ρ g w) and 4 σ / (ρ g d)
    expect(rows.map((row) => (typeof row[5] === 'number' ? (row[5] / 1e6).toFixed(1) : row[5]))).toEqual(['1.6', null, '3.1', '4.7', '6.2', null])
  })

  test('clear areas where there are any', () => {
    // worked by hand: 3/8 × 2 1/4 in2; π/4 × (3/8)², (1/4)², (3/16)² in2; per length with the count, in 56 in
    expect(rows.map((row) => row[3])).toEqual(['0.8438 in2 (544.4 mm2)', null, '0.1104 in2 (71.26 mm2)', '0.04909 in2 (31.67 mm2)', '0.02761 in2 (17.81 mm2)', null])
    expect(rows[0]?.[4]).toBeCloseTo((3 * 0.84375 * 645.16) / (56 * 0.0254), 6)
  })

  test('only orders and compares, and every line names what its spacing goes by', () => {
    expect(weepComparison).toMatchObject({ indicative: true, onlyWhenKnown: true })
    expect(rows.every((row) => typeof row[6] === 'string' && String(row[7]).includes('limit of weep.spacing'))).toBe(true)
  })

  test('leaves the least hole out where no code gives one', () => {
    expect(evaluate(weepComparison, { ...given, limits: { ...limits, 'weep.size': undefined } }).tables[0]?.rows).toHaveLength(5)
  })

  test('no count where the joints are too far apart; none at all among stones', () => {
    const wide = evaluate(weepComparison, { ...given, limits: { ...limits, 'weep.spacing-wick-or-tube': { text: '6 in', comparator: 'notMoreThan' } } })
    expect(wide.value).toBe('open joints: 3; tubes or wicks: too far apart')
    expect(evaluate(weepComparison, { ...given, facts: { ...given.facts, 'wall.veneer.headCourse': 'stone' } }).reason).toBe('methodDoesNotHold')
  })

  test.each(['masonry.joint-thickness', 'weep.tube-diameter-small'])('nothing is compared with a hole without width: %s', (id) => {
    expect(evaluate(weepComparison, { ...given, parameters: { [id]: '0 in' } })).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold', tables: [] })
  })

  test('names the rule where no spacing is in force', () => {
    expect(evaluate(weepComparison, { ...given, limits: {} }).missing).toEqual(expect.arrayContaining(['rule weep.spacing', 'rule weep.spacing-open-head-joint', 'rule weep.spacing-wick-or-tube']))
  })
})

test('the surface tension of water is that of the release at 20 °C', () => {
  // IAPWS R1-76 (2014): 235.8 mN/m × t^1.256 × (1 − 0.625 t), t = 1 − T/647.096 K; the formula is from memory
  const t = 1 - 293.15 / 647.096
  const tension = inputsOf({}).parameter('water.surface-tension')?.quantity.amount ?? NaN
  expect(tension * 1e3).toBeCloseTo(235.8 * t ** 1.256 * (1 - 0.625 * t), 2)
})
