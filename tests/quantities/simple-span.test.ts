import { describe, expect, test } from 'vitest'
import { greatestMoment, greatestSag, reactionsOf, type SpanLoad } from '../../src/quantities/simple-span.ts'

const triangle = (total: number): SpanLoad => ({ shape: 'triangle', total })
const part = (total: number, from: number, to: number): SpanLoad => ({ shape: 'part', total, from, to })

function expectClose(value: number, expected: number, relative: number): void {
  expect(Math.abs(value / expected - 1), `${value} for ${expected}`).toBeLessThanOrEqual(relative)
}

/** The weight on one slice, straight from what the load is said to be; nothing of the formulas under test. */
function weightOn(load: SpanLoad, span: number, start: number, step: number): number {
  if (load.shape === 'triangle') return ((2 * load.total) / span) * (1 - Math.abs(2 * start + step - span) / span) * step
  return (load.total / (load.to - load.from)) * Math.max(0, Math.min(start + step, load.to) - Math.max(start, load.from))
}

/** The beam cut into thin slices: moments about the supports, then shear, moment, slope and sag summed slice by slice. */
function inSlices(loads: readonly SpanLoad[], span: number, slices: number) {
  const step = span / slices
  const weights = Array.from({ length: slices }, (_, index) => loads.reduce((sum, load) => sum + weightOn(load, span, index * step, step), 0))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const right = weights.reduce((sum, weight, index) => sum + weight * (index + 0.5) * step, 0) / span
  const moments = [0]
  weights.reduce((shear, weight, index) => {
    moments.push((moments[index] ?? NaN) + (shear - weight / 2) * step)
    return shear - weight
  }, total - right)
  const [slopes, drops] = [[0], [0]]
  for (let index = 0; index < slices; index++) {
    const before = slopes[index] ?? NaN
    slopes.push(before - (((moments[index] ?? NaN) + (moments[index + 1] ?? NaN)) / 2) * step)
    drops.push((drops[index] ?? NaN) + ((before + (slopes[index + 1] ?? NaN)) / 2) * step)
  }
  const tilt = (drops[slices] ?? NaN) / slices
  return { left: total - right, right, moment: Math.max(...moments), sag: Math.max(...drops.map((drop, index) => drop - tilt * index)) }
}

describe('a beam cut into twenty thousand slices gives the same', () => {
  test.each<{ name: string; loads: readonly SpanLoad[]; span: number }>([
    { name: 'a triangle', loads: [triangle(1_000)], span: 2 },
    { name: 'an even load', loads: [part(1_000, 0, 3)], span: 3 },
    { name: 'an even load near the left end', loads: [part(5_000, 0.2, 0.9)], span: 2 },
    { name: 'an even load at the right end', loads: [part(5_000, 1.5, 2)], span: 2 },
    { name: 'a short load in the middle', loads: [part(700, 0.99, 1.01)], span: 2 },
    { name: 'all three together', loads: [triangle(1_785), part(165, 0, 1.93), part(4_000, 1.1, 1.93)], span: 1.93 },
    { name: 'two loads at the ends', loads: [triangle(3_000), part(6_000, 0, 0.4), part(6_000, 1.4, 1.8)], span: 1.8 },
  ])('$name', ({ loads, span }) => {
    const slices = inSlices(loads, span, 20_000)
    const [left, right] = reactionsOf(loads, span)
    expectClose(left, slices.left, 1e-6)
    expectClose(right, slices.right, 1e-6)
    expectClose(greatestMoment(loads, span).amount, slices.moment, 1e-6)
    expectClose(greatestSag(loads, span).amount, slices.sag, 1e-6)
  })
})

