import { describe, expect, test } from 'vitest'
import { facts } from '../../src/opening/facts.ts'
import { brick, brickLength, brickThickness, coursesIn, type Brick } from '../../src/quantities/brick-unit.ts'
import { amount, inputsOf } from './inputs.ts'

/** The brick of a wall described by these facts, under "wall.veneer". */
function brickOf(veneer: Readonly<Record<string, string>>): Brick {
  const found = brick.find(inputsOf({ facts: veneerFacts(veneer) }))
  if (!found.known) throw new Error(found.missing.join())
  return found.value
}

function veneerFacts(veneer: Readonly<Record<string, string>>) {
  return Object.fromEntries(Object.entries(veneer).map(([name, text]) => [`wall.veneer.${name}`, text]))
}

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

describe('metric brick', () => {
  test.each([
    // DIN 4172: 12 courses of NF and 16 of DF in a meter, four lengths with their joints in a meter
    { unit: 'germanNormal', courses: 12, reach: '1 m', lengths: 4, along: '1 m' },
    { unit: 'germanThin', courses: 16, reach: '1 m', lengths: 4, along: '1 m' },
    // British coordinating size 225 x 112.5 x 75 mm, as in "Brickwork dimensions", Technical Information Sheet 9 of a brick maker
    { unit: 'britishStandard', courses: 4, reach: '300 mm', lengths: 2, along: '450 mm' },
    // Australian brick 230 x 110 x 76 mm with 10 mm joints, added by hand
    { unit: 'australianStandard', courses: 7, reach: '602 mm', lengths: 5, along: '1200 mm' },
  ])('$courses courses of $unit reach $reach', ({ unit, courses, reach, lengths, along }) => {
    const { course, length, joint } = brickOf({ unit })
    expect(course * courses).toBeCloseTo(amount(reach), 3)
    expect((length + joint) * lengths).toBe(amount(along))
  })

  test('has the joint of its own table, and only that table as its source', () => {
    const found = brick.find(inputsOf({ facts: { 'wall.veneer.unit': 'germanNormal' }, parameters: { 'masonry.joint-thickness': null }, tables: { 'masonry.brick-units': null } }))
    expect(found).toMatchObject({ known: true, value: { joint: amount('10 mm') }, used: [{ from: 'table masonry.eighth-meter-brick-units' }, { from: 'wall.veneer.unit' }] })
    expect(found.known && new Set(found.sources.map(({ title }) => title))).toEqual(new Set(['din-4172']))
  })
})

describe('sizes that are described', () => {
  test('need no name of the brick; its course is height and joint', () => {
    expect(brickOf({ unitHeight: '50 mm', unitLength: '210 mm', jointThickness: '12 mm' })).toEqual({ height: amount('50 mm'), length: amount('210 mm'), course: amount('62 mm'), joint: amount('12 mm') })
  })

  test('take the usual joint where none is described', () => {
    expect(brickOf({ unitHeight: '2 1/4 in', unitLength: '8 in' })).toMatchObject({ course: amount('2 5/8 in'), joint: amount('3/8 in') })
  })

  test('go before those of the name; a described length leaves the coursing as it is', () => {
    expect(brickOf({ unit: 'britishStandard', unitHeight: '73 mm' })).toEqual({ height: amount('73 mm'), length: amount('215 mm'), course: amount('83 mm'), joint: amount('10 mm') })
    expect(brickOf({ unit: 'germanNormal', unitLength: '238 mm' })).toEqual({ ...brickOf({ unit: 'germanNormal' }), length: amount('238 mm') })
  })

  test('of the joint alone leave the coursing of the name, and it is said', () => {
    const found = brick.find(inputsOf({ facts: veneerFacts({ unit: 'standard', jointThickness: '1/2 in' }) }))
    expect(found).toMatchObject({ value: { course: amount('8 in') / 3, joint: amount('1/2 in') }, assumptions: [expect.stringMatching(/head joints only/)] })
  })

  test.each([['unitHeight', 'unitLength'], ['unitLength', 'unitHeight']])('with %s alone ask for %s', (given, missing) => {
    expect(brick.find(inputsOf({ facts: veneerFacts({ [given]: '60 mm' }) }))).toEqual({ known: false, missing: [`wall.veneer.${missing}`] })
  })

  test('of the thickness go before that of the name', () => {
    expect(brickThickness.find(inputsOf({ facts: veneerFacts({ unit: 'king', thickness: '2 3/4 in' }) }))).toMatchObject({ value: amount('2 3/4 in') })
    expect(brickThickness.find(inputsOf({ facts: veneerFacts({ unit: 'king' }) }))).toMatchObject({ value: amount('3 in') })
    expect(brickThickness.find(inputsOf({ facts: veneerFacts({ unitHeight: '50 mm', unitLength: '210 mm' }) }))).toMatchObject({ known: false })
  })
})

test.each([
  { height: '24 in', courses: 9 }, // three courses in 8 in
  { height: '36 in', courses: 13 },
  { height: '2 in', courses: 0 },
])('$courses whole courses of modular brick in $height', ({ height, courses }) => {
  expect(coursesIn(amount(height), amount('8 in') / 3)).toBe(courses)
})
