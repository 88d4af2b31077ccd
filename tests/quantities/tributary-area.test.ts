import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { tributaryAreas, type Point, type Rectangle } from '../../src/quantities/tributary-area.ts'

const panel: Rectangle = { left: 0, right: 200, bottom: 0, top: 120 }
const opening: Rectangle = { left: 60, right: 120, bottom: 40, top: 100 }
const none: Rectangle = { left: 0, right: 0, bottom: 0, top: 0 }

const sum = (areas: readonly number[]) => areas.reduce((total, area) => total + area, 0)

/** Wherever ties may stand: in the panel, no two at one place. */
const places = fc.uniqueArray(fc.record({ x: fc.integer({ min: 0, max: 200 }), y: fc.integer({ min: 0, max: 120 }) }), { minLength: 1, maxLength: 40, selector: ({ x, y }) => `${x} ${y}` })

/** The area of each cell by counting: which point is nearest to the middle of each of many small squares. */
function countedAreas(points: readonly Point[], step: number): readonly number[] {
  const areas = points.map(() => 0)
  for (let x = panel.left + step / 2; x < panel.right; x += step) {
    for (let y = panel.bottom + step / 2; y < panel.top; y += step) {
      if (x > opening.left && x < opening.right && y > opening.bottom && y < opening.top) continue
      const distances = points.map((point) => Math.hypot(point.x - x, point.y - y))
      const nearest = distances.indexOf(Math.min(...distances))
      areas[nearest] = (areas[nearest] ?? 0) + step ** 2
    }
  }
  return areas
}

describe('the area nearest to each tie', () => {
  test('adds up to the panel less the opening, wherever the ties stand', () => {
    fc.assert(fc.property(places, (points) => {
      const areas = tributaryAreas(points, panel, opening)
      expect(sum(areas)).toBeCloseTo(200 * 120 - 60 * 60, 6)
      expect(Math.min(...areas)).toBeGreaterThanOrEqual(-1e-9)
    }))
  })

  test('is what counting small squares gives', () => {
    fc.assert(fc.property(places, (points) => {
      const counted = countedAreas(points, 1)
      // a square astride an edge of the cell may be counted for a neighbor: an error of the order of the cell's outline
      tributaryAreas(points, panel, opening).forEach((area, index) => expect(Math.abs(area - (counted[index] ?? 0))).toBeLessThan(150))
      expect(sum(counted)).toBe(200 * 120 - 60 * 60)
    }), { numRuns: 20 })
  })

  test('does not depend on the order of the ties', () => {
    fc.assert(fc.property(places, (points) => {
      const turned = tributaryAreas(points.toReversed(), panel, opening).toReversed()
      tributaryAreas(points, panel, opening).forEach((area, index) => expect(area).toBeCloseTo(turned[index] ?? 0, 6))
    }))
  })

  test('is the same on both sides of the middle when the layout is', () => {
    const middle: Rectangle = { left: 70, right: 130, bottom: 40, top: 100 }
    fc.assert(fc.property(fc.uniqueArray(fc.record({ x: fc.integer({ min: 0, max: 99 }), y: fc.integer({ min: 0, max: 120 }) }), { minLength: 1, maxLength: 15, selector: ({ x, y }) => `${x} ${y}` }), (left) => {
      const areas = tributaryAreas([...left, ...left.map(({ x, y }) => ({ x: 200 - x, y }))], panel, middle)
      left.forEach((_, index) => expect(areas[index]).toBeCloseTo(areas[left.length + index] ?? 0, 6))
    }))
  })

  // worked by hand: rows and columns divide the wall into rectangles, spacing by spacing inside
  test.each([[16, 24], [24, 16], [32, 12]])('of a regular grid is %i × %i inside', (across, up) => {
    const points = [0, 1, 2, 3, 4].flatMap((column) => [0, 1, 2, 3].map((row) => ({ x: across * (column + 1 / 2), y: up * (row + 1 / 2) })))
    const areas = tributaryAreas(points, { left: 0, right: 5 * across, bottom: 0, top: 4 * up }, none)
    areas.forEach((area) => expect(area).toBeCloseTo(384, 9))
  })

  test('of one tie is the whole wall, less what of the opening lies in it', () => {
    expect(tributaryAreas([{ x: 10, y: 10 }], panel, opening)).toEqual([200 * 120 - 60 * 60])
    expect(tributaryAreas([{ x: 10, y: 10 }], panel, none)).toEqual([200 * 120])
  })

  test('of two ties is cut half way between them', () => {
    // worked by hand: at x = 60, where the opening begins
    expect(tributaryAreas([{ x: 20, y: 60 }, { x: 100, y: 60 }], panel, opening)).toEqual([60 * 120, 140 * 120 - 60 * 60])
  })

  test('there is none without ties', () => expect(tributaryAreas([], panel, opening)).toEqual([]))
})
