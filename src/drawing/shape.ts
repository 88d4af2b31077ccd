import type { PenName } from './pens.ts'

/** Millimeters of paper from the upper left corner; y runs down. */
export type Point = readonly [x: number, y: number]

/** What is drawn, before it is written down as SVG. */
export type Shape = Strokes | Round | Words | Group

export interface Strokes {
  readonly kind: 'strokes'
  readonly lines: readonly (readonly Point[])[]
  readonly closed: boolean
  readonly pen: PenName
}

export interface Round {
  readonly kind: 'round'
  readonly center: Point
  readonly radius: number
  readonly pen: PenName
}

export interface Words {
  readonly kind: 'words'
  readonly at: Point
  readonly text: string
  readonly size: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly weight: 'normal' | 'bold'
  readonly ink: 'black' | 'white'
  /** Read from the right, as dimensions beside a drawing are. */
  readonly turned: boolean
}

/** A part of the opening; `data` tells what it is and is written as data attributes. */
export interface Group {
  readonly kind: 'group'
  readonly data: Readonly<Record<string, string>>
  readonly shapes: readonly Shape[]
}

export function strokes(pen: PenName, ...lines: readonly (readonly Point[])[]): Strokes {
  return { kind: 'strokes', lines, closed: false, pen }
}

export function outline(pen: PenName, ...points: readonly Point[]): Strokes {
  return { kind: 'strokes', lines: [points], closed: true, pen }
}

/** A rectangle from two corners. */
export function box(pen: PenName, [x1, y1]: Point, [x2, y2]: Point): Strokes {
  return outline(pen, [x1, y1], [x2, y1], [x2, y2], [x1, y2])
}

export function round(pen: PenName, center: Point, radius: number): Round {
  return { kind: 'round', center, radius, pen }
}

export function words(text: string, at: Point, more: Partial<Omit<Words, 'kind' | 'at' | 'text'>> = {}): Words {
  return { kind: 'words', at, text, size: textSize, anchor: 'start', weight: 'normal', ink: 'black', turned: false, ...more }
}

export function part(name: string, shapes: readonly Shape[], data: Readonly<Record<string, string>> = {}): Group {
  return { kind: 'group', data: { part: name, ...data }, shapes }
}

/** Of dimensions and notes. */
export const textSize = 2.8

/** The room that lines and circles take; texts are left out. */
export function boundsOf(shapes: readonly Shape[]): { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number } {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity]
  const add = ([x, y]: Point, radius = 0) => {
    left = Math.min(left, x - radius)
    right = Math.max(right, x + radius)
    top = Math.min(top, y - radius)
    bottom = Math.max(bottom, y + radius)
  }
  const walk = (shape: Shape): void => {
    if (shape.kind === 'strokes') for (const line of shape.lines) for (const point of line) add(point)
    if (shape.kind === 'round') add(shape.center, shape.radius)
    if (shape.kind === 'group') shape.shapes.forEach(walk)
  }
  shapes.forEach(walk)
  return { left, right, top, bottom }
}

/** The same shapes elsewhere on the paper. */
export function moved(shape: Shape, dx: number, dy: number): Shape {
  const move = ([x, y]: Point): Point => [x + dx, y + dy]
  switch (shape.kind) {
    case 'strokes': return { ...shape, lines: shape.lines.map((line) => line.map(move)) }
    case 'round': return { ...shape, center: move(shape.center) }
    case 'words': return { ...shape, at: move(shape.at) }
    case 'group': return { ...shape, shapes: shape.shapes.map((one) => moved(one, dx, dy)) }
  }
}
