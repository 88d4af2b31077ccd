import type { UnitSystem } from '../units/dimension.ts'
import type { Known } from './known.ts'
import type { Point, Shape } from './shape.ts'

/** Shapes with the places of the parts that numbers may point at. */
export interface Drawn {
  readonly shapes: readonly Shape[]
  readonly anchors?: readonly (readonly [part: string, at: Point])[]
  readonly notes?: readonly string[]
}

/** Everything that is drawn one over the other, the last on top. */
export function together(parts: readonly Drawn[]): Required<Drawn> {
  return { shapes: parts.flatMap(({ shapes }) => shapes), anchors: parts.flatMap(({ anchors = [] }) => anchors), notes: parts.flatMap(({ notes = [] }) => notes) }
}

/** Nothing to be seen of it. */
export const nothing: Drawn = { shapes: [] }

/** What every part of a drawing goes by: what is known, and where millimeters of wall lie on the paper. */
export interface Frame {
  readonly known: Known
  readonly system: UnitSystem
  /** Millimeters of paper for one of wall. */
  readonly scale: number
  /** y runs up in the wall and down on the paper. */
  readonly at: (x: number, y: number) => Point
}
