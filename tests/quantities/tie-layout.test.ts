import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { areasOf, netArea } from '../../src/quantities/tie-demand.ts'
import { layOutTies, type TieDemand } from '../../src/quantities/tie-layout.ts'

const inch_nm = 25_400_000
const modular_nm = (8 / 3) * inch_nm

interface Inches {
  readonly left: number
  readonly width: number
  readonly right: number
  readonly below: number
  readonly height: number
  readonly above: number
}

/** Around an opening: 12 in from its edge and 36 in apart, IRC R703.8.4.1.1, from memory; also a county notice of 2007 to builders. */
function demandOf({ left, width, right, below, height, above }: Inches, across = 16, up = 24, rest: Partial<TieDemand> = {}): TieDemand {
  return {
    panel: { left: 0, right: (left + width + right) * inch_nm, bottom: 0, top: (below + height + above) * inch_nm },
    opening: { left: left * inch_nm, right: (left + width) * inch_nm, bottom: below * inch_nm, top: (below + height) * inch_nm },
    across: across * inch_nm, up: up * inch_nm, course: modular_nm, isLarge: true, hasSill: true, distance: 12 * inch_nm, edgeSpacing: 36 * inch_nm, ...rest,
  }
}

/** Places in inches, for what a tie serves. */
function serving(demand: TieDemand, what: string): readonly (readonly [x: number, y: number])[] {
  return layOutTies(demand).ties.filter(({ serves }) => serves.includes(what)).map(({ x, y }) => [inchesOf(x), inchesOf(y)])
}

const inchesOf = (nanometres: number) => Number((nanometres / inch_nm).toFixed(3))

describe('a layout of ties', () => {
  // worked by hand: columns at 8, 24 … 136 and rows at 8, 24 … 88 in
  const window: Inches = { left: 48, width: 48, right: 48, below: 24, height: 48, above: 24 }
  const demand = demandOf(window, 16, 16)

  test('leaves out what falls in the opening', () => {
    // columns 56, 72 and 88 and rows 24 (on its lower edge), 40, 56 and 72 (on its upper one)
    expect(layOutTies(demand)).toMatchObject({ columns: { length: 9 }, rows: { length: 6 }, inOpening: 12 })
    expect(serving(demand, 'field')).toHaveLength(9 * 6 - 12)
  })

  test('counts ties of the field beside the opening for its jambs', () => {
    expect(serving(demand, 'left jamb')).toEqual([[40, 24], [40, 40], [40, 56], [40, 72]])
    expect(serving(demand, 'right jamb')).toEqual([[104, 24], [104, 40], [104, 56], [104, 72]])
  })

  test('adds ties where no row of the field is near enough to carry the brick over the head', () => {
    // the rows at 88 and at 8 in are 16 in from the edges; the middle of the 12 in is 78 and 18 in, the nearest bed joints are the 29th and the 7th
    expect(serving(demand, 'head')).toEqual([[56, 77.333], [72, 77.333], [88, 77.333]])
    expect(serving(demand, 'sill')).toEqual([[56, 18.667], [72, 18.667], [88, 18.667]])
    expect(layOutTies(demand)).toMatchObject({ added: 6, ties: { length: 42 + 6 } })
  })

  test('adds none under a door, and none at all at an opening of no more than 16 in', () => {
    expect(serving({ ...demand, hasSill: false }, 'sill')).toEqual([])
    expect(layOutTies({ ...demand, isLarge: false })).toMatchObject({ added: 0, ties: { length: 42 } })
  })

  test('adds ties at a jamb that the columns pass too far away', () => {
    // columns at 12, 36 … in: the left jamb at 58 in is 22 in from the column at 36, so a line goes in the middle of the 12 in
    const far = demandOf({ left: 58, width: 24, right: 62, below: 24, height: 48, above: 24 }, 24, 16)
    expect(serving(far, 'left jamb')).toEqual([[52, 24], [52, 40], [52, 56], [52, 72]])
  })

  test('puts ties closer where the rule asks for it', () => {
    // 24 in on center around openings where the wind is strong, TMS 402, from memory; columns 32 in apart at 16, 48 … 176 in
    const close = demandOf({ left: 64, width: 64, right: 64, below: 32, height: 48, above: 32 }, 32, 10 + 2 / 3, { edgeSpacing: 24 * inch_nm })
    const head = serving(close, 'head').map(([x]) => x)
    expect(head.map((x, index) => x - (head[index - 1] ?? x))).toEqual([0, 16, 16, 16, 16])
  })

  test('has none where there is no brick beside the opening', () => {
    expect(serving(demandOf({ ...window, left: 0 }, 16, 16), 'left jamb')).toEqual([])
    expect(serving(demandOf({ ...window, above: 0 }, 16, 16), 'head')).toEqual([])
  })

  const anyDemand = fc
    .record({
      left: fc.integer({ min: 4, max: 120 }), width: fc.integer({ min: 12, max: 130 }), right: fc.integer({ min: 4, max: 120 }),
      below: fc.integer({ min: 6, max: 60 }), height: fc.integer({ min: 12, max: 90 }), above: fc.integer({ min: 10, max: 90 }),
    })
    .chain((inches) => fc.constantFrom([16, 24], [16, 16], [24, 16], [32, 8], [32, 10 + 2 / 3]).map(([across, up]) => demandOf(inches, across, up)))

  test('keeps every tie in the brick, each in a bed joint, and no two at one place', () => {
    fc.assert(fc.property(anyDemand, (given) => {
      const { ties } = layOutTies(given)
      expect(new Set(ties.map(({ x, y }) => `${x} ${y}`)).size).toBe(ties.length)
      for (const { x, y } of ties) {
        expect(x > 0 && x < given.panel.right && y > 0 && y < given.panel.top).toBe(true)
        expect(x >= given.opening.left && x <= given.opening.right && y >= given.opening.bottom && y <= given.opening.top).toBe(false)
        expect(y / modular_nm).toBeCloseTo(Math.round(y / modular_nm), 5)
      }
    }))
  })

  test('keeps the ties of an edge within 12 in of it and of its ends, and no more than 36 in apart', () => {
    fc.assert(fc.property(anyDemand, (given) => {
      const { opening } = given
      const { ties } = layOutTies(given)
      const left = ties.filter(({ serves }) => serves.includes('left jamb'))
      const heights = left.map(({ y }) => y)
      expect(left.every(({ x }) => x < opening.left && x >= opening.left - given.distance)).toBe(true)
      expect(heights[0]).toBeLessThanOrEqual(opening.bottom + given.distance)
      expect(heights.at(-1)).toBeGreaterThanOrEqual(opening.top - given.distance)
      heights.slice(1).forEach((height, index) => expect(height - (heights[index] ?? 0)).toBeLessThanOrEqual(given.edgeSpacing))
    }))
  })

  test('shares out all of the brick', () => {
    fc.assert(fc.property(anyDemand, (given) => {
      const areas = areasOf(given, layOutTies(given))
      expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(netArea(given), 3)
    }))
  })

  test('gives every tie the rectangle of the spacings where the opening cuts the grid half way between ties', () => {
    // worked by hand: 24 × 16 in each, as Paris, Texas, R703.8.4.1.2 has it for studs at 24 in; edges of the opening on 48, 96, 32 and 64 in
    const even = demandOf({ left: 48, width: 48, right: 48, below: 32, height: 32, above: 32 }, 24, 16)
    areasOf(even, layOutTies(even)).forEach((area) => expect(area / 645.16).toBeCloseTo(384, 6))
  })
})
