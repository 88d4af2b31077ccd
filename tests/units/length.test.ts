import { expect, test } from 'vitest'
import { areaOf, metres, millimetres, nanometresOf } from '../../src/units/length.ts'

const inch = 25_400_000

test('an inch is 25.4 mm and 0.0254 m', () => {
  expect(millimetres(inch)).toBe(25.4)
  expect(metres(inch)).toBe(0.0254)
})

test('meters come back as whole nanometres', () => {
  expect(nanometresOf(0.0254)).toBe(inch)
  expect(nanometresOf(0.000_000_000_6)).toBe(1)
})

test('a square inch is 645.16 mm²', () => {
  expect(areaOf(inch, inch)).toBeCloseTo(645.16, 9)
})
