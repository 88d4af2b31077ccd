import { outline, part, round, strokes, type Group, type Point, type Shape } from '../shape.ts'

export type Material = 'brick' | 'mortar' | 'blockwork' | 'concrete' | 'stone' | 'wood' | 'rigidInsulation' | 'batt' | 'sheathing' | 'steel' | 'earth'

/** A cut field in the sign of its material, as sections are hatched (common practice, no source): brick on the slant, concrete with stones, wood with a cross. */
export function cutField(material: Material, points: readonly Point[], isKnown = true): Group {
  const edge = outline(isKnown ? (material === 'brick' || material === 'mortar' ? 'edge' : 'cut') : 'unknown', ...points)
  if (material === 'steel') return part('field', [outline('steel', ...points)], { material, known: String(isKnown) })
  return part('field', [outline('mask', ...points), ...signOf(material, points), edge], { material, known: String(isKnown) })
}

function signOf(material: Material, points: readonly Point[]): readonly Shape[] {
  switch (material) {
    case 'brick': return [slant(points, 1.5, 1)]
    case 'blockwork': return [slant(points, 2.6, 1), slant(points, 2.6, -1)]
    case 'rigidInsulation': return [slant(points, 1.1, 1), slant(points, 1.1, -1)]
    case 'sheathing': return [slant(points, 0.9, -1)]
    case 'stone': return [slant(points, 2.4, -1)]
    case 'wood': return cross(points)
    case 'batt': return [wave(points)]
    case 'concrete': return stones(points)
    default: return []
  }
}

interface Bounds { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }

function boundsOf(points: readonly Point[]): Bounds {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return { x1: Math.min(...xs), y1: Math.min(...ys), x2: Math.max(...xs), y2: Math.max(...ys) }
}

/** Lines at half a right angle, cut off at the edges of a convex field. */
function slant(points: readonly Point[], gap: number, rise: 1 | -1): Shape {
  const offsets = points.map(([x, y]) => x + rise * y)
  const step = gap * Math.SQRT2
  const first = Math.ceil(Math.min(...offsets) / step)
  const count = Math.max(0, Math.floor(Math.max(...offsets) / step) - first + 1)
  const lines = Array.from({ length: count }, (_, index) => crossing(points, rise, (first + index) * step)).filter((line) => line.length === 2)
  return strokes('hatch', ...lines)
}

/** Where the line x + rise · y = offset enters and leaves. */
function crossing(points: readonly Point[], rise: 1 | -1, offset: number): readonly Point[] {
  const found: Point[] = []
  points.forEach((from, index) => {
    const to = points[(index + 1) % points.length] ?? from
    const [a, b] = [from[0] + rise * from[1] - offset, to[0] + rise * to[1] - offset]
    if (a === b || a * b > 0) return
    const share = a / (a - b)
    const at: Point = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]
    if (!found.some(([x, y]) => Math.hypot(x - at[0], y - at[1]) < 1e-6)) found.push(at)
  })
  return found
}

function cross(points: readonly Point[]): readonly Shape[] {
  const { x1, y1, x2, y2 } = boundsOf(points)
  return [strokes('hatch', [[x1, y1], [x2, y2]], [[x1, y2], [x2, y1]])]
}

/** Loose insulation: a line that swings from side to side. */
function wave(points: readonly Point[]): Shape {
  const { x1, y1, x2, y2 } = boundsOf(points)
  const step = Math.max(1.4, (x2 - x1) / 6)
  const count = Math.max(2, Math.floor((y2 - y1) / step))
  return strokes('hatch', Array.from({ length: count + 1 }, (_, index): Point => [index % 2 === 0 ? x1 + 0.4 : x2 - 0.4, y1 + ((y2 - y1) * index) / count]))
}

/** Stones and sand, always in the same places. */
function stones(points: readonly Point[]): readonly Shape[] {
  const { x1, y1, x2, y2 } = boundsOf(points)
  const places = Array.from({ length: Math.min(400, Math.floor((x2 - x1) / 2.6) * Math.floor((y2 - y1) / 2.6)) }, (_, index): Point => {
    const across = Math.max(1, Math.floor((x2 - x1) / 2.6))
    const [column, row] = [index % across, Math.floor(index / across)]
    return [x1 + (column + 0.3 + ((row * 7 + column * 3) % 5) / 9) * 2.6, y1 + (row + 0.3 + ((column * 7 + row * 2) % 5) / 9) * 2.6]
  }).filter((place) => within(points, place))
  return places.map(([x, y], index) => (index % 3 === 0 ? outline('hatch', [x - 0.5, y + 0.4], [x + 0.5, y + 0.3], [x, y - 0.5]) : round('hatch', [x, y], 0.12)))
}

function within(points: readonly Point[], [x, y]: Point): boolean {
  return points.reduce((inside, [x1, y1], index) => {
    const [x2, y2] = points[(index + 1) % points.length] ?? [x1, y1]
    return (y1 > y) !== (y2 > y) && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1 ? !inside : inside
  }, false)
}