// Closed forms as handbooks of statics print them (Steel Construction Manual, Table 3-23, simple beams), from memory
describe('closed forms', () => {
  test('a triangle: W/2, W L/6, W L³/60', () => {
    expect(reactionsOf([triangle(6)], 3)).toEqual([3, 3])
    expectClose(greatestMoment([triangle(6)], 3).amount, 3, 1e-14)
    expectClose(greatestSag([triangle(6)], 3).amount, 2.7, 1e-14)
    expectClose(greatestSag([triangle(6)], 3).at, 1.5, 1e-12)
  })

  test('an even load: W/2, W L/8, 5 W L³/384', () => {
    expect(reactionsOf([part(8, 0, 2)], 2)).toEqual([4, 4])
    expectClose(greatestMoment([part(8, 0, 2)], 2).amount, 2, 1e-14)
    expectClose(greatestSag([part(8, 0, 2)], 2).amount, (5 * 8 * 8) / 384, 1e-14)
  })

  test.each([{ a: 0.4, b: 1 }, { a: 0, b: 0.3 }, { a: 1.2, b: 0.05 }])('an even load of length $b from $a: R, then R (a + R / 2 w)', ({ a, b }) => {
    const [span, perLength] = [2, 900]
    const left = ((perLength * b) / (2 * span)) * (2 * (span - a - b) + b)
    const moment = greatestMoment([part(perLength * b, a, a + b)], span)
    expectClose(reactionsOf([part(perLength * b, a, a + b)], span)[0], left, 1e-13)
    expectClose(moment.amount, left * (a + left / (2 * perLength)), 1e-12)
    expectClose(moment.at, a + left / perLength, 1e-12)
  })

  test.each([1, 1.3, 1.99])('a point load at %d of 2: P a b / L, and P a b (a + 2 b) √(3 a (a + 2 b)) / 27 L', (a) => {
    const [span, load] = [2, 500]
    const b = span - a
    const sag = greatestSag([part(load, a, a)], span)
    expectClose(greatestMoment([part(load, a, a)], span).amount, (load * a * b) / span, 1e-12)
    expectClose(sag.amount, (load * a * b * (a + 2 * b) * Math.sqrt(3 * a * (a + 2 * b))) / (27 * span), 1e-11)
    expectClose(sag.at, Math.sqrt((a * (a + 2 * b)) / 3), 1e-7)
  })

  // Sag left of the far end of a load that starts at the left support, under which the greatest lies: w x / 24 L × (a² (2 L − a)² − 2 a x² (2 L − a) + L x³)
  test('an even load on the left 1.5 of 2', () => {
    const [span, a, perLength] = [2, 1.5, 900]
    const { amount, at } = greatestSag([part(perLength * a, 0, a)], span)
    expect(at).toBeLessThan(a)
    expectClose(amount, ((perLength * at) / (24 * span)) * (a ** 2 * (2 * span - a) ** 2 - 2 * a * at ** 2 * (2 * span - a) + span * at ** 3), 1e-12)
  })
})

// Design of Reinforced Masonry Structures, pp. 235-236, example 4.27: 983 lb of brick in a triangle and 1092 lb/ft on 1.31 ft at both ends of 6 ft.
// The book rounds both parts of the shear up, 492 + 1431.
test('a published lintel with two loads at its ends', () => {
  const loads = [triangle(983), part(1_092 * 1.31, 0, 1.31), part(1_092 * 1.31, 6 - 1.31, 6)]
  const [left, right] = reactionsOf(loads, 6)
  expectClose(left, 1_923, 0.001)
  expectClose(right, 1_923, 0.001)
  // Worked by hand from there: 983 + 1431 × 1.31 / 2
  expectClose(greatestMoment(loads, 6).amount, 1_920, 0.001)
})

describe('whatever the loads', () => {
  const loads = [triangle(800), part(350, 0, 2.5), part(2_000, 1.9, 2.4)]

  test('turned around, the ends change places and nothing else', () => {
    const turned = [triangle(800), part(350, 0, 2.5), part(2_000, 0.1, 0.6)]
    expectClose(reactionsOf(loads, 2.5)[0], reactionsOf(turned, 2.5)[1], 1e-14)
    expectClose(greatestMoment(loads, 2.5).amount, greatestMoment(turned, 2.5).amount, 1e-12)
    expectClose(greatestSag(loads, 2.5).amount, greatestSag(turned, 2.5).amount, 1e-12)
    expectClose(greatestSag(loads, 2.5).at, 2.5 - greatestSag(turned, 2.5).at, 1e-7)
  })

  test('a load on a hair of the span is the point load there', () => {
    expectClose(greatestSag([part(2_000, 1.2, 1.2 + 1e-9)], 2.5).amount, greatestSag([part(2_000, 1.2, 1.2)], 2.5).amount, 1e-8)
    expectClose(greatestMoment([part(2_000, 1.2, 1.2 + 1e-9)], 2.5).amount, greatestMoment([part(2_000, 1.2, 1.2)], 2.5).amount, 1e-8)
  })

  test('nothing on it bends it nowhere', () => {
    expect(greatestMoment([triangle(0)], 2).amount).toBe(0)
    expect(greatestSag([], 2).amount).toBe(0)
  })
})
