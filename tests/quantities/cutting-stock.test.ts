import fc from 'fast-check'
import highsPackage from 'highs'
import { describe, expect, test } from 'vitest'
import { cutStock, type CuttingOrder, type CuttingPlan } from '../../src/quantities/cutting-stock.ts'
import { amount } from './inputs.ts'

/** The types of the package describe its other build, where the function is one level down. */
const loadHighs = highsPackage as unknown as typeof highsPackage.default
const highs = await loadHighs()

function pieces(...sizes: readonly (readonly [length: number, count: number])[]): CuttingOrder['pieces'] {
  return sizes.map(([length, count], index) => ({ reference: `P${index + 1}`, length, count }))
}

function planOf(order: CuttingOrder): CuttingPlan {
  const cut = cutStock(order)
  if (!cut.possible) throw new Error(`too long: ${cut.tooLong.map(({ reference }) => reference).join()}`)
  return cut.plan
}

/** Everything that has to be true of a plan, whatever it costs. */
function expectSound(order: CuttingOrder, plan: CuttingPlan): void {
  const { kerf = 0, trim = 0 } = order
  const asked = order.pieces.flatMap(({ reference, length, count }) => Array.from({ length: count }, () => `${reference} ${length}`))
  expect(plan.bars.flatMap((bar) => bar.pieces.map(({ reference, length }) => `${reference} ${length}`)).toSorted()).toEqual(asked.toSorted())
  for (const bar of plan.bars) {
    const cut = bar.pieces.reduce((sum, { length }) => sum + length, 0)
    expect(order.stockLengths).toContain(bar.stock)
    expect(cut + (bar.pieces.length - 1) * kerf).toBeLessThanOrEqual(bar.stock - trim)
    expect(bar.offcut).toBeGreaterThanOrEqual(0)
    expect(cut + bar.sawCuts + bar.trim + bar.offcut).toBe(bar.stock)
  }
  expect(plan.stock).toBe(plan.bars.reduce((sum, { stock }) => sum + stock, 0))
  expect(plan.trim + plan.offcuts).toBe(plan.stock - plan.pieces - plan.sawCuts)
  expect(plan.stock).toBeGreaterThanOrEqual(plan.bound)
  expect(plan.gap).toBe(plan.stock - plan.bound)
  expect(plan.optimal).toBe(plan.gap === 0)
}

/** The least stock by an integer program over every pattern there is, solved by an open-source solver (HiGHS). */
function leastByIntegerProgram({ pieces, stockLengths, kerf = 0, trim = 0 }: CuttingOrder): number {
  const patterns: { readonly stock: number; readonly takes: readonly number[] }[] = []
  const fill = (stock: number, at: number, left: number, takes: readonly number[]): void => {
    const piece = pieces[at]
    if (!piece) {
      if (takes.some((many) => many > 0)) patterns.push({ stock, takes })
      return
    }
    for (let many = 0; many <= piece.count && many * (piece.length + kerf) <= left; many += 1) fill(stock, at + 1, left - many * (piece.length + kerf), [...takes, many])
  }
  for (const stock of stockLengths) fill(stock, 0, stock - trim + kerf, [])
  const sum = (terms: readonly string[]) => terms.join(' + ')
  const program = [
    'Minimize', ` cost: ${sum(patterns.map(({ stock }, index) => `${stock} x${index}`))}`, 'Subject To',
    ...pieces.map(({ count }, at) => ` p${at}: ${sum(patterns.flatMap(({ takes }, index) => ((takes[at] ?? 0) > 0 ? [`${takes[at]} x${index}`] : [])))} >= ${count}`),
    'General', ` ${patterns.map((_, index) => `x${index}`).join(' ')}`, 'End',
  ].join('\n')
  const solution = highs.solve(program, { mip_rel_gap: 0, output_flag: false })
  expect(solution.Status).toBe('Optimal')
  return Math.round(solution.ObjectiveValue)
}

