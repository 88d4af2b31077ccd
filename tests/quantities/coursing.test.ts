import { describe, expect, test } from 'vitest'
import { coursesIn, coursesToHead, heightOf, rowlocksInSill } from '../../src/quantities/coursing.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

const wall = (unit: string | null, height: string) => ({ facts: { 'wall.veneer.unit': unit, 'opening.height': height } })

describe('courses to the head', () => {
  // BIA Technical Notes 10B (1993), vertical coursing: number of courses and their height
  test.each([
    { unit: 'modular', height: '2 ft 8 in', courses: 12 },
    { unit: 'modular', height: '5 ft 4 in', courses: 24 },
    { unit: 'engineerModular', height: '2 ft 8 in', courses: 10 },
    { unit: 'engineerModular', height: '13 ft 4 in', courses: 50 },
    { unit: 'engineerModular', height: '26 ft 8 in', courses: 100 },
    { unit: 'closureModular', height: '16 ft 8 in', courses: 50 },
    { unit: 'roman', height: '8 ft 4 in', courses: 50 },
  ])('$courses courses of $unit reach $height', ({ unit, height, courses }) => {
    const result = evaluate(coursesToHead, wall(unit, height))
    expect(valueOf(result)).toBe(courses)
    expect(result.notes).toEqual(['The head lands on a bed joint when the sill does.'])
  })

  // Worked by hand: 60 in / 2 2/3 in
  test('a head between bed joints shows the courses around it', () => {
    const result = evaluate(coursesToHead, wall('modular', '60 in'))
    expect(valueOf(result)).toBeCloseTo(22.5, 9)
    expect(result.steps).toEqual(['60 in / 2.667 in = 22.5', '22 courses reach 58.667 in, 1.333 in under the head', '23 courses reach 61.333 in, 1.333 in over it'])
  })

  test('metric: 1200 mm is not on the inch coursing', () => {
    const result = evaluate(coursesToHead, wall('closureModular', '1200 mm'))
    expect(valueOf(result)).toBeCloseTo(1200 / 101.6, 9)
    expect(result.steps[0]).toBe('1200 mm / 4 in = 11.81')
  })

  test('names the brick while it is not known', () => {
    expect(evaluate(coursesToHead, wall(null, '60 in'))).toMatchObject({ status: 'notDetermined', missing: ['wall.veneer.unit'] })
  })

  test('stone has no courses', () => {
    expect(evaluate(coursesToHead, { facts: { 'wall.veneer.kind': 'anchoredStone', 'opening.height': '60 in' } }).status).toBe('notApplicable')
  })

  test('a nanometre off a bed joint is off it', () => {
    const course = amount('8 in') / 3
    expect(coursesIn(amount('2 ft 8 in'), course)).toBe(12)
    expect(Number.isInteger(coursesIn(amount('2 ft 8 in') + 1, course))).toBe(false)
    expect(heightOf(3, course)).toBe(amount('8 in'))
  })
})

describe('rowlock bricks across the sill', () => {
  const sill = (width: string, unit: string | null = 'modular', kind = 'brickRowlock') => ({ facts: { 'wall.veneer.unit': unit, 'opening.width': width, 'sill.kind': kind } })

  // Worked by hand: 2 1/4 in brick and 3/8 in joint, 2 5/8 in apart; 18 on the 2 2/3 in module
  test('a 48 in sill', () => {
    const result = evaluate(rowlocksInSill, sill('48 in'))
    expect(valueOf(result)).toBe(19)
    expect(result.steps).toEqual(['48 in / (2 1/4 in + 3/8 in) = 18.29, rounded up'])
    expect(result.notes).toEqual(['At the pitch of the coursing, 2.667 in, 18 fill the width exactly.'])
  })

  test.each([
    { width: '42 in', units: 16 }, // exactly 16 × 2 5/8 in
    { width: '42 1/64 in', units: 17 },
    { width: '1000 mm', units: 15 }, // 1000 / 66.675 = 14.998
  ])('$width: $units', ({ width, units }) => {
    const result = evaluate(rowlocksInSill, sill(width))
    expect(valueOf(result)).toBe(units)
    expect(result.notes).toEqual([])
  })

  test('needs the brick, and a rowlock sill', () => {
    expect(evaluate(rowlocksInSill, sill('48 in', null)).missing).toEqual(['wall.veneer.unit'])
    expect(evaluate(rowlocksInSill, sill('48 in', 'modular', 'stone')).status).toBe('notApplicable')
  })
})
