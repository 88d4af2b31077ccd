import { describe, expect, test } from 'vitest'
import { tieSpacingAllowed } from '../../src/quantities/ties-around-opening.ts'
import { tieCount, tieFieldGrid, tieLargestArea } from '../../src/quantities/ties-field-grid.ts'
import { tieSpacingForWind } from '../../src/quantities/ties-wind.ts'
import { evaluate, valueOf, type Given } from './inputs.ts'

/** IRC R703.8.4.1 and R703.8.4.1.1, from memory. */
const limits = {
  'tie.area-per-tie': '2.67 [ft_i]2', 'tie.area-per-tie-high-demand': '2 [ft_i]2', 'tie.horizontal-spacing': '32 in', 'tie.vertical-spacing': '24 in',
  'tie.opening-spacing': '36 in', 'tie.opening-distance': '12 in',
} as const
const builtOn = [tieSpacingAllowed, tieSpacingForWind]
const window = {
  'opening.kind': 'window', 'opening.width': '48 in', 'opening.height': '48 in', 'opening.pierWidth': ['48 in', '48 in'],
  'opening.sillAboveGrade': '24 in', 'wall.heightAboveHead': '24 in', 'wall.veneerHeight': '96 in', 'wall.studSpacing': '16 in', 'wall.veneer.unit': 'modular',
}

const grid = (facts: Given['facts']) => evaluate(tieFieldGrid, { facts, limits }, builtOn)
const count = (facts: Given['facts']) => evaluate(tieCount, { facts, limits }, builtOn)
const largest = (facts: Given['facts']) => evaluate(tieLargestArea, { facts, limits }, [...builtOn, tieFieldGrid])

describe('tie layout', () => {
  test('says spacing, count and every place', () => {
    const result = grid(window)
    expect(result).toMatchObject({ status: 'computed', value: '16 in across by 24 in up' })
    // worked by hand: rows at 10 2/3, 34 2/3, 58 2/3, 82 2/3 and 85 1/3 in; 3 columns and 2 rows lie in the opening; the row at 82 2/3 in serves the head, the one at 10 2/3 in is too far under the sill, so that three are added there
    expect(result.steps).toEqual(['144 in by 96 in: 9 columns 16 in apart, 5 rows no more than 24 in apart, every 9 courses', '9 × 5 − 6 in the opening + 3 added along its edges = 42'])
    expect(result.tables[0]?.rows).toHaveLength(42)
  })

  test('shares out all of the brick: 96 × 144 less 48 × 48 in', () => {
    const areas = grid(window).tables[0]?.rows.map((row) => Number(row[3])) ?? []
    expect(areas.reduce((sum, area) => sum + area, 0) / 645.16).toBeCloseTo(96 * 144 - 48 * 48, 4)
  })

  test('is closer where the seismic design category lessens the area per tie', () => {
    // 2 ft2 at 16 in is 18 in, six courses of modular brick
    expect(grid({ ...window, 'exposure.seismicDesignCategory': 'D1' }).value).toBe('16 in across by 16 in up')
  })

  test('is closer where the load of the wind on a tie asks for it', () => {
    // FEMA recovery advisory of 2006, Table 1: 13.7 in at 43.0 psf, with ties that carry 65.5 lb; five courses of modular brick are 13 1/3 in
    const windy = { ...window, 'exposure.windPressure': '43 psf', 'exposure.seismicDesignCategory': 'A', 'ties.capacity': '65.5 lbf' }
    expect(grid(windy).value).toBe('16 in across by 13.333 in up')
  })

  test('in SI', () => {
    const metric = {
      ...window, 'opening.width': '1200 mm', 'opening.height': '1200 mm', 'opening.pierWidth': ['1200 mm', '1200 mm'],
      'wall.veneerHeight': '2400 mm', 'wall.heightAboveHead': '600 mm', 'wall.studSpacing': '600 mm', 'wall.veneer.unit': undefined,
    }
    const siLimits = { ...limits, 'tie.area-per-tie': '0.248 m2', 'tie.vertical-spacing': '610 mm' }
    const result = evaluate(tieCount, { facts: metric, limits: siLimits }, builtOn)
    // worked by hand: (3.6 × 2.4 − 1.2 × 1.2) / 0.248 = 29.03
    expect(result.steps.at(-1)).toMatch(/= 30$/)
    expect(result.steps[0]).toMatch(/^3600 mm by 2400 mm: 6 columns 600 mm apart, 6 rows/)
  })

  test.each([
    { name: 'the right side from the length of the wall', facts: { 'opening.pierWidth': ['48 in', null], 'wall.length': '12 ft' }, assumption: /only one in the length/ },
    { name: 'the left side from the length of the wall', facts: { 'opening.pierWidth': [null, '48 in'], 'wall.length': '12 ft' }, assumption: /on the left is worked out/ },
    { name: 'the foot of the veneer at grade', facts: { 'wall.heightAboveHead': undefined }, assumption: /foot of the veneer/ },
    { name: 'the height added up', facts: { 'wall.veneerHeight': undefined }, assumption: /added up/ },
    { name: 'a tie on every stud', facts: {}, assumption: /every stud/ },
  ])('takes $name, and says so', ({ facts, assumption }) => {
    const result = count({ ...window, ...facts })
    expect(result.value).toBe(42)
    expect(result.assumptions).toContainEqual(expect.stringMatching(assumption))
  })

  test.each([
    { name: 'the opening is wider than the wall', facts: { 'opening.pierWidth': ['48 in', null], 'wall.length': '7 ft' }, why: /does not lie within the wall/ },
    { name: 'the opening is higher than the veneer', facts: { 'wall.veneerHeight': '60 in' }, why: /does not lie within the wall/ },
    { name: 'ties would be closer than a course', facts: { 'exposure.windPressure': '100 psf', 'ties.capacity': '20 lbf' }, why: /closer than one course/ },
    { name: 'the wall takes more ties than are laid out', facts: { 'opening.pierWidth': ['100 ft', '100 ft'] }, why: /more than 500 ties/ },
  ])('gives none where $name', ({ facts, why }) => {
    for (const result of [grid({ ...window, ...facts }), count({ ...window, ...facts }), largest({ ...window, ...facts })]) {
      expect(result).toMatchObject({ status: 'notDetermined', reason: 'methodDoesNotHold' })
      expect(result.why).toMatch(why)
    }
  })

  test('columns farther apart than allowed are for a licensed professional', () => {
    const result = grid({ ...window, 'ties.horizontalSpacing': '36 in' })
    expect(result.reason).toBe('outsidePrescriptive')
    expect(result.why).toMatch(/licensed professional/)
  })

  test.each(['opening.pierWidth', 'wall.studSpacing', 'opening.kind'])('names %s where it is missing', (path) => {
    const { missing } = grid({ ...window, [path]: undefined })
    expect(missing).toEqual([path === 'wall.studSpacing' ? 'ties.horizontalSpacing' : path])
  })
})