describe('published cutting-stock problems', () => {
  test('rolls of paper: 73 master rolls of 5600 mm, 0.401 % waste', () => {
    // Wikipedia, "Cutting stock problem", illustration: 13 widths, 219 rolls, 407160 mm in all, least 73
    const order = { stockLengths: [5600], pieces: pieces(
      [1380, 22], [1520, 25], [1560, 12], [1710, 14], [1820, 18], [1880, 18], [1930, 20], [2000, 10], [2050, 12], [2100, 14], [2140, 16], [2150, 18], [2200, 20],
    ) }
    const plan = planOf(order)
    expectSound(order, plan)
    expect(plan).toMatchObject({ stock: 73 * 5600, pieces: 407160, optimal: true })
    expect(((plan.offcuts / plan.stock) * 100).toFixed(2)).toBe('0.40')
  })

  test('raws of 100 for finals of 45, 36, 31 and 14: 453 raws', () => {
    // Data: the cutting-stock model of the GAMS model library; the optimum of 453, over a fractional 452.25, in Chvátal, Linear Programming (1983), chapter 13
    const order = { stockLengths: [100], pieces: pieces([45, 97], [36, 610], [31, 395], [14, 211]) }
    const plan = planOf(order)
    expectSound(order, plan)
    expect(plan).toMatchObject({ stock: 45_300, bound: 45_300, optimal: true })
    expect(leastByIntegerProgram({ ...order, pieces: pieces([45, 97], [36, 610], [31, 395], [14, 211]) })).toBe(45_300)
  })

  test('u120_00 of Falkenauer: 120 pieces on 48 bars of 150', () => {
    // OR-Library, binpack1, first of its instances; the best known number of bars is 48, which is also proven
    const sizes = [
      98, 98, 98, 96, 96, 94, 93, 93, 92, 91, 91, 90, 87, 86, 85, 85, 84, 84, 84, 84, 84, 83, 83, 82, 82, 81, 80, 80, 80, 79, 79, 78, 78, 78, 78, 76, 74, 74, 73, 73,
      73, 73, 72, 71, 70, 70, 70, 69, 69, 69, 67, 66, 64, 62, 62, 60, 60, 59, 58, 58, 58, 57, 57, 57, 57, 55, 55, 55, 50, 49, 49, 49, 47, 46, 46, 45, 45, 44, 44, 43,
      43, 43, 43, 42, 42, 42, 42, 42, 41, 41, 41, 39, 39, 38, 38, 38, 37, 36, 36, 36, 35, 33, 33, 33, 32, 32, 30, 30, 30, 29, 28, 27, 27, 26, 25, 25, 24, 23, 23, 20,
    ]
    const order = { stockLengths: [150], pieces: pieces(...sizes.map((size) => [size, 1] as const)) }
    const plan = planOf(order)
    expectSound(order, plan)
    expect(plan).toMatchObject({ stock: 48 * 150, optimal: true })
  })
})

const smallOrder = fc.record({
  sizes: fc.array(fc.tuple(fc.integer({ min: 8, max: 60 }), fc.integer({ min: 1, max: 4 })), { minLength: 1, maxLength: 6 }),
  stockLengths: fc.uniqueArray(fc.integer({ min: 64, max: 130 }), { minLength: 1, maxLength: 3 }),
  kerf: fc.integer({ min: 0, max: 3 }),
  trim: fc.integer({ min: 0, max: 4 }),
}).map(({ sizes, ...order }): CuttingOrder => ({ ...order, pieces: pieces(...sizes) }))

describe('any cutting order', () => {
  test('is cut at the least cost that an integer program finds', { timeout: 120_000 }, () => {
    fc.assert(fc.property(smallOrder, (order) => {
      const plan = planOf(order)
      expectSound(order, plan)
      expect(plan.optimal).toBe(true)
      expect(plan.stock).toBe(leastByIntegerProgram(order))
    }), { numRuns: 80 })
  })

  test('a large one made of full bars: the bound is exact, and the plan within one bar of it', () => {
    // pieces made by cutting full bars up at chance places: exactly so many bars will do
    const known = fc.array(fc.uniqueArray(fc.integer({ min: 1, max: 95 }), { minLength: 1, maxLength: 5 }), { minLength: 10, maxLength: 30 })
    fc.assert(fc.property(known, (bars) => {
      const lengths = bars.flatMap((cuts) => [...cuts, 96].toSorted((one, other) => one - other).map((cut, index, all) => cut - (all[index - 1] ?? 0)))
      const order = { stockLengths: [96], pieces: pieces(...lengths.map((length) => [length, 1] as const)) }
      const plan = planOf(order)
      expectSound(order, plan)
      expect(plan.bound).toBe(bars.length * 96)
      expect(plan.bars.length).toBeLessThanOrEqual(bars.length + 1)
    }), { numRuns: 15 })
  })

  test('in odd nanometers, with stock lengths that have nothing in common, is sound too', () => {
    const odd = fc.array(fc.tuple(fc.integer({ min: 300_000_001, max: 2_900_000_003 }), fc.integer({ min: 1, max: 3 })), { minLength: 1, maxLength: 14 })
    fc.assert(fc.property(odd, (sizes) => {
      const order = { stockLengths: [3_048_000_001, 6_000_000_007], kerf: 3_175_001, trim: 6_350_003, pieces: pieces(...sizes) }
      expectSound(order, planOf(order))
    }), { numRuns: 25 })
  })

  test('hangs on nothing but the order', () => {
    fc.assert(fc.property(smallOrder, (order) => { expect(cutStock(order)).toEqual(cutStock(order)) }), { numRuns: 20 })
  })

  test('stopped early still gives a sound plan and a bound that holds', () => {
    fc.assert(fc.property(smallOrder, (order) => {
      const quick = planOf({ ...order, searchSteps: 1 })
      expectSound(order, quick)
      expect(quick.bound).toBeLessThanOrEqual(planOf(order).stock)
    }), { numRuns: 60 })
  })
})

