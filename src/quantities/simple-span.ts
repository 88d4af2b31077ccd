/** A load on a beam that rests free at both ends: newtons in all, places in meters from the left support. */
export type SpanLoad = TriangleLoad | PartLoad

/** Rises evenly from nothing at the supports to its peak at midspan. */
export interface TriangleLoad {
  readonly shape: 'triangle'
  readonly total: number
}

/** Spread evenly between two places; a point load where the two are one. */
export interface PartLoad {
  readonly shape: 'part'
  readonly total: number
  readonly from: number
  readonly to: number
}

/** What is greatest along the span, and where: meters from the left support. */
export interface Greatest {
  readonly amount: number
  readonly at: number
}

/** What the two supports carry, in newtons. */
export function reactionsOf(loads: readonly SpanLoad[], span: number): readonly [left: number, right: number] {
  const sum = (share: (load: SpanLoad) => number) => loads.reduce((total, load) => total + load.total * share(load), 0)
  const centroid = (load: SpanLoad) => (load.shape === 'triangle' ? span / 2 : (load.from + load.to) / 2)
  return [sum((load) => (span - centroid(load)) / span), sum((load) => centroid(load) / span)]
}

/** In N·m; it is greatest where the shear changes its sign. */
export function greatestMoment(loads: readonly SpanLoad[], span: number): Greatest {
  const [left] = reactionsOf(loads, span)
  const shear = (x: number) => left - integrated(loads, span, x, 1)
  const at = changeOfSign(shear, span)
  return { amount: left * at - integrated(loads, span, at, 2), at }
}

/** Times the stiffness E I, in N·m³; it is greatest where the beam lies level. */
export function greatestSag(loads: readonly SpanLoad[], span: number): Greatest {
  const [left] = reactionsOf(loads, span)
  const atSupport = (left * span ** 2) / 6 - integrated(loads, span, span, 4) / span
  const slope = (x: number) => atSupport - (left * x ** 2) / 2 + integrated(loads, span, x, 3)
  const at = changeOfSign(slope, span)
  return { amount: atSupport * at - (left * at ** 3) / 6 + integrated(loads, span, at, 4), at }
}

/** Integrated so many times from the left support: once the load left of a place, twice its moment about it. */
function integrated(loads: readonly SpanLoad[], span: number, x: number, times: number): number {
  return loads.reduce((total, load) => total + (load.shape === 'triangle' ? triangle(load, span, x, times) : part(load, x, times)), 0)
}

function triangle({ total }: TriangleLoad, span: number, x: number, times: number): number {
  const rise = (4 * total) / span ** 2
  return (rise * (x ** (times + 1) - 2 * past(x, span / 2) ** (times + 1))) / factorial(times + 1)
}

/** Past its end as a sum without a difference, so that a load on a short stretch loses no digits and a point load none at all. */
function part({ total, from, to }: PartLoad, x: number, times: number): number {
  if (x < from) return 0
  if (x < to) return (total * (x - from) ** times) / (to - from) / factorial(times)
  const powers = Array.from({ length: times }, (_, index) => (x - from) ** index * (x - to) ** (times - 1 - index))
  return (total * powers.reduce((sum, power) => sum + power, 0)) / factorial(times)
}

function past(x: number, from: number): number {
  return Math.max(0, x - from)
}

function factorial(count: number): number {
  return count <= 1 ? 1 : count * factorial(count - 1)
}

/** Where a function that only falls along the span reaches zero, to the last digit: halves until no number lies between. */
function changeOfSign(falling: (x: number) => number, span: number): number {
  let [low, high] = [0, span]
  for (let middle = span / 2; low < middle && middle < high; middle = (low + high) / 2) {
    if (falling(middle) > 0) low = middle
    else high = middle
  }
  return high
}
