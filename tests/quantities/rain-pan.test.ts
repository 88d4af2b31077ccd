import { describe, expect, test } from 'vitest'
import { overtopTime, panVolume, volumeBehindDams } from '../../src/quantities/rain-pan.ts'
import { weepBreakthrough, weepCapacity } from '../../src/quantities/rain-weeps.ts'
import { windHead } from '../../src/quantities/rain-wind-head.ts'
import { flowThrough } from '../../src/quantities/weep-flow.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const pan = { 'wall.airSpace': '25 mm', 'head.flashing.endDamHeight': '25 mm', 'head.flashing.slope': '0 deg' }
const quantities = { 'flashing.head-pan-length': '1950 mm' }
const mm = (nanometres: number) => nanometres / 1e6
const litresPerMinute = (flow: number | undefined) => Number(flow) / 60
const gravity = 9.80665

describe('water behind the dams', () => {
  // 1.95 m × air space × dam, worked by hand
  test.each([['25 mm', '25 mm', 1.21875], ['25 mm', '50 mm', 2.4375], ['50 mm', '50 mm', 4.875]])('%s of air space, %s dams', (airSpace, dam, volume) => {
    expect(valueOf(evaluate(panVolume, { facts: { ...pan, 'wall.airSpace': airSpace, 'head.flashing.endDamHeight': dam }, quantities }))).toBeCloseTo(volume, 9)
  })

  test('leaves over the lower dam', () => {
    expect(valueOf(evaluate(panVolume, { facts: { ...pan, 'head.flashing.endDamHeight': ['50 mm', '25 mm'] }, quantities }))).toBeCloseTo(1.21875, 9)
  })

  // b h - s b²/2 with s = 0.2: 1.95 × (0.000625 - 0.0000625) × 1000; steeper than the dam a triangle h²/(2 s) is left, s = 2: 1.95 × 0.00015625 × 1000; by hand
  test.each([[Math.atan(0.2), 1.096875], [Math.atan(1), 0.609375], [Math.atan(2), 0.3046875]])('on a slope of %d', (angle, volume) => {
    const [depth, dam] = [amount('25 mm'), amount('25 mm')]
    expect(volumeBehindDams({ length: amount('1950 mm'), depth, dam, slope: (angle * 180) / Math.PI })).toBeCloseTo(volume, 9)
  })

  test('is none without a dam, level or falling', () => {
    expect(valueOf(evaluate(panVolume, { facts: { ...pan, 'head.flashing.endDamHeight': '0 mm' }, quantities }))).toBe(0)
    expect(valueOf(evaluate(panVolume, { facts: { ...pan, 'head.flashing.endDamHeight': '0 mm', 'head.flashing.slope': '5 deg' }, quantities }))).toBe(0)
  })

  test('takes the least dam of the rule and a level pan where they are not known, and says so', () => {
    const result = evaluate(panVolume, { facts: { 'wall.airSpace': '25 mm' }, limits: { 'flashing.end-dam-height': '25 mm' }, quantities })
    expect(valueOf(result)).toBeCloseTo(1.21875, 9)
    expect(result.assumptions).toEqual([expect.stringMatching(/end dams/), expect.stringMatching(/level pan/)])
  })

  test('does not hold where the pan falls back', () => expect(evaluate(panVolume, { facts: { ...pan, 'head.flashing.slope': '-1 deg' }, quantities }).reason).toBe('methodDoesNotHold'))
})

describe('the time until water runs over', () => {
  // 1.21875 L at 0.468 L/h, worked by hand
  test('1.22 L at 0.468 L/h', () => {
    const { value } = evaluate(overtopTime, { quantities: { 'rain.pan-volume': '1.21875 L', 'rain.pan-inflow': '0.468 L/h' } })
    expect(value).toEqual({ least: expect.closeTo(2.604, 3) as number, greatest: expect.closeTo(2.604, 3) as number })
  })

  test('does not hold without rain on the wall', () => {
    expect(evaluate(overtopTime, { quantities: { 'rain.pan-volume': '1.2 L', 'rain.pan-inflow': '0 L/h' } }).reason).toBe('methodDoesNotHold')
  })
})

