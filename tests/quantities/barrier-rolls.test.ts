import { describe, expect, test } from 'vitest'
import { barrierCourses } from '../../src/quantities/barrier-courses.ts'
import { barrierRolls, barrierSheetArea } from '../../src/quantities/barrier-rolls.ts'
import { evaluate, valueOf } from './inputs.ts'

/** IRC R703.2: 2 in upper over lower, 6 in end to end, one layer. */
const limits = {
  'barrier.horizontal-lap': '2 in', 'barrier.vertical-lap': '6 in', 'barrier.horizontal-lap-other': '2 in', 'barrier.vertical-lap-other': '6 in', 'barrier.layers': '1',
} as const
const wall = {
  'barrier.kind': 'no15Felt', 'barrier.rollWidth': '36 in', 'barrier.rollLength': '144 ft', 'barrier.layers': '1',
  'wall.length': '40 ft', 'wall.veneerHeight': '10 ft', 'opening.width': '4 ft', 'opening.height': '5 ft', 'opening.headShape': 'flat',
}

describe('wall covered with barrier', () => {
  const area = (facts: object) => evaluate(barrierSheetArea, { facts: { ...wall, ...facts }, limits })

  test.each([
    // worked by hand: length × height − width × height of the opening, in square feet of 92903.04 mm2
    { name: 'a flat head', facts: {}, squareFeet: 40 * 10 - 4 * 5 },
    { name: 'an arch: up to the springing', facts: { 'opening.headShape': 'segmentalArch', 'opening.headRise': '1 ft' }, squareFeet: 40 * 10 - 4 * 4 },
    { name: 'the piers beside it where the wall is not told', facts: { 'wall.length': undefined, 'opening.pierWidth': ['3 ft', '5 ft'] }, squareFeet: 12 * 10 - 4 * 5 },
  ])('$name', ({ facts, squareFeet }) => expect(valueOf(area(facts))).toBeCloseTo(squareFeet * 92903.04, 3))

  test('in words', () => {
    expect(area({})).toMatchObject({ text: '380 ft2', steps: ['480 in × 120 in − 48 in × 60 in = 380 ft2 (35.3 m2)'], assumptions: [] })
  })

  test('in meters', () => {
    // worked by hand: 12 × 3 − 1.2 × 1.5 = 34.2 m2
    expect(valueOf(area({ 'wall.length': '12000 mm', 'wall.veneerHeight': '3000 mm', 'opening.width': '1200 mm', 'opening.height': '1500 mm' }))).toBeCloseTo(34.2e6, 3)
  })

  test('names the rise of an arch, the length of the wall, and says so of the piers', () => {
    expect(area({ 'opening.headShape': 'otherArch' }).missing).toEqual(['opening.headRise'])
    expect(area({ 'wall.length': undefined }).missing).toEqual(['wall.length'])
    expect(area({ 'wall.length': undefined, 'opening.pierWidth': '3 ft' }).assumptions).toEqual([expect.stringMatching(/length of the wall/)])
  })

  test('does not hold for an opening as large as the wall; does not apply to a coating', () => {
    expect(area({ 'wall.length': '4 ft', 'wall.veneerHeight': '5 ft' }).reason).toBe('methodDoesNotHold')
    expect(area({ 'barrier.kind': 'fluidApplied' }).status).toBe('notApplicable')
  })
})

describe('rolls of barrier', () => {
  const rolls = (facts: object) => evaluate(barrierRolls, { facts: { ...wall, ...facts }, limits }, [barrierCourses])

  test.each([
    // worked by hand: 4 courses × 40 ft × 1.1 = 176 ft; 144 ft, then 143.5 ft for each further roll
    { name: 'forty feet of wall', facts: {}, count: 2 },
    { name: 'thirty-two feet: 140.8 ft', facts: { 'wall.length': '32 ft' }, count: 1 },
    { name: 'two layers: 352 ft', facts: { 'barrier.layers': '2' }, count: 3 },
    { name: 'short rolls of 108 ft: 2 layers of 32 ft are 281.6 ft', facts: { 'wall.length': '32 ft', 'barrier.layers': '2', 'barrier.rollLength': '108 ft' }, count: 3 },
    // 2 courses × 20 m × 1.1 = 44 m; 25 m and 24.85 m
    { name: 'a wrap in meters', facts: { 'barrier.kind': 'buildingWrap', 'barrier.rollWidth': '2740 mm', 'barrier.rollLength': '25000 mm', 'barrier.verticalLap': '150 mm', 'wall.length': '20000 mm', 'wall.veneerHeight': '4000 mm' }, count: 2 },
  ])('$name', ({ facts, count }) => expect(rolls(facts)).toMatchObject({ status: 'computed', value: count, assumptions: [] }))

  test('shows the run with its waste', () => {
    expect(rolls({}).steps).toEqual(['4 courses × 1 × 480 in = 1920 in, with waste 2112 in', 'Rolls of 1728 in, each after the first less a lap of 6 in: 2'])
  })

  test('takes the common roll of felt and the layers of the rule, and says so', () => {
    const result = rolls({ 'barrier.rollLength': undefined, 'barrier.layers': undefined })
    expect(result).toMatchObject({ value: 2, assumptions: [expect.stringMatching(/layers/), expect.stringMatching(/length of the roll/)] })
  })

  test('names the roll of a paper or wrap, and the lap where the edition leaves it to the maker', () => {
    expect(rolls({ 'barrier.kind': 'buildingPaper', 'barrier.rollLength': undefined }).missing).toEqual(['barrier.rollLength'])
    const other = evaluate(barrierRolls, { facts: { ...wall, 'barrier.kind': 'buildingPaper', 'barrier.horizontalLap': '2 in' }, limits: {} }, [barrierCourses])
    expect(other.missing).toEqual(['rule barrier.vertical-lap-other', 'barrier.verticalLap'])
  })

  test('does not apply where there are no layers', () => expect(rolls({ 'barrier.layers': '0' }).status).toBe('notApplicable'))

  test('does not hold for a roll no longer than its lap', () => {
    const asked = { ...limits, 'barrier.vertical-lap': '5 ft' }
    expect(evaluate(barrierRolls, { facts: { ...wall, 'barrier.rollLength': '5 ft' }, limits: asked }, [barrierCourses]).reason).toBe('methodDoesNotHold')
  })
})
