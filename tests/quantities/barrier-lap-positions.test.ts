import { describe, expect, test } from 'vitest'
import { barrierCourses } from '../../src/quantities/barrier-courses.ts'
import { barrierLapPositions } from '../../src/quantities/barrier-lap-positions.ts'
import { amount, evaluate } from './inputs.ts'

/** IRC R703.2: 2 in upper over lower. BIA Technical Notes 28B (2005): flashing 8 in up, barrier 4 in over it. */
const limits = { 'barrier.horizontal-lap': '2 in', 'flashing.upstand': '8 in', 'flashing.barrier-lap': '4 in' } as const
const wall = {
  'barrier.kind': 'no15Felt', 'barrier.rollWidth': '36 in', 'wall.veneerHeight': '126 in', 'wall.heightAboveHead': '30 in', 'opening.height': '60 in',
}
const laid = (facts: object = {}, others: object = {}) => evaluate(barrierLapPositions, { facts: { ...wall, ...facts }, limits: { ...limits, ...others } }, [barrierCourses])

describe('courses of barrier at an opening', () => {
  test('every 34 in, with what each meets', () => {
    // worked by hand: sill at 126 − 30 − 60 = 36 in, head at 96 in, top of the flashing at 104 in; edges at 0, 34, 68 and 102 in.
    // The third course, from 68 to 104 in, ends at the top of the flashing; the fourth starts at 102 in and covers 2 in of it.
    const result = laid()
    expect(result).toMatchObject({ status: 'computed', text: '0 in, 34 in, 68 in, 102 in', assumptions: [] })
    expect(result.steps).toEqual(['Every 36 in − 2 in = 34 in; sill at 36 in, head at 96 in'])
    expect(result.tables[0]?.rows).toEqual([
      [1, 0, amount('36 in'), amount('-36 in'), amount('-96 in'), 'under the sill flashing'],
      [2, amount('34 in'), amount('70 in'), amount('-2 in'), amount('-62 in'), 'under the sill flashing; cut at the jambs'],
      [3, amount('68 in'), amount('104 in'), amount('32 in'), amount('-28 in'), 'cut at the jambs; behind the head flashing'],
      [4, amount('102 in'), amount('126 in'), amount('66 in'), amount('6 in'), 'over the head flashing'],
    ])
    expect(result.notes[1]).toBe('Course 4 laps over the head flashing by 2 in, less than the 4 in wanted: lap a strip of barrier under it and over the flashing.')
  })

  test('a course that runs past the head covers the whole upstand', () => {
    // worked by hand: head at 92 in, flashing to 100 in; the course from 68 to 104 in is cut along the head and covers 8 in
    const result = laid({ 'wall.veneerHeight': '122 in' })
    expect(result.tables[0]?.rows[2]?.[5]).toBe('cut at the jambs; over the head flashing')
    expect(result.notes[1]).toBe('Course 3 laps over the head flashing by 8 in.')
  })

  test('in millimeters, with a wide wrap', () => {
    // worked by hand: 1500 − 150 = 1350 mm; sill at 4000 − 800 − 1200 = 2000 mm, head at 3200 mm
    const result = laid({
      'barrier.kind': 'buildingWrap', 'barrier.rollWidth': '1500 mm', 'barrier.horizontalLap': '150 mm', 'wall.veneerHeight': '4000 mm', 'wall.heightAboveHead': '800 mm', 'opening.height': '1200 mm',
      'head.flashing.upstand': '210 mm', 'head.flashing.barrierLap': '100 mm',
    }, { 'flashing.upstand': undefined, 'flashing.barrier-lap': undefined })
    expect(result.value).toEqual([0, amount('1350 mm'), amount('2700 mm')])
    expect(result.tables[0]?.rows.map((row) => row[5])).toEqual(['below the opening', 'under the sill flashing; cut at the jambs', 'cut at the jambs; over the head flashing'])
    expect(result.notes[1]).toBe('Course 3 laps over the head flashing by 210 mm.')
  })

  test('counts from grade where the base is not known, and says so', () => {
    const result = laid({ 'wall.heightAboveHead': undefined, 'opening.sillAboveGrade': '30 in' })
    expect(result).toMatchObject({ assumptions: [expect.stringMatching(/taken to be at grade/)] })
    expect(result.steps[0]).toContain('sill at 30 in, head at 90 in')
  })

  test('without an upstand the course over the flashing is not told', () => {
    expect(laid({}, { 'flashing.upstand': undefined }).notes[1]).toMatch(/not told/)
  })

  test('a flashing that turns up past the top of the wall', () => {
    expect(laid({ 'head.flashing.upstand': '40 in' }).notes[1]).toMatch(/past the top/)
  })

  test('names what is missing; does not apply to a coating', () => {
    expect(laid({ 'opening.height': undefined, 'opening.sillAboveGrade': undefined, 'wall.heightAboveHead': undefined }).missing).toContain('opening.height')
    expect(laid({ 'barrier.kind': 'fluidApplied' }).status).toBe('notApplicable')
  })
})
