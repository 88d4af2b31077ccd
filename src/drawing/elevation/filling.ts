import type { Drawn, Frame } from '../drawn.ts'
import { box, outline, part, round, strokes, type Shape } from '../shape.ts'
import { archLine, type Place } from './arch-line.ts'
import type { WallExtent } from './wall-extent.ts'

/** What fills the opening. Its frame is a drawing convention; only its outline is described. */
export function filling(frame: Frame, wall: WallExtent): Drawn {
  const { at, known } = frame
  const kind = known.choice('opening.kind') ?? 'window'
  const edge = openingOutline(wall).map(([x, y]) => at(x, y))
  const inside: Readonly<Record<string, (frame: Frame, wall: WallExtent) => readonly Shape[]>> = { window, door, slidingDoor: sliding, garageDoor: sections, louver: blades, vent: blades, recess }
  return {
    shapes: [part('opening', [outline('outline', ...edge), ...(inside[kind]?.(frame, wall) ?? [])], { kind })],
    anchors: [['opening', at(wall.width / 2, wall.springing / 2)], ['jambs:left', at(0, wall.springing / 2)], ['jambs:right', at(wall.width, wall.springing / 2)], ['jambs', at(wall.width, wall.springing / 2)]],
  }
}

/** The edge of the opening in the brick, from the lower left corner round. */
export function openingOutline(wall: WallExtent): readonly Place[] {
  const { width, height, springing } = wall
  if (springing >= height) return [[0, 0], [0, height], [width, height], [width, 0]]
  return [[0, 0], ...archLine(wall, 0), [width, 0]]
}

function inset({ width, springing }: WallExtent, by = 0.04): { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number } {
  const margin = Math.min(width, springing) * by
  return { left: margin, right: width - margin, bottom: margin, top: springing - margin }
}

function window({ at, known }: Frame, wall: WallExtent): readonly Shape[] {
  const units = Math.min(40, Math.max(1, known.amount('opening.gangedUnits') ?? 1))
  const mullion = units > 1 ? (known.length('opening.mullionWidth') ?? 0) : 0
  const { left, right, bottom, top } = inset(wall)
  const gap = Math.max(mullion, (right - left) * 0.01)
  const each = Math.max((right - left) / units / 3, (right - left - (units - 1) * gap) / units)
  const pane = Math.min(each, wall.springing) * 0.07
  return Array.from({ length: units }, (_, index) => {
    const from = left + (index * (right - left - each)) / Math.max(1, units - 1)
    return part('unit', [box('glass', at(from, bottom), at(from + each, top)), box('glass', at(from + pane, bottom + pane), at(from + each - pane, top - pane)), glint(at, from + each / 2, (bottom + top) / 2, each / 5)])
  })
}

/** Two slanting strokes say glass. */
function glint(at: Frame['at'], x: number, y: number, size: number): Shape {
  return strokes('glass', [at(x - size / 2, y - size / 2), at(x + size / 2, y + size / 2)], [at(x, y - size / 2), at(x + size / 2, y)])
}

function door({ at, scale }: Frame, wall: WallExtent): readonly Shape[] {
  const { left, right, top } = inset(wall)
  const middle = top / 2
  return [box('glass', at(left, 0), at(right, top)), strokes('hidden', [at(right, 0), at(left, middle), at(right, top)]), round('glass', at(right - (right - left) / 10, middle), Math.max(0.5, 30 * scale))]
}

function sliding({ at }: Frame, wall: WallExtent): readonly Shape[] {
  const { left, right, top } = inset(wall)
  const middle = (left + right) / 2
  const arrow = (right - left) / 8
  return [
    box('glass', at(left, 0), at(middle, top)), box('glass', at(middle, 0), at(right, top)),
    strokes('glass', [at(middle + arrow * 3, top / 2), at(middle + arrow, top / 2)], [at(middle + arrow * 1.4, top / 2 + arrow * 0.3), at(middle + arrow, top / 2), at(middle + arrow * 1.4, top / 2 - arrow * 0.3)]),
  ]
}

function sections({ at }: Frame, wall: WallExtent): readonly Shape[] {
  const { left, right, top } = inset(wall, 0.02)
  const lines = [1, 2, 3].map((index) => [at(left, (index * top) / 4), at(right, (index * top) / 4)])
  return [box('glass', at(left, 0), at(right, top)), strokes('glass', ...lines)]
}

function blades({ at }: Frame, wall: WallExtent): readonly Shape[] {
  const { left, right, bottom, top } = inset(wall, 0.06)
  const lines = Array.from({ length: 7 }, (_, index) => { const y = bottom + ((index + 1) * (top - bottom)) / 8; return [at(left, y), at(right, y)] })
  return [box('glass', at(left, bottom), at(right, top)), strokes('glass', ...lines)]
}

function recess({ at }: Frame, { width, springing }: WallExtent): readonly Shape[] {
  return [strokes('glass', [at(0, 0), at(width, springing)], [at(0, springing), at(width, 0)])]
}
