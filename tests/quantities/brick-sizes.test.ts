import { expect, test } from 'vitest'
import { brickSizes } from '../../src/quantities/brick-sizes.ts'
import { wallAroundOpening } from '../../src/quantities/wall-around-opening.ts'
import { amount, evaluate } from './inputs.ts'

const rowOf = (facts: Readonly<Record<string, unknown>>) => evaluate(brickSizes, { facts }).tables[0]?.rows[0]

// BIA Technical Notes 10B (1993), table 1: modular brick 3 5/8 by 2 1/4 by 7 5/8 in with 3/8 in joints, three courses in 8 in
test('a brick of a standard name has its published sizes and coursing', () => {
  const [height, length, thickness, joint, course] = rowOf({ 'wall.veneer.unit': 'modular' }) ?? []
  expect([height, length, thickness, joint]).toEqual(['2 1/4 in', '7 5/8 in', '3 5/8 in', '3/8 in'].map(amount))
  expect(Number(course) * 3).toBeCloseTo(amount('8 in'), 3)
})

test('metric sizes that are described go before any name', () => {
  const [height, length, , joint, course] = rowOf({ 'wall.veneer.unitHeight': '65 mm', 'wall.veneer.unitLength': '215 mm', 'wall.veneer.jointThickness': '10 mm' }) ?? []
  expect([height, length, joint, course]).toEqual(['65 mm', '215 mm', '10 mm', '75 mm'].map(amount))
})

test('a brick without a name or sizes is not determined', () => {
  expect(evaluate(brickSizes, { facts: {} })).toMatchObject({ status: 'notDetermined', missing: ['wall.veneer.unit'] })
})

const wall = { 'opening.width': '48 in', 'opening.height': '60 in', 'opening.pierWidth': ['64 in', '96 in'], 'opening.sillAboveGrade': '36 in', 'wall.heightAboveHead': '48 in' }

// Worked by hand: 64 in of brick on the left; 48 + 96 in to the right end; the foot 36 in under the sill, the top 60 + 48 in over it
test('the wall around an opening ends where the brick beside, under and over it does', () => {
  const { value, tables } = evaluate(wallAroundOpening, { facts: wall })
  expect(value).toBe('208 in by 144 in')
  expect(tables[0]?.rows).toEqual([['-64 in', '144 in', '-36 in', '108 in'].map(amount)])
})

test('metric, and not known without what lies over the head', () => {
  const metric = { 'opening.width': '1200 mm', 'opening.height': '1500 mm', 'opening.pierWidth': '1000 mm', 'opening.sillAboveGrade': '900 mm', 'wall.heightAboveHead': '1400 mm' }
  expect(evaluate(wallAroundOpening, { facts: metric }).tables[0]?.rows).toEqual([['-1000 mm', '2200 mm', '-900 mm', '2900 mm'].map(amount)])
  expect(evaluate(wallAroundOpening, { facts: { ...wall, 'wall.heightAboveHead': null } })).toMatchObject({ status: 'notDetermined' })
})
