import { nothing, type Drawn, type Frame } from '../drawn.ts'
import { numberIn } from '../known.ts'
import { part, round } from '../shape.ts'
import type { WallExtent } from './wall-extent.ts'

const radius = 0.8

/** Ties of the layout as far as they lie in what is drawn. */
export function ties({ at, known, scale }: Frame, { left, right, bottom, top }: Pick<WallExtent, 'left' | 'right' | 'bottom' | 'top'>): Drawn {
  const rows = known.rows('ties.field-grid')
  const wall = known.rows('wall.around-opening')?.[0]
  const [fromLeft, foot] = [numberIn(wall, 0), numberIn(wall, 2)]
  if (!rows || fromLeft === undefined || foot === undefined) return nothing
  const edge = radius / scale
  const places = rows.flatMap((row) => {
    const [x, y] = [numberIn(row, 0), numberIn(row, 1)]
    return x === undefined || y === undefined ? [] : [{ x: x + fromLeft, y: y + foot, serves: String(row[2] ?? '') }]
  }).filter(({ x, y }) => x >= left + edge && x <= right - edge && y >= bottom + edge && y <= top - edge)
  const middle = places.find(({ serves }) => serves !== 'field') ?? places[0]
  return {
    shapes: [part('ties', places.map(({ x, y, serves }) => part('tie', [round('tie', at(x, y), radius)], { x: String(x), y: String(y), serves })))],
    anchors: middle ? [['ties', at(middle.x, middle.y)]] : [],
  }
}
