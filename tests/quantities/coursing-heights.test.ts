import { describe, expect, test } from 'vitest'
import { coursesToSill, headNearest, openingHeightNearest, sillNearest } from '../../src/quantities/coursing-heights.ts'
import { amount, evaluate, valueOf } from './inputs.ts'

/** A wall whose first course stands 4 in above grade: on a ledge 8 in below a foundation that stands 12 in out of the ground. */
const onLedge = { 'base.foundationAboveGrade': '12 in', 'base.ledgeRecess': '8 in', 'wall.veneer.unit': 'modular' }

describe('courses to the sill', () => {
  test.each([
    // BIA Technical Notes 10B (1993), vertical coursing: 12 courses of modular brick are 2 ft 8 in
    { facts: { ...onLedge, 'opening.sillAboveGrade': '36 in' }, courses: 12 },
    // the same table: 10 courses of engineer modular brick are 2 ft 8 in
    { facts: { ...onLedge, 'wall.veneer.unit': 'engineerModular', 'opening.sillAboveGrade': '36 in' }, courses: 10 },
    // DIN 4172: 12 courses of NF are 1 m
    { facts: { 'base.foundationAboveGrade': '150 mm', 'base.ledgeRecess': '0 mm', 'wall.veneer.unit': 'germanNormal', 'opening.sillAboveGrade': '1150 mm' }, courses: 12 },
    // British gauge of 75 mm: 4 courses are 300 mm
    { facts: { 'base.foundationAboveGrade': '150 mm', 'base.ledgeRecess': '0 mm', 'wall.veneer.unit': 'britishStandard', 'opening.sillAboveGrade': '1050 mm' }, courses: 12 },
  ])('$courses', ({ facts, courses }) => {
    const result = evaluate(coursesToSill, { facts })
    expect(valueOf(result)).toBe(courses)
    expect(result.assumptions).toEqual([])
  })

  test('says that the first course is taken to stand on the foundation where no ledge is described', () => {
    const result = evaluate(coursesToSill, { facts: { ...onLedge, 'base.ledgeRecess': null, 'opening.sillAboveGrade': '44 in' } })
    expect(valueOf(result)).toBe(12)
    expect(result.assumptions).toEqual([expect.stringMatching(/No ledge is described/)])
    expect(result.steps).toEqual(['The first course stands 12 in above grade', '32 in / 2.6667 in (67.733 mm) = 12 courses'])
  })

  test('names what is missing, and does not hold below the first course', () => {
    expect(evaluate(coursesToSill, { facts: {} }).missing).toEqual(['base.foundationAboveGrade', 'opening.sillAboveGrade', 'wall.veneer.unit'])
    expect(evaluate(coursesToSill, { facts: { ...onLedge, 'opening.sillAboveGrade': '2 in' } })).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
    expect(evaluate(coursesToSill, { facts: { ...onLedge, 'opening.sillAboveGrade': '36 in', 'wall.veneer.kind': 'anchoredStone' } }).status).toBe('notApplicable')
  })
})

describe('bed joints next to the sill', () => {
  // Worked by hand: 33 in above the support lie between 12 courses, 32 in, and 13, 34.667 in
  test('below and above, how far to move, and what the bed joints would take', () => {
    const result = evaluate(sillNearest, { facts: { ...onLedge, 'opening.sillAboveGrade': '37 in' } })
    expect(result.value).toEqual([amount('36 in'), amount('4 in') + Math.round((amount('8 in') / 3) * 13)])
    const [below, above] = result.tables[0]?.rows ?? []
    expect(below).toEqual([12, amount('32 in'), amount('36 in'), amount('-1 in'), Math.round(amount('1 in') / 12)])
    expect(above?.[3]).toBe(Math.round(amount('5 in') / 3))
    expect(above?.[4]).toBe(Math.round(-amount('5 in') / 39))
    expect(result.notes).toEqual(['With 12 courses every bed joint is 0.0833 in (2.117 mm) thicker, within the 1/8 in of the tolerance.'])
  })

  test('the joint itself where the sill lies in it', () => {
    const result = evaluate(sillNearest, { facts: { ...onLedge, 'opening.sillAboveGrade': '36 in' } })
    expect(result.value).toEqual([amount('36 in')])
    expect(result.tables[0]?.rows).toEqual([[12, amount('32 in'), amount('36 in'), 0, 0]])
    expect(result.notes).toEqual(['It lies in a bed joint.'])
  })

  test('a few courses cannot take up much', () => {
    const result = evaluate(sillNearest, { facts: { ...onLedge, 'opening.sillAboveGrade': '7 in' } })
    expect(result.notes).toEqual(['With 1 course every bed joint is 0.3333 in (8.467 mm) thicker, more than the 1/8 in of the tolerance.'])
  })

  test('a sill on the support itself, and one less than a course above it', () => {
    expect(evaluate(sillNearest, { facts: { ...onLedge, 'opening.sillAboveGrade': '4 in' } }).value).toEqual([amount('4 in')])
    expect(evaluate(sillNearest, { facts: { ...onLedge, 'opening.sillAboveGrade': '5 in' } }).tables[0]?.rows[0]).toEqual([0, 0, amount('4 in'), amount('-1 in'), null])
  })
})

