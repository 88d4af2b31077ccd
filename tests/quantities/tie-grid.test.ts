import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lastBedJoint, tieColumns, tieRows } from '../../src/quantities/tie-grid.ts'

const inch_nm = 25_400_000
const inches = (...amounts: readonly number[]) => amounts.map((amount) => Math.round(amount * inch_nm))
const modular_nm = (8 / 3) * inch_nm

describe('columns of ties', () => {
  // worked by hand
  test.each([
    { width: 48, spacing: 16, at: [8, 24, 40] },
    { width: 50, spacing: 16, at: [1, 17, 33, 49] },
    { width: 16, spacing: 16, at: [8] },
    { width: 10, spacing: 16, at: [5] },
  ])('$width in at $spacing in', ({ width, spacing, at }) => expect(tieColumns(width * inch_nm, spacing * inch_nm)).toEqual(inches(...at)))

  test('leave nothing farther than half a spacing from a column', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 10 ** 12 }), fc.integer({ min: 10 ** 8, max: 10 ** 9 }), (width, spacing) => {
      const columns = tieColumns(width, spacing)
      const gaps = columns.map((column, index) => column - (columns[index - 1] ?? -column))
      expect(Math.max(...gaps, 2 * (width - (columns.at(-1) ?? 0)))).toBeLessThanOrEqual(spacing + 2)
    }))
  })
})

describe('rows of ties', () => {
  // worked by hand, in courses of 8 in for three
  test.each([
    // the amendment of Paris, Texas, R703.8.4.1.2, starts "about 8 in" above the foundation where rows are 16 in apart
    { name: 'every sixth course', height: 96, spacing: 16, at: [8, 24, 40, 56, 72, 88] },
    { name: 'every ninth course', height: 96, spacing: 24, at: [32 / 3, 104 / 3, 176 / 3, 248 / 3, 256 / 3] },
    { name: 'a low wall', height: 8, spacing: 24, at: [16 / 3] },
  ])('$name', ({ height, spacing, at }) => expect(tieRows(height * inch_nm, spacing * inch_nm, modular_nm)).toEqual(inches(...at)))

  test('stand at any height where the brick is not known', () => {
    expect(tieRows(100 * inch_nm, 24 * inch_nm, 1)).toEqual([...inches(12, 36, 60, 84), 88 * inch_nm - 1])
  })

  test('are none where they would be closer than a course, or the wall has no bed joint', () => {
    expect(tieRows(96 * inch_nm, 2 * inch_nm, modular_nm)).toEqual([])
    expect(tieRows(2 * inch_nm, 16 * inch_nm, modular_nm)).toEqual([])
  })

  test('stand in bed joints of the wall, none too far from the next, the first and the last within half of it but for a course', () => {
    fc.assert(fc.property(fc.integer({ min: 12, max: 600 }), fc.integer({ min: 3, max: 9 }), (height, courses) => {
      const spacing = courses * modular_nm
      const rows = tieRows(height * inch_nm, spacing, modular_nm)
      const joints = rows.map((row) => row / modular_nm)
      joints.forEach((joint) => expect(joint).toBeCloseTo(Math.round(joint), 6))
      expect(Math.max(...rows.map((row, index) => row - (rows[index - 1] ?? 0)).slice(1), 0)).toBeLessThanOrEqual(spacing + 1)
      expect(rows[0]).toBeLessThanOrEqual(spacing / 2 + 1)
      expect(rows.at(-1)).toBeLessThan(height * inch_nm)
      expect(height * inch_nm - (rows.at(-1) ?? 0)).toBeLessThanOrEqual(Math.max(spacing / 2, modular_nm) + 2)
    }))
  })

  test('the last bed joint lies under the top', () => {
    expect(lastBedJoint(8 * inch_nm, modular_nm)).toBe(2)
    expect(lastBedJoint(9 * inch_nm, modular_nm)).toBe(3)
  })
})

describe('ties in a square meter', () => {
  // 1000000 / (up × across): the spacings of Canada, Australia and New Zealand, from memory, and 450 × 900 of the United Kingdom, worked by hand
  test.each([[400, 800, 3.125], [500, 600, 3.333], [600, 400, 4.167], [450, 900, 2.469], [600, 600, 2.778], [400, 600, 4.167]])('%i mm up and %i mm across: %f', (up, across, each) => {
    const [width, height] = [9 * across * 1e6, 5 * up * 1e6]
    const ties = tieColumns(width, across * 1e6).length * tieRows(height, up * 1e6, 1).length
    expect((ties * 1e18) / (width * height)).toBeCloseTo(each, 3)
  })
})