describe('on the saw bench', () => {
  test('angles of 5 ft 4 in from 16 ft bars: a saw cut of 1/8 in lets two out of a bar, not three', () => {
    // worked by hand: 3 × 64 in + 2 × 1/8 in = 192 1/4 in
    const order = { stockLengths: [amount('16 ft')], kerf: amount('1/8 in'), pieces: [{ reference: 'W1', length: amount('64 in'), count: 6 }] }
    expect(planOf(order).bars).toHaveLength(3)
    expect(planOf({ ...order, kerf: 0 }).bars).toHaveLength(2)
    expect(planOf(order).bars[0]).toMatchObject({ sawCuts: amount('1/4 in'), offcut: amount('63 3/4 in'), trim: 0 })
  })

  test('the last piece of a bar needs no cut, and one beside a sliver takes the sliver', () => {
    const order = { stockLengths: [amount('3000 mm')], kerf: amount('3 mm') }
    const bar = (length: string) => planOf({ ...order, pieces: [{ reference: 'W1', length: amount(length), count: 2 }] }).bars
    expect(bar('1498.5 mm')).toMatchObject([{ sawCuts: amount('3 mm'), offcut: 0 }])
    expect(bar('1498 mm')).toMatchObject([{ sawCuts: amount('4 mm'), offcut: 0 }])
    expect(bar('1499 mm')).toHaveLength(2)
  })

  test('takes the stock length that wastes least, and trims each bar', () => {
    // worked by hand: three of 78 in with two cuts of 1/8 in and 1 in of trim are 235 1/4 in, within 240 in; 144 in holds one
    const order = { stockLengths: [amount('12 ft'), amount('20 ft')], kerf: amount('1/8 in'), trim: amount('1 in'), pieces: [{ reference: 'W1', length: amount('78 in'), count: 4 }] }
    const plan = planOf(order)
    expectSound(order, plan)
    expect(plan.bars.map(({ stock }) => stock)).toEqual([amount('20 ft'), amount('12 ft')])
    expect(plan).toMatchObject({ trim: amount('2 in'), optimal: true })
  })

  test('keeps the marks of the openings apart', () => {
    const order = { stockLengths: [100], pieces: [{ reference: 'W1', length: 50, count: 1 }, { reference: 'W2', length: 50, count: 2 }] }
    expect(planOf(order).bars.map((bar) => bar.pieces.map(({ reference }) => reference))).toEqual([['W1', 'W2'], ['W2']])
  })

  test('tells every piece that no bar holds', () => {
    const order = { stockLengths: [120, 96], trim: 2, pieces: [{ reference: 'W1', length: 119, count: 1 }, { reference: 'W2', length: 118, count: 1 }, { reference: 'D1', length: 200, count: 3 }] }
    expect(cutStock(order)).toEqual({ possible: false, tooLong: [{ reference: 'W1', length: 119, longest: 118 }, { reference: 'D1', length: 200, longest: 118 }] })
  })

  test('nothing to cut buys nothing', () => {
    expect(planOf({ stockLengths: [100], pieces: [] })).toMatchObject({ bars: [], stock: 0, bound: 0, optimal: true })
  })

  test.each([
    { name: 'no stock', order: { stockLengths: [], pieces: pieces([10, 1]) } },
    { name: 'half a nanometer', order: { stockLengths: [100], pieces: pieces([10.5, 1]) } },
    { name: 'half a piece', order: { stockLengths: [100], pieces: pieces([10, 0.5]) } },
    { name: 'a negative saw cut', order: { stockLengths: [100], pieces: pieces([10, 1]), kerf: -1 } },
  ])('$name is a fault of the caller', ({ order }) => expect(() => cutStock(order)).toThrow())
})
