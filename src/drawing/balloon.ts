import type { CalloutGroup } from './callouts.ts'
import { box, outline, part, round, strokes, words, type Group, type Point, type Shape } from './shape.ts'
import { spread } from './spread.ts'

/** Columns beside a drawing in which the numbers stand. */
export interface BalloonColumns {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export const balloonRoom = 10
const height = 5
const gap = 1

/** How high a column has to be for so many numbers. */
export function roomForBalloons(count: number): number {
  return count * (height + gap) + 2
}

/** Numbers beside the drawing, on the nearer side as far as there is room, each led to what it speaks of. */
export function balloons(groups: readonly CalloutGroup[], columns: BalloonColumns): Group {
  const middle = (columns.left + columns.right) / 2
  const room = Math.floor((columns.bottom - columns.top + gap) / (height + gap))
  const byNearness = groups.toSorted((a, b) => a.at[0] - b.at[0])
  const wantedLeft = byNearness.filter(({ at }) => at[0] < middle).length
  if (columns.left === columns.right) return part('callouts', column(groups, columns.left, columns, groups.some(({ at }) => at[0] > columns.left) ? 1 : -1))
  const leftCount = Math.max(groups.length - room, Math.min(wantedLeft, room))
  return part('callouts', [...column(byNearness.slice(0, leftCount), columns.left, columns, 1), ...column(byNearness.slice(leftCount), columns.right, columns, -1)])
}

function column(groups: readonly CalloutGroup[], x: number, { top, bottom }: BalloonColumns, toward: 1 | -1): readonly Shape[] {
  const places = spread(groups.map(({ at }) => ({ middle: at[1], size: height })), top, bottom, gap).toSorted((a, b) => a - b)
  const order = untangled(groups.toSorted((a, b) => a.at[1] - b.at[1]), places, x)
  return order.map((group, index) => balloon(group, [x, places[index] ?? 0], toward))
}

/** Numbers change places until no leader crosses another; a fixed number of rounds, since points may lie on one line. */
function untangled(groups: readonly CalloutGroup[], places: readonly number[], x: number): readonly CalloutGroup[] {
  const order = [...groups]
  const swapIfCrossed = (upper: number, lower: number) => {
    const [a, b] = [order[upper], order[lower]]
    if (a && b && crosses([x, places[upper] ?? 0], a.at, [x, places[lower] ?? 0], b.at)) [order[upper], order[lower]] = [b, a]
  }
  const pairs = order.flatMap((_, upper) => order.slice(upper + 1).map((__, offset) => [upper, upper + 1 + offset] as const))
  for (let round = 0; round < order.length; round += 1) for (const [upper, lower] of pairs) swapIfCrossed(upper, lower)
  return order
}

function crosses(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]))
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}

function balloon(group: CalloutGroup, center: Point, toward: 1 | -1): Group {
  const edge: Point = [center[0] + toward * half(group), center[1]]
  return part('mark', [strokes('leader', [edge, group.at]), round('ink', group.at, 0.4), ...sign(group, center)], { number: String(group.number), sign: group.sign })
}

function half({ number }: CalloutGroup): number {
  return number > 9 ? 3.4 : 2.5
}

/** A black box where the law is not met, a box with a heavy edge where advice is not, a dashed lozenge where nothing could be decided. */
export function sign(group: CalloutGroup, [x, y]: Point): readonly Shape[] {
  const [w, h] = [half(group), height / 2]
  const shape = group.sign === 'undetermined' ? outline('undetermined', [x - w, y], [x, y - h], [x + w, y], [x, y + h]) : box(group.sign, [x - w, y - h], [x + w, y + h])
  return [shape, words(String(group.number), [x, y + 1], { anchor: 'middle', weight: 'bold', ink: group.sign === 'fail' ? 'white' : 'black', size: group.sign === 'undetermined' ? 2.5 : 2.8 })]
}