describe('a clean weep', () => {
  // 2/3 × 0.6 × 9.5 mm × √(2 g) × depth^1.5, worked with a calculator
  test.each([[0.005, 0.357], [0.01, 1.01], [0.02, 2.86], [0.025, 3.99]])('an open joint with %d m of water', (depth, flow) => {
    expect(litresPerMinute(flowThrough({ shape: 'slot', width: 0.0095, height: 0.057 }, depth, 0.6, { gravity }))).toBeCloseTo(flow, 2)
  })

  test('an open joint under water passes what a hole of its height passes', () => {
    const hole = { shape: 'slot', width: 0.01, height: 0.01 } as const
    // 0.6 × 1 cm² × √(2 g × 1 m), the orifice formula for a small hole far below the surface: 0.0002657 m³/s
    expect(litresPerMinute(flowThrough(hole, 1.005, 0.6, { gravity })) / 60e3).toBeCloseTo(0.0002657, 6)
  })

  // 0.6 × π d²/4 × √(2 g H), H over the middle of the tube, worked with a calculator
  test.each([[0.0047625, 0.01, 0.28], [0.0047625, 0.025, 0.45], [0.00635, 0.01, 0.505], [0.00635, 0.025, 0.8]])('a tube of %d m with %d m over its middle', (diameter, head, flow) => {
    expect(litresPerMinute(flowThrough({ shape: 'round', diameter }, head + diameter / 2, 0.6, { gravity }))).toBeCloseTo(flow, 2)
  })

  test('a tube that the water does not cover is not computed', () => expect(flowThrough({ shape: 'round', diameter: 0.01 }, 0.009, 0.6, { gravity })).toBeUndefined())

  // 4 σ/(ρ g d) with σ 0.0728 N/m and ρ 998.2 kg/m³, worked with a calculator
  test.each([['3/16 in', 6.24], ['1/4 in', 4.68], ['3/8 in', 3.12]])('a tube of %s holds water back', (diameter, depth) => {
    const result = evaluate(weepBreakthrough, { facts: { 'head.weeps.kind': 'tube', 'head.weeps.diameter': diameter } })
    expect(mm(valueOf(result))).toBeCloseTo(depth, 1)
  })

  // 2 σ/(ρ g w), worked with a calculator
  test('an open joint of 3/8 in holds back less', () => {
    const result = evaluate(weepBreakthrough, { facts: { 'head.weeps.kind': 'openHeadJoint', 'head.weeps.diameter': '3/8 in', 'head.weeps.openHeight': '2 1/4 in' } })
    expect(mm(valueOf(result))).toBeCloseTo(1.56, 2)
  })
})

