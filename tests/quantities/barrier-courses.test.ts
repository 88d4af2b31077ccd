import { describe, expect, test } from 'vitest'
import { barrierCourses, barrierLapLength } from '../../src/quantities/barrier-courses.ts'
import { evaluate } from './inputs.ts'

/** IRC R703.2: 2 in upper over lower, 6 in end to end; rolls 36 in wide are common practice, no source. */
const limits = { 'barrier.horizontal-lap': '2 in', 'barrier.vertical-lap': '6 in', 'barrier.horizontal-lap-other': '2 in', 'barrier.vertical-lap-other': '6 in' } as const
const felt = { 'barrier.kind': 'no15Felt', 'barrier.rollWidth': '36 in' }

describe('courses of barrier', () => {
  test.each([
    // worked by hand: 36 in for the first course, 34 in for each further one
    { name: 'less than a roll', facts: { ...felt, 'wall.veneerHeight': '30 in' }, courses: 1 },
    { name: 'one roll', facts: { ...felt, 'wall.veneerHeight': '36 in' }, courses: 1 },
    { name: 'a sixteenth more', facts: { ...felt, 'wall.veneerHeight': '36 1/16 in' }, courses: 2 },
    { name: 'two courses to the full', facts: { ...felt, 'wall.veneerHeight': '70 in' }, courses: 2 },
    { name: 'ten feet', facts: { ...felt, 'wall.veneerHeight': '10 ft' }, courses: 4 },
    { name: 'a wider lap as drawn, 6 in', facts: { ...felt, 'wall.veneerHeight': '10 ft', 'barrier.horizontalLap': '6 in' }, courses: 4 },
    { name: 'a lap of half the roll', facts: { ...felt, 'wall.veneerHeight': '10 ft', 'barrier.horizontalLap': '18 in' }, courses: 6 },
    { name: 'a lap drawn narrower than asked', facts: { ...felt, 'wall.veneerHeight': '70 in', 'barrier.horizontalLap': '1 in' }, courses: 2 },
    { name: 'three meters', facts: { ...felt, 'wall.veneerHeight': '3000 mm' }, courses: 4 },
    { name: 'building paper goes by its own rule', facts: { 'barrier.kind': 'buildingPaper', 'barrier.rollWidth': '36 in', 'wall.veneerHeight': '70 in' }, courses: 2 },
    { name: 'a wrap nine feet wide: 108 in and 106 in', facts: { 'barrier.kind': 'buildingWrap', 'barrier.rollWidth': '9 ft', 'wall.veneerHeight': '18 ft' }, courses: 3 },
    { name: 'a wrap of 3 m with laps of 150 mm', facts: { 'barrier.kind': 'buildingWrap', 'barrier.rollWidth': '3000 mm', 'barrier.horizontalLap': '150 mm', 'wall.veneerHeight': '5850 mm' }, courses: 2 },
  ])('$name', ({ facts, courses }) => {
    expect(evaluate(barrierCourses, { facts, limits })).toMatchObject({ status: 'computed', value: courses, assumptions: [] })
  })

  test('adds up the height of the wall where it is not known, and says so', () => {
    const facts = { ...felt, 'opening.sillAboveGrade': '36 in', 'opening.height': '60 in', 'wall.heightAboveHead': '24 in' }
    const result = evaluate(barrierCourses, { facts, limits })
    expect(result).toMatchObject({ value: 4, assumptions: [expect.stringMatching(/height of the veneer/)] })
    expect(result.steps).toEqual(['120 in high: 1 course of 36 in + 3 of 34 in showing'])
  })

  test('tells the lap end to end', () => {
    expect(evaluate(barrierCourses, { facts: { ...felt, 'wall.veneerHeight': '10 ft' }, limits }).notes).toContain('Lap sheets 6 in where they meet end to end.')
  })

  test('takes the common width of felt and paper, and says so; of a wrap it names the width', () => {
    const of = (kind: string) => evaluate(barrierCourses, { facts: { 'barrier.kind': kind, 'wall.veneerHeight': '10 ft' }, limits })
    expect(of('buildingPaper')).toMatchObject({ value: 4, assumptions: [expect.stringMatching(/width of the roll/)] })
    expect(of('buildingWrap')).toMatchObject({ status: 'notDetermined', missing: ['barrier.rollWidth'] })
  })

  test('a lap as wide as the roll covers nothing', () => {
    expect(evaluate(barrierCourses, { facts: { ...felt, 'wall.veneerHeight': '10 ft', 'barrier.horizontalLap': '36 in' }, limits }).reason).toBe('methodDoesNotHold')
  })

  test.each(['fluidApplied', 'none'])('does not apply to %s', (kind) => {
    expect(evaluate(barrierCourses, { facts: { 'barrier.kind': kind, 'wall.veneerHeight': '10 ft' }, limits }).status).toBe('notApplicable')
  })

  test('names the lap where the edition leaves it to the maker', () => {
    // IRC 2018, R703.2, has no lap for sheets other than felt
    const result = evaluate(barrierCourses, { facts: { 'barrier.kind': 'buildingPaper', 'wall.veneerHeight': '10 ft' }, limits: { 'barrier.horizontal-lap': '2 in' } })
    expect(result.missing).toEqual(['rule barrier.horizontal-lap-other', 'barrier.horizontalLap'])
  })

  test('names the height where nothing of the wall is known', () => {
    expect(evaluate(barrierCourses, { facts: felt, limits }).missing).toEqual(['wall.veneerHeight'])
  })
})

describe('barrier lost in laps', () => {
  test.each([
    { height: '10 ft', text: '6 in', steps: ['3 × 2 in = 6 in'] },
    { height: '30 in', text: '0 in', steps: ['0 × 2 in = 0 in'] },
  ])('$height: $text', ({ height, text, steps }) => {
    expect(evaluate(barrierLapLength, { facts: { ...felt, 'wall.veneerHeight': height }, limits }, [barrierCourses])).toMatchObject({ text, steps })
  })

  test('does not apply where there are no courses', () => {
    expect(evaluate(barrierLapLength, { facts: { 'barrier.kind': 'fluidApplied' }, limits }, [barrierCourses]).status).toBe('notApplicable')
  })
})