describe('ties in the wall', () => {
  test('are as many as the layout has, or more by the area', () => {
    // worked by hand: 11520 in2 / 384.48 in2 = 29.96
    expect(count(window)).toMatchObject({ value: 42, steps: { 2: 'by area alone ⌈80 ft2 / 2.67 ft2⌉ = 30' } })
  })
})

describe('the greatest area that one tie serves', () => {
  // Paris, Texas, R703.8.4.1.2: 24 in up on studs at 16 in, 16 in up on studs at 24 in; both 384 in2, 2.667 ft2
  test('is 2.667 ft2 where the layout is even', () => {
    const even = { ...window, 'opening.height': '32 in', 'opening.sillAboveGrade': '32 in', 'wall.heightAboveHead': '32 in', 'wall.studSpacing': '24 in' }
    const result = largest(even)
    expect(valueOf(result) / 92_903.04).toBeCloseTo(2.667, 3)
    expect(result.notes).toEqual(['No tie of the layout serves more than is allowed.'])
  })

  test('says where it is, and when it is too much', () => {
    // worked by hand: a vent of 16 in in the middle of a wall three columns wide takes the tie in the middle; its neighbors serve more
    const vent = {
      'opening.kind': 'vent', 'opening.width': '16 in', 'opening.height': '8 in', 'opening.pierWidth': ['16 in', '16 in'],
      'wall.veneerHeight': '24 in', 'wall.heightAboveHead': '8 in', 'wall.studSpacing': '16 in',
    }
    const result = largest(vent)
    // two ties in a wall of 48 × 24 in less 16 × 8 in
    expect(valueOf(result) / 645.16).toBeCloseTo((48 * 24 - 16 * 8) / 2, 6)
    expect(result).toMatchObject({ notes: [expect.stringMatching(/add a tie/)], steps: ['8 in from the left end and 12 in above the foot: 3.556 ft2 of 2.67 ft2 allowed'] })
    expect(evaluate(tieCount, { facts: vent, limits }, builtOn)).toMatchObject({ value: 3, steps: { 1: '3 × 1 − 1 in the opening + 0 added along its edges = 2' } })
  })
})

test('an opening that takes up the whole wall leaves no tie of which to tell the area', () => {
  const nothingBut = { ...window, 'opening.pierWidth': ['0 in', '0 in'], 'opening.sillAboveGrade': '0 in', 'wall.heightAboveHead': '0 in', 'wall.veneerHeight': '48 in' }
  expect(largest(nothingBut)).toMatchObject({ status: 'notDetermined', value: null, reason: 'methodDoesNotHold', why: expect.stringMatching(/no brick for a tie/) as string })
})
