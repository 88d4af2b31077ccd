import { stepsIn } from './tie-grid.ts'

/** One side of an opening, as ties go along it. Lengths in nanometres, along the side and away from it. */
export interface EdgeOfOpening {
  /** The ends of the side. */
  readonly from: number
  readonly to: number
  /** Where ties may stand beside it: the edge itself, and as far off as is allowed or as there is brick. */
  readonly near: number
  readonly far: number
}

/** Lines of the field beside the edge, the places of ties along those, and the steps in which ties may be put. */
export interface FieldAtEdge {
  readonly lines: readonly number[]
  readonly places: readonly number[]
  readonly lineStep: number
  readonly placeStep: number
  /** Between two lines: one that is farther than half of it from the edge leaves its ties more wall than their share. */
  readonly lineSpacing: number
}

/** A line of ties along an edge: those of the field that stand there, and those to add. */
export interface EdgeTies {
  readonly line: number
  readonly standing: readonly number[]
  readonly added: readonly number[]
}

/**
 * A line of the field within the allowed distance and half a spacing serves the edge; where there is none a line is added, in step with the field.
 * Then a tie is added where none is within the distance of an end, or where two are too far apart. Undefined where there is no brick for it.
 */
export function tiesAlongEdge(edge: EdgeOfOpening, field: FieldAtEdge, distance: number, spacing: number): EdgeTies | undefined {
  const beside = lineBeside(edge, field)
  if (beside === undefined) return undefined
  const reach = beside.stands ? distance : 0
  const inStep = field.places.filter((place) => place >= edge.from - reach && place <= edge.to + reach)
  const withEnds = inOrder([...inStep, ...missingEnds(edge, inStep, distance, field.placeStep)])
  const all = inOrder([...withEnds, ...fillings(withEnds, spacing, field.placeStep)])
  const standing = beside.stands ? inStep : []
  return { line: beside.line, standing, added: all.filter((place) => !standing.includes(place)) }
}

/** The nearest line of the field, or one between it and the edge where it is too far off and there is room for another. */
function lineBeside(edge: EdgeOfOpening, { lines, lineStep, lineSpacing }: FieldAtEdge): { readonly line: number; readonly stands: boolean } | undefined {
  const nearest = lines.filter((line) => isBeside(line, edge)).toSorted((one, other) => Math.abs(one - edge.near) - Math.abs(other - edge.near))[0]
  if (nearest !== undefined && Math.abs(nearest - edge.near) <= lineSpacing / 2) return { line: nearest, stands: true }
  const between = middleOf({ ...edge, far: nearest ?? edge.far }, lineStep)
  if (between !== undefined && between !== nearest) return { line: between, stands: false }
  return nearest === undefined ? undefined : { line: nearest, stands: true }
}

function isBeside(line: number, { near, far }: EdgeOfOpening): boolean {
  return line !== near && line >= Math.min(near, far) && line <= Math.max(near, far)
}

/** In the middle of the strip, so that a tie set a little off still stands in it. */
function middleOf(edge: EdgeOfOpening, step: number): number | undefined {
  const line = Math.round(Math.round((edge.near + edge.far) / 2 / step) * step)
  return isBeside(line, edge) ? line : undefined
}

function missingEnds({ from, to }: EdgeOfOpening, places: readonly number[], distance: number, step: number): readonly number[] {
  const first = places.some((place) => place <= from + distance) ? [] : [Math.round(Math.ceil((from - 1) / step) * step)]
  const last = places.some((place) => place >= to - distance) ? [] : [Math.round(stepsIn(to, step) * step)]
  return [...first, ...last]
}

/** So many between two that are too far apart that none is, each in its step. */
function fillings(places: readonly number[], spacing: number, step: number): readonly number[] {
  const most = Math.max(1, stepsIn(spacing, step))
  return places.slice(1).flatMap((place, index) => {
    const from = places[index] ?? place
    const steps = Math.round((place - from) / step)
    const pieces = Math.ceil(steps / most)
    return Array.from({ length: Math.max(0, pieces - 1) }, (_, piece) => Math.round(from + Math.round(((piece + 1) * steps) / pieces) * step))
  })
}

function inOrder(places: readonly number[]): readonly number[] {
  return [...new Set(places)].toSorted((one, other) => one - other)
}
