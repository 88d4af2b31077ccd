import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cutPattern, type CutPattern, type Pan } from '../../src/quantities/flashing-pattern.ts'
import { areaOf, folded, greatestTear, type Facet, type Place } from './folded-sheet.ts'
import { amount } from './inputs.ts'

const pan: Pan = {
  length: amount('56 in'), leftDam: amount('1 in'), rightDam: amount('1 in'), depth: amount('4 5/8 in'), upstand: amount('8 in'),
  projection: amount('1/4 in'), dripAngle: 45, fall: 0, hem: 0,
}

/** The facets as they stand in the wall: x along it from the left dam, y from the face to the backing, z up. The bed falls to the face. */
function inWall(given: Pan, pattern: CutPattern): readonly Facet[] {
  const face = pattern.folds.find(({ name }) => name === 'Left end dam')?.from[1] ?? NaN
  const facets = folded(pattern, [given.leftDam + given.length / 2, face + given.depth / 2])
  const [cos, sin] = [Math.cos((given.fall * Math.PI) / 180), Math.sin((given.fall * Math.PI) / 180)]
  return facets.map(({ flat, folded }) => ({ flat, folded: folded.map(([x, y, z]): Place => [x - given.leftDam, (y - face) * cos - z * sin, (y - face) * sin + z * cos]) }))
}

const places = (facets: readonly Facet[]) => facets.flatMap((facet) => facet.folded)
const isNear = (value: number, wanted: number) => Math.abs(value - wanted) < 40 // nanometers: rounding of the points, not of the folds

const anyPan = fc.record({
  length: fc.integer({ min: 400, max: 4_000 }), leftDam: fc.integer({ min: 12, max: 80 }), rightDam: fc.integer({ min: 12, max: 80 }),
  depth: fc.integer({ min: 90, max: 260 }), upstand: fc.integer({ min: 0, max: 260 }), projection: fc.integer({ min: 0, max: 25 }),
  dripAngle: fc.integer({ min: 0, max: 80 }), fall: fc.integer({ min: 0, max: 20 }), hem: fc.integer({ min: 0, max: 15 }),
}).map((sizes): Pan => ({ ...sizes, ...Object.fromEntries(Object.entries(sizes).filter(([name]) => !['dripAngle', 'fall'].includes(name)).map(([name, value]) => [name, value * 1_000_000])) }))

describe('the blank folded up', () => {
  test('is one sheet without a tear, and every part of it hangs on a fold', () => {
    fc.assert(fc.property(anyPan, fc.boolean(), (one, fallsBack) => {
      const given = { ...one, fall: fallsBack ? -one.fall : one.fall }
      const pattern = cutPattern(given)
      const facets = inWall(given, pattern)
      expect(greatestTear(facets)).toBeLessThan(40)
      expect(facets.reduce((sum, { flat }) => sum + areaOf(flat), 0) / areaOf(pattern.outline)).toBeCloseTo(1, 9)
    }))
  })

  test('has its dams plumb at the two ends, as high as asked, and out to the face', () => {
    fc.assert(fc.property(anyPan, (given) => {
      const facets = inWall(given, cutPattern(given))
      for (const [x, dam] of [[0, given.leftDam], [given.length, given.rightDam]] as const) {
        const plumb = facets.filter((facet) => facet.folded.every((place) => isNear(place[0], x)))
        expect(plumb).toHaveLength(1)
        const top = plumb.flatMap((facet) => facet.folded.filter(([, y]) => isNear(y, 0) || y < 0)).map(([, y, z]) => Math.hypot(y, z))
        expect(isNear(Math.max(...top), dam)).toBe(true)
        expect(Math.max(...plumb.flatMap((facet) => facet.folded.map(([, y]) => y)))).toBeLessThan(given.depth + 40)
      }
    }))
  })

  test('stands up the backing as high as asked', () => {
    fc.assert(fc.property(anyPan.filter(({ upstand }) => upstand > 0), (given) => {
      const facets = inWall(given, cutPattern(given))
      const rise = given.depth * Math.tan((given.fall * Math.PI) / 180)
      const [upstand, ...others] = facets.filter((facet) => facet.folded.every(([, y]) => isNear(y, given.depth)) && Math.max(...facet.folded.map(([, , z]) => z)) > rise + given.upstand - 40 && facet.flat.length > 3 && areaOf(facet.flat) > given.length * given.upstand / 2)
      expect(others).toEqual([])
      expect(isNear(Math.max(...(upstand?.folded ?? []).map(([, , z]) => z)), rise + given.upstand)).toBe(true)
    }))
  })

  test('holds water as high as it says: behind the face no free edge is lower over the bed', () => {
    fc.assert(fc.property(anyPan, (given) => {
      const pattern = cutPattern(given)
      const facets = inWall(given, pattern)
      const tan = Math.tan((given.fall * Math.PI) / 180)
      const onEdge = facets.flatMap(({ flat, folded }) => folded.filter((_, index) => pattern.outline.some(([x, y]) => Math.hypot(x - (flat[index]?.[0] ?? NaN), y - (flat[index]?.[1] ?? NaN)) < 5)))
      const behind = onEdge.filter(([, y]) => y > given.depth / 2)
      expect(behind.length).toBeGreaterThan(0)
      const lowest = Math.min(...behind.map(([, y, z]) => z - y * tan))
      expect(lowest).toBeGreaterThan(pattern.holds - 40)
      if (given.upstand > 0) expect(pattern.holds).toBeGreaterThanOrEqual(Math.min(given.leftDam, given.rightDam, given.upstand * 0.6))
    }))
  })

  test('reaches past the face by the projection, turned down as asked', () => {
    fc.assert(fc.property(anyPan.filter(({ projection, fall, dripAngle }) => projection > 0 && dripAngle >= fall), (given) => {
      const all = places(inWall(given, cutPattern(given)))
      const out = Math.min(...all.map(([, y]) => y))
      const dams = Math.max(given.leftDam, given.rightDam) * Math.sin((given.fall * Math.PI) / 180)
      expect(isNear(out, -Math.max(given.projection, dams))).toBe(true)
      const atEdge = all.filter(([, y]) => isNear(y, -given.projection))
      expect(atEdge.some(([, , z]) => isNear(z, -given.projection * Math.tan((given.dripAngle * Math.PI) / 180)))).toBe(true)
    }))
  })
})