describe('what the weeps let out', () => {
  const weeps = { 'head.weeps.kind': 'openHeadJoint', 'head.weeps.diameter': '9.5 mm', 'head.weeps.openHeight': '57 mm', 'head.weeps.count': '5', 'head.flashing.endDamHeight': '20 mm' }

  test('goes from nothing, all blocked, to all clean at the dam', () => {
    const { value, tables } = evaluate(weepCapacity, { facts: weeps })
    expect(value).toEqual({ least: 0, greatest: tables[0]?.rows[2]?.[2] })
    // 5 × 2.86 L/min at 20 mm and 5 × 1.01 at 10 mm, as above
    expect(litresPerMinute(Number(tables[0]?.rows[2]?.[2]))).toBeCloseTo(14.28, 2)
    expect(litresPerMinute(Number(tables[0]?.rows[1]?.[2]))).toBeCloseTo(5.05, 2)
    expect(tables[0]?.rows.map((row) => row[3])).toEqual([0, 0, 0])
  })

  test('takes the computed number where nobody counted, and says so', () => {
    const result = evaluate(weepCapacity, { facts: { ...weeps, 'head.weeps.count': null }, quantities: { 'weeps.head-count': '3' } })
    expect(result.tables[0]?.rows[2]?.[2]).toBeCloseTo(3 * Number(result.tables[0]?.rows[2]?.[1]), 9)
    expect(result.assumptions).toEqual([expect.stringMatching(/number computed/)])
  })

  test('takes the joint and the whole brick where the open joint was not measured, and says so', () => {
    const facts = { ...weeps, 'head.weeps.diameter': null, 'head.weeps.openHeight': null, 'wall.veneer.unit': 'modular' }
    expect(evaluate(weepCapacity, { facts }).assumptions).toEqual([expect.stringMatching(/width of the open joint/), expect.stringMatching(/whole brick/)])
  })

  test('says that closed weeps do not count', () => {
    expect(evaluate(weepCapacity, { facts: { ...weeps, 'head.weeps.open': false } }).notes).toContainEqual(expect.stringMatching(/Some weeps here are closed/))
  })

  test.each(['wick', 'rope', 'mesh', 'cellVent'])('is not computed for %s', (kind) => {
    expect(evaluate(weepCapacity, { facts: { ...weeps, 'head.weeps.kind': kind } }).reason).toBe('methodDoesNotHold')
    expect(evaluate(weepBreakthrough, { facts: { 'head.weeps.kind': kind } }).reason).toBe('methodDoesNotHold')
  })

  test('does not apply without weeps', () => expect(evaluate(weepCapacity, { facts: { ...weeps, 'head.weeps.kind': 'none' } }).status).toBe('notApplicable'))

  test('does not hold for a tube higher than the dam', () => {
    expect(evaluate(weepCapacity, { facts: { ...weeps, 'head.weeps.kind': 'tube', 'head.weeps.diameter': '1 in' } }).reason).toBe('methodDoesNotHold')
  })

  test('does not hold without a dam, or for a weep of no width', () => {
    expect(evaluate(weepCapacity, { facts: { ...weeps, 'head.flashing.endDamHeight': ['0 mm', '20 mm'] } }).reason).toBe('methodDoesNotHold')
    expect(evaluate(weepCapacity, { facts: { ...weeps, 'head.weeps.diameter': '0 mm' } }).reason).toBe('methodDoesNotHold')
    expect(evaluate(weepBreakthrough, { facts: { ...weeps, 'head.weeps.diameter': '0 mm' } }).reason).toBe('methodDoesNotHold')
    expect(evaluate(weepBreakthrough, { facts: { 'head.weeps.kind': 'tube', 'head.weeps.diameter': '0 mm' } }).reason).toBe('methodDoesNotHold')
  })

  test('names the size of a tube where it is not known', () => {
    expect(evaluate(weepCapacity, { facts: { ...weeps, 'head.weeps.kind': 'tube', 'head.weeps.diameter': null } }).missing).toEqual(['head.weeps.diameter'])
  })
})

describe('water held up by the wind', () => {
  // Pa / 9.789 with ρ 998.2 kg/m³, worked with a calculator; 137 Pa is the usual pressure of a spray test
  test.each([['137 Pa', 14], ['300 Pa', 30.6], ['500 Pa', 51.1], ['720 Pa', 73.5]])('at %s', (pressure, height) => {
    expect(Math.abs(mm(valueOf(evaluate(windHead, { facts: { 'exposure.windPressure': pressure } }))) - height)).toBeLessThan(0.06)
  })

  test('against the upstand', () => {
    // 18 psf is 861.84 Pa or 88.04 mm; 8 in is 203.2 mm, 2.3 times as high; by hand
    const { notes } = evaluate(windHead, { facts: { 'exposure.windPressure': '18 psf', 'head.flashing.upstand': '8 in' } })
    expect(notes[0]).toBe('The upstand of 8 in is 2.3 times as high.')
    expect(evaluate(windHead, { facts: { 'exposure.windPressure': '18 psf' } }).notes).toHaveLength(1)
  })

  test('names the pressure where it is not known', () => expect(evaluate(windHead, {}).missing).toEqual(['exposure.windPressure']))
})