describe('bed joints next to the head', () => {
  const opening = { ...onLedge, 'opening.sillAboveGrade': '36 in' }

  // BIA Technical Notes 10B (1993): 24 courses are 5 ft 4 in, here 12 to the sill and 12 to the head
  test('a head in a bed joint', () => {
    expect(evaluate(headNearest, { facts: { ...opening, 'opening.height': '32 in' } })).toMatchObject({ value: [amount('68 in')], notes: ['It lies in a bed joint.'] })
  })

  test('goes by the coursing of the wall, not by the sill', () => {
    const result = evaluate(headNearest, { facts: { ...opening, 'opening.sillAboveGrade': '37 in', 'opening.height': '31 in' } })
    expect(result.value).toEqual([amount('68 in')])
  })

  test('metric: between two courses of 75 mm', () => {
    const facts = { 'base.foundationAboveGrade': '150 mm', 'base.ledgeRecess': '0 mm', 'wall.veneer.unit': 'britishStandard', 'opening.sillAboveGrade': '1050 mm', 'opening.height': '1220 mm' }
    const result = evaluate(headNearest, { facts })
    expect(result.value).toEqual([amount('2250 mm'), amount('2325 mm')])
    expect(result.tables[0]?.rows.map((row) => row[3])).toEqual([amount('-20 mm'), amount('55 mm')])
  })

  test('does not hold for an arch', () => {
    expect(evaluate(headNearest, { facts: { ...opening, 'opening.height': '32 in', 'opening.headShape': 'segmentalArch' } }).reason).toBe('methodDoesNotHold')
  })
})

describe('opening heights of whole courses', () => {
  test.each([
    // BIA Technical Notes 10B (1993), vertical coursing: 5 ft 4 in is 24 courses; 60 in worked by hand
    { unit: 'modular', height: '64 in', nearest: ['64 in'] },
    { unit: 'closureModular', height: '50 in', nearest: ['48 in', '52 in'] },
    // DIN 4172: 16 courses of DF are 1 m, a course is 62.5 mm
    { unit: 'germanThin', height: '1010 mm', nearest: ['1000 mm', '1062.5 mm'] },
    // an opening lower than one course has only the one above
    { unit: 'utility', height: '4 in', nearest: ['4 in'] },
  ])('$unit, $height', ({ unit, height, nearest }) => {
    expect(evaluate(openingHeightNearest, { facts: { 'wall.veneer.unit': unit, 'opening.height': height } }).value).toEqual(nearest.map(amount))
  })

  test('an opening lower than a course has only the course above it', () => {
    expect(evaluate(openingHeightNearest, { facts: { 'wall.veneer.unitHeight': '8 in', 'wall.veneer.unitLength': '16 in', 'opening.height': '6 in' } }).tables[0]?.rows).toEqual([[1, amount('8 3/8 in'), amount('2 3/8 in'), amount('-2 3/8 in')]])
  })

  test('names the brick while it is not known', () => {
    expect(evaluate(openingHeightNearest, { facts: { 'opening.height': '60 in' } }).missing).toEqual(['wall.veneer.unit'])
  })
})