describe('the blank laid out', () => {
  test('a head flashing with 1 in dams', () => {
    // worked by hand: drip strip 1/4 / cos 45° = 0.35355 in; face there, back 4 5/8 in on, top 8 in on; the ear takes 1 in by 1 in
    const drip = 8_980_256 // nm
    const [face, back, top] = [drip, drip + amount('4 5/8 in'), drip + amount('12 5/8 in')]
    const inch = amount('1 in')
    const pattern = cutPattern(pan)
    expect(pattern).toMatchObject({ length: amount('58 in'), width: top, holds: inch })
    expect(pattern.outline).toEqual([[0, top], [0, face], [inch, face], [inch, 0], [57 * inch, 0], [57 * inch, face], [58 * inch, face], [58 * inch, top]])
    expect(pattern.folds).toEqual([
      { name: 'Drip, at the face', from: [inch, face], to: [57 * inch, face], direction: 'down', angle: 45 },
      { name: 'Upstand', from: [inch, back], to: [57 * inch, back], direction: 'up', angle: 90 },
      { name: 'Left end dam', from: [inch, face], to: [inch, back], direction: 'up', angle: 90 },
      { name: 'Left ear, along the back of the dam', from: [inch, back], to: [0, back], direction: 'down', angle: 90 },
      { name: 'Left ear, diagonal', from: [inch, back], to: [0, back + inch], direction: 'up', angle: 180 },
      { name: 'Right end dam', from: [57 * inch, face], to: [57 * inch, back], direction: 'up', angle: 90 },
      { name: 'Right ear, along the back of the dam', from: [57 * inch, back], to: [58 * inch, back], direction: 'down', angle: 90 },
      { name: 'Right ear, diagonal', from: [57 * inch, back], to: [58 * inch, back + inch], direction: 'up', angle: 180 },
    ])
  })

  test('its area is the rectangle less the two corners cut away at the drip', () => {
    fc.assert(fc.property(anyPan.filter(({ upstand, leftDam, rightDam }) => upstand > 2 * Math.max(leftDam, rightDam)), (given) => {
      const { outline, length, width, folds } = cutPattern(given)
      const face = folds.find(({ name }) => name === 'Left end dam')?.from[1] ?? NaN
      expect(areaOf(outline) / (length * width - face * (given.leftDam + given.rightDam))).toBeCloseTo(1, 12)
    }))
  })

  test('an upstand lower than the dam makes a smaller ear, and the corner holds only so much', () => {
    // worked by hand: dams 50 mm, upstand 20 mm: the ear is 20 mm by 20 mm, and 30 mm by 20 mm are cut away beside it
    const low = cutPattern({ ...pan, leftDam: amount('50 mm'), rightDam: amount('50 mm'), upstand: amount('20 mm'), projection: 0 })
    expect(low.holds).toBe(amount('20 mm'))
    expect(areaOf(low.outline)).toBe(low.length * low.width - 2 * amount('30 mm') * amount('20 mm'))
  })

  test('a membrane cut flush has neither drip nor hem; sheet metal gets its hem', () => {
    expect(cutPattern({ ...pan, projection: 0, hem: amount('1/2 in') }).folds.map(({ name }) => name)).not.toContain('Hem, folded under')
    expect(cutPattern({ ...pan, hem: amount('1/2 in') })).toMatchObject({ width: cutPattern(pan).width + amount('1/2 in'), folds: expect.arrayContaining([expect.objectContaining({ name: 'Hem, folded under', direction: 'down', angle: 180 })]) as unknown })
  })
})
