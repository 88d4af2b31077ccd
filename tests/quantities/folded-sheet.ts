import type { CutPattern, Point } from '../../src/quantities/flashing-pattern.ts'

export type Place = readonly [x: number, y: number, z: number]

/** One flat part of a folded sheet: its corners on the blank, and where they came to stand. */
export interface Facet {
  readonly flat: readonly Point[]
  readonly folded: readonly Place[]
}

interface Crease {
  readonly from: Point
  readonly to: Point
  readonly turn: number
}

type Motion = (place: Place) => Place

/** Points that rounding to the nanometer has moved apart are one. */
const near = 4

/**
 * Cuts the blank along its folds into facets and folds them one after another, starting with the one that holds `start`, which stays flat.
 * It knows nothing of flashings: outline and folds are all it goes by.
 */
export function folded({ outline, folds }: Pick<CutPattern, 'outline' | 'folds'>, start: Point): readonly Facet[] {
  const creases = folds.map(({ from, to, direction, angle }): Crease => ({ from, to, turn: (direction === 'up' ? 1 : -1) * (angle * Math.PI) / 180 }))
  const facets = facetsOf(outline, creases)
  const first = facets.findIndex((facet) => holds(facet, start))
  const motions = new Map<number, Motion>([[first, (place) => place]])
  const waiting = [first]
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    for (const [other, crease] of neighbors(facets, at, creases)) {
      const before = motions.get(at)
      if (motions.has(other) || !before) continue
      const turn = turning(crease, centerOf(facets[other] ?? []))
      motions.set(other, (place) => before(turn(place)))
      waiting.push(other)
    }
  }
  return facets.map((flat, index) => {
    const motion = motions.get(index)
    if (!motion) throw new Error('a part of the blank hangs on no fold')
    return { flat, folded: flat.map(([x, y]) => motion([x, y, 0])) }
  })
}

/** The greatest distance between places to which one point of the blank was carried by two facets: 0 where the sheet does not tear. */
export function greatestTear(facets: readonly Facet[]): number {
  const all = facets.flatMap(({ flat, folded }) => flat.map((point, index) => ({ point, place: folded[index] ?? [NaN, NaN, NaN] as const })))
  return Math.max(...all.flatMap((one) => all.filter(({ point }) => same(point, one.point)).map(({ place }) => Math.hypot(...place.map((value, axis) => value - (one.place[axis] ?? NaN))))))
}

export function areaOf(points: readonly Point[]): number {
  return points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [x, y]
    return sum + (x * nextY - nextX * y) / 2
  }, 0)
}

/** Walks round every face of the drawing that outline and creases make, keeping to the left. */
function facetsOf(outline: readonly Point[], creases: readonly Crease[]): readonly (readonly Point[])[] {
  const points = distinct([...outline, ...creases.flatMap(({ from, to }) => [from, to])])
  const lines = [...outline.map((from, index): readonly [Point, Point] => [from, outline[(index + 1) % outline.length] ?? from]), ...creases.map(({ from, to }): readonly [Point, Point] => [from, to])]
  const steps = lines.flatMap(([from, to]) => {
    const on = points.filter((point) => onLine(point, from, to)).toSorted((one, other) => distance(from, one) - distance(from, other))
    return on.slice(1).flatMap((point, index) => [[on[index] ?? point, point] as const, [point, on[index] ?? point] as const])
  })
  const used = new Set<number>()
  const facets: Point[][] = []
  for (const begin of steps.keys()) {
    if (used.has(begin)) continue
    const facet: Point[] = []
    for (let at = begin; !used.has(at); at = leftmost(steps, at)) {
      used.add(at)
      facet.push(steps[at]?.[0] ?? [NaN, NaN])
    }
    if (areaOf(facet) > 0) facets.push(facet)
  }
  return facets
}

function leftmost(steps: readonly (readonly [Point, Point])[], at: number): number {
  const [from, to] = steps[at] ?? [[0, 0], [0, 0]]
  const back = Math.atan2(from[1] - to[1], from[0] - to[0])
  const onward = steps.flatMap(([start, end], index) => (same(start, to) && !same(end, from) ? [{ index, turn: (back - Math.atan2(end[1] - start[1], end[0] - start[0]) + 4 * Math.PI) % (2 * Math.PI) }] : []))
  return onward.reduce((one, other) => (other.turn < one.turn ? other : one)).index
}

function neighbors(facets: readonly (readonly Point[])[], at: number, creases: readonly Crease[]): readonly (readonly [number, Crease])[] {
  return facets.flatMap((facet, other) => {
    const crease = other === at ? undefined : creases.find(({ from, to }) => [facets[at] ?? [], facet].every((points) => points.filter((point) => onLine(point, from, to)).length >= 2))
    return crease ? [[other, crease] as const] : []
  })
}

/** Turns the side of the crease on which `side` lies; up is +z. */
function turning({ from, to, turn }: Crease, side: Point): Motion {
  const length = distance(from, to)
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  const angle = ux * (side[1] - from[1]) - uy * (side[0] - from[0]) > 0 ? turn : -turn
  return ([x, y, z]) => {
    const [along, across] = [(x - from[0]) * ux + (y - from[1]) * uy, (y - from[1]) * ux - (x - from[0]) * uy]
    const [turned, height] = [across * Math.cos(angle) - z * Math.sin(angle), across * Math.sin(angle) + z * Math.cos(angle)]
    return [from[0] + along * ux - turned * uy, from[1] + along * uy + turned * ux, height]
  }
}

function holds(facet: readonly Point[], [x, y]: Point): boolean {
  return facet.every((from, index) => {
    const to = facet[(index + 1) % facet.length] ?? from
    return (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]) > 0
  })
}

function centerOf(points: readonly Point[]): Point {
  return [points.reduce((sum, [x]) => sum + x, 0) / points.length, points.reduce((sum, [, y]) => sum + y, 0) / points.length]
}

function distinct(points: readonly Point[]): readonly Point[] {
  return points.filter((point, index) => points.findIndex((other) => same(point, other)) === index)
}

function onLine(point: Point, from: Point, to: Point): boolean {
  return Math.abs(distance(from, point) + distance(point, to) - distance(from, to)) <= near && !(same(from, to))
}

function same(one: Point, other: Point): boolean {
  return distance(one, other) <= near
}

function distance(one: Point, other: Point): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1])
}
