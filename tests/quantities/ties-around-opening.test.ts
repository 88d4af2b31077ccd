import { describe, expect, test } from 'vitest'
import { tieSpacingAllowed, tiesAroundOpening } from '../../src/quantities/ties-around-opening.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const inch_nm = 25_400_000

describe('ties around the opening', () => {
  /** IRC R703.8.4.1.1, from memory; also a county notice of 2007 to builders. */
  const limits = { 'tie.opening-spacing': '36 in', 'tie.opening-distance': '12 in' } as const

  test.each([
    // worked by hand: 2 jambs, head, and sill; ⌈side / 36⌉ + 1 each
    { name: 'a 4 ft by 5 ft window', kind: 'window', width: '48 in', height: '60 in', ties: 12 },
    { name: 'a side of just 36 in', kind: 'window', width: '36 in', height: '36 in', ties: 8 },
    { name: 'a sixteenth more', kind: 'window', width: '36 1/16 in', height: '36 in', ties: 10 },
    { name: 'a door has no ties under it', kind: 'door', width: '36 in', height: '80 in', ties: 10 },
    { name: 'a garage door', kind: 'garageDoor', width: '16 ft', height: '7 ft', ties: 15 },
    { name: 'larger in one direction only', kind: 'louver', width: '12 in', height: '24 in', ties: 8 },
    { name: 'in millimeters', kind: 'window', width: '1200 mm', height: '1500 mm', ties: 12 },
  ])('$name: $ties', ({ kind, width, height, ties }) => {
    expect(evaluate(tiesAroundOpening, { facts: { 'opening.kind': kind, 'opening.width': width, 'opening.height': height }, limits })).toMatchObject({ status: 'computed', value: ties })
  })

  test('along the jamb ties stand in bed joints: 36 in is 13 courses of modular brick, 34.667 in', () => {
    const facts = { 'opening.kind': 'window', 'opening.width': '36 in', 'opening.height': '72 in' }
    expect(evaluate(tiesAroundOpening, { facts, limits }).value).toBe(10)
    const coursed = evaluate(tiesAroundOpening, { facts: { ...facts, 'wall.veneer.unit': 'modular' }, limits })
    expect(coursed).toMatchObject({ value: 12, steps: ['each jamb ⌈72 in / 34.667 in⌉ + 1 = 4', 'head and sill, each ⌈36 in / 36 in⌉ + 1 = 2', '2 × 4 + 2 × 2 = 12'] })
  })

  test('whole courses do not count for more than they are', () => {
    const facts = { 'opening.kind': 'window', 'opening.width': '24 in', 'opening.height': '72 in', 'wall.veneer.unit': 'modular' }
    expect(evaluate(tiesAroundOpening, { facts, limits: { ...limits, 'tie.opening-spacing': '24 in' } }).steps[0]).toBe('each jamb ⌈72 in / 24 in⌉ + 1 = 4')
  })

  test.each([
    { width: '16 in', height: '16 in', status: 'notApplicable' },
    { width: '16 1/16 in', height: '16 in', status: 'computed' },
  ])('$width by $height: $status', ({ width, height, status }) => {
    expect(evaluate(tiesAroundOpening, { facts: { 'opening.kind': 'vent', 'opening.width': width, 'opening.height': height }, limits }).status).toBe(status)
  })

  test('names the rules where none is in force', () => {
    const facts = { 'opening.kind': 'window', 'opening.width': '48 in', 'opening.height': '60 in' }
    expect(evaluate(tiesAroundOpening, { facts }).missing).toEqual(['rule tie.opening-spacing', 'rule tie.opening-distance'])
  })
})

describe('vertical tie spacing allowed', () => {
  /** IRC R703.8.4.1, from memory. */
  const limits = { 'tie.area-per-tie': '2.67 [ft_i]2', 'tie.area-per-tie-high-demand': '2 [ft_i]2', 'tie.horizontal-spacing': '32 in', 'tie.vertical-spacing': '24 in' } as const

  test.each([
    // Paris, Texas, R703.8.4.1.2 gives 24 in on studs at 16 in and 16 in on studs at 24 in; both are 384 in2 a tie
    { across: '16 in', inches: 24 },
    { across: '24 in', inches: 16.02 },
    // worked by hand: 384.48 / 32
    { across: '32 in', inches: 12.015 },
  ])('ties $across apart', ({ across, inches }) => {
    expect(valueOf(evaluate(tieSpacingAllowed, { facts: { 'ties.horizontalSpacing': across }, limits })) / inch_nm).toBeCloseTo(inches, 4)
  })

  test('in SI: 0.248 m2 at 600 mm is 413 mm', () => {
    const metric = { 'tie.area-per-tie': '0.248 m2', 'tie.horizontal-spacing': '813 mm', 'tie.vertical-spacing': '610 mm' }
    expect(valueOf(evaluate(tieSpacingAllowed, { facts: { 'ties.horizontalSpacing': '600 mm' }, limits: metric })) / 1e6).toBeCloseTo(413.33, 2)
  })

  test('a high seismic design category brings 18 in on studs at 16 in', () => {
    const facts = { 'wall.studSpacing': '16 in', 'exposure.seismicDesignCategory': 'D1' }
    expect(evaluate(tieSpacingAllowed, { facts, limits })).toMatchObject({ value: amount('18 in'), assumptions: [expect.stringMatching(/every stud/)] })
  })

  test('says how many courses that is', () => {
    const facts = { 'ties.horizontalSpacing': '24 in', 'wall.veneer.unit': 'modular' }
    expect(evaluate(tieSpacingAllowed, { facts, limits }).notes).toContain('In bed joints: every 6 courses, 16 in.')
  })

  test('ties farther apart along a course than allowed are for a licensed professional', () => {
    const result = evaluate(tieSpacingAllowed, { facts: { 'ties.horizontalSpacing': '32 1/16 in' }, limits })
    expect(result.reason).toBe('outsidePrescriptive')
    expect(result.why).toMatch(/32 in allowed.*licensed professional/)
  })

  test('names the horizontal spacing where neither it nor the studs are known', () => {
    expect(evaluate(tieSpacingAllowed, { facts: {}, limits }).missing).toEqual(['ties.horizontalSpacing'])
  })
})
