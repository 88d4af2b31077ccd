import type { Frame } from '../drawn.ts'
import { part, strokes, type Shape } from '../shape.ts'
import { cutField, type Material } from './hatch.ts'
import type { Layers } from './layers.ts'

/** Brick courses from a bed up, each cut with its joint over it; the first may stand on end or on edge. */
export function brickCourses({ at }: Frame, { brick, course, thickness, thicknessKnown }: Layers, [from, to]: readonly [number, number], first?: number): Shape {
  const height = brick?.height ?? course - 10
  const bricks: Shape[] = []
  for (let y = from, index = 0; y < to - 1; index += 1) {
    const tall = index === 0 && first !== undefined ? first : height
    const top = Math.min(to, y + tall)
    bricks.push(part('brick', [cutField('brick', [at(0, y), at(thickness, y), at(thickness, top), at(0, top)], thicknessKnown && brick !== undefined)]))
    y += tall + course - height
  }
  return part('veneer', [cutField('mortar', [at(0, from), at(thickness, from), at(thickness, to), at(0, to)], thicknessKnown), ...bricks])
}

/** Brick downward from a bed. */
export function brickBelow(frame: Frame, layers: Layers, [from, to]: readonly [number, number]): Shape {
  const count = Math.ceil((to - from) / layers.course)
  const start = to - count * layers.course
  const { brick, course } = layers
  const height = brick?.height ?? course - 10
  const { at } = frame
  const bricks = Array.from({ length: count }, (_, index): Shape | undefined => {
    const [bottom, top] = [Math.max(from, start + index * course), start + index * course + height]
    return top <= from ? undefined : part('brick', [cutField('brick', [at(0, bottom), at(layers.thickness, bottom), at(layers.thickness, top), at(0, top)], layers.thicknessKnown && brick !== undefined)])
  }).filter((shape) => shape !== undefined)
  return part('veneer', [cutField('mortar', [at(0, from), at(layers.thickness, from), at(layers.thickness, to), at(0, to)], layers.thicknessKnown), ...bricks])
}

/** Insulation, sheathing and backing between two levels. */
export function backingWall({ at }: Frame, { insulation, backingFace, sheathed, inside, backing, backingKnown }: Layers, [from, to]: readonly [number, number], insulationFrom = from): Shape {
  const field = (material: Material, x1: number, x2: number, bottom: number, isKnown = true) => cutField(material, [at(x1, bottom), at(x2, bottom), at(x2, to), at(x1, to)], isKnown)
  return part('backing', [
    ...(insulation[1] > insulation[0] ? [field('rigidInsulation', insulation[0], insulation[1], Math.min(to, insulationFrom))] : []),
    ...(sheathed > backingFace ? [field('sheathing', backingFace, sheathed, from)] : []),
    field(backing, sheathed, inside, from, backingKnown),
  ])
}

/** The barrier on the backing between two levels; from `over` down it lies in front of a flashing. */
export function barrierLine({ at, scale, known }: Frame, { backingFace }: Layers, [from, to]: readonly [number, number], over?: number): Shape {
  const kind = known.choice('barrier.kind')
  const [on, out] = [backingFace - 0.3 / scale, backingFace - 1.5 / scale]
  const line = over === undefined ? [at(on, from), at(on, to)] : [at(out, from), at(out, over + 0.3 / scale), at(on, over + 1.5 / scale), at(on, to)]
  return part('barrier', kind === 'none' ? [] : [strokes(kind === undefined ? 'unknown' : 'barrier', line)], { known: String(kind !== undefined), from: String(from) })
}
