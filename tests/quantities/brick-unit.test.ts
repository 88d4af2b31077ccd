import { describe, expect, test } from 'vitest'
import { facts } from '../../src/opening/facts.ts'
import { brick, brickLength, coursesIn } from '../../src/quantities/brick-unit.ts'
import { amount, inputsOf } from './inputs.ts'

describe('the brick of the wall', () => {
  test.each([
    // BIA Technical Notes 10B (1993), as printed in Masonry Magazine; upper values
    { unit: 'modular', length: '7 5/8 in', height: '2 1/4 in', courses: 3, in: '8 in' },
    { unit: 'engineerNorman', length: '11 5/8 in', height: '2 13/16 in', courses: 5, in: '16 in' },
    { unit: 'utility', length: '11 5/8 in', height: '3 5/8 in', courses: 1, in: '4 in' },
  ])('$unit', (row) => {
    const found = brick.find(inputsOf({ facts: { 'wall.veneer.unit': row.unit } }))
    if (!found.known) throw new Error(found.missing.join())
    expect(found.value).toMatchObject({ length: amount(row.length), height: amount(row.height), joint: amount('3/8 in') })
    expect(found.value.course * row.courses).toBeCloseTo(amount(row.in), 3)
  })

  test('every brick a wall can be described with is in the table', () => {
    const units = facts.get('wall.veneer.unit')?.choices ?? []
    expect(units.length).toBeGreaterThan(0)
    for (const unit of units) expect(brickLength.find(inputsOf({ facts: { 'wall.veneer.unit': unit } }))).toMatchObject({ known: true })
  })

  test('is not known without its name, its table or the joint', () => {
    expect(brick.find(inputsOf({}))).toEqual({ known: false, missing: ['wall.veneer.unit'] })
    expect(brick.find(inputsOf({ facts: { 'wall.veneer.unit': 'modular' }, tables: { 'masonry.brick-units': null }, parameters: { 'masonry.joint-thickness': null } }))).toEqual({
      known: false, missing: ['table masonry.brick-units', 'parameter masonry.joint-thickness'],
    })
  })
})

test.each([
  { height: '24 in', courses: 9 }, // three courses in 8 in
  { height: '36 in', courses: 13 },
  { height: '2 in', courses: 0 },
])('$courses whole courses of modular brick in $height', ({ height, courses }) => {
  expect(coursesIn(amount(height), amount('8 in') / 3)).toBe(courses)
})
