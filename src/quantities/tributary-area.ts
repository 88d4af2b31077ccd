/** A place on the face of the wall, from the left end and from the base. */
export interface Point {
  readonly x: number
  readonly y: number
}

export interface Rectangle {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

type Polygon = readonly Point[]

/** Positive on the side that is kept, and linear, so that the edge is cut exactly where it is zero. */
type Side = (point: Point) => number

/**
 * The part of the panel, less the opening, that lies nearer to each point than to any other: its Voronoi cell.
 * In the square of the unit of the lengths. No two points may coincide.
 */
export function tributaryAreas(points: readonly Point[], panel: Rectangle, opening: Rectangle): readonly number[] {
  const corners = cornersOf(panel)
  const first = (areaOfPolygon(corners) / points.length) * nearEnough
  return points.map((point) => {
    const cell = cellOf(point, points, corners, first)
    return areaOfPolygon(cell) - areaOfPolygon(within(cell, opening))
  })
}

/** Square of the distance at first looked at, in areas of an even share: a few neighbors each way. */
const nearEnough = 6

/** Only neighbors less than twice as far away as the farthest corner can cut a cell; who is looked at grows until that is certain. */
function cellOf(point: Point, points: readonly Point[], panel: Polygon, first: number): Polygon {
  for (let distance = first; ; distance *= 4) {
    const near = points.filter((other) => other !== point && squared(point, other) < distance)
    const cell = cutByAll(point, near, panel)
    if (4 * reachOf(cell, point) <= distance || near.length === points.length - 1) return cell
  }
}

/** Nearest neighbors first: one that is twice as far away as the farthest corner cannot cut the cell, nor can any after it. */
function cutByAll(point: Point, others: readonly Point[], panel: Polygon): Polygon {
  const byDistance = others.map((other) => ({ other, distance: squared(point, other) })).sort((one, next) => one.distance - next.distance)
  let cell = panel
  for (const { other, distance } of byDistance) {
    if (distance >= 4 * reachOf(cell, point)) return cell
    cell = cut(cell, nearerTo(point, other))
  }
  return cell
}

/** Half planes that meet in the rectangle; what is left of a convex polygon stays convex. */
function within(polygon: Polygon, { left, right, bottom, top }: Rectangle): Polygon {
  const sides: readonly Side[] = [({ x }) => x - left, ({ x }) => right - x, ({ y }) => y - bottom, ({ y }) => top - y]
  return sides.reduce(cut, polygon)
}

function nearerTo(point: Point, other: Point): Side {
  const [dx, dy] = [other.x - point.x, other.y - point.y]
  const [middleX, middleY] = [(point.x + other.x) / 2, (point.y + other.y) / 2]
  return ({ x, y }) => (middleX - x) * dx + (middleY - y) * dy
}

/** The part of a convex polygon on one side of a line: corners kept, and a new corner wherever an edge crosses. */
function cut(polygon: Polygon, side: Side): Polygon {
  return polygon.flatMap((corner, index) => {
    const next = polygon[(index + 1) % polygon.length] ?? corner
    const [here, there] = [side(corner), side(next)]
    const kept = here >= 0 ? [corner] : []
    return (here > 0 && there < 0) || (here < 0 && there > 0) ? [...kept, between(corner, next, here / (here - there))] : kept
  })
}

function between(from: Point, to: Point, part: number): Point {
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) }
}

/** Half the sum of the cross products of its edges. */
function areaOfPolygon(polygon: Polygon): number {
  const twice = polygon.reduce((sum, { x, y }, index) => {
    const next = polygon[(index + 1) % polygon.length] ?? { x, y }
    return sum + x * next.y - next.x * y
  }, 0)
  return twice / 2
}

/** The square of the distance to the farthest corner. */
function reachOf(polygon: Polygon, point: Point): number {
  return Math.max(0, ...polygon.map((corner) => squared(point, corner)))
}

function squared(one: Point, other: Point): number {
  return (one.x - other.x) ** 2 + (one.y - other.y) ** 2
}

function cornersOf({ left, right, bottom, top }: Rectangle): Polygon {
  return [{ x: left, y: bottom }, { x: right, y: bottom }, { x: right, y: top }, { x: left, y: top }]
}
