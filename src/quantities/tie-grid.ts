/** Whole steps in a span; courses that are a part of a nanometre off their span count all the same. */
export function stepsIn(span: number, step: number): number {
  return Math.floor(span / step + 1 / 1e6)
}

/** Columns at one spacing, set out from the middle, so that none of the wall lies farther than half of it from a column. */
export function tieColumns(width: number, spacing: number): readonly number[] {
  const count = Math.max(1, Math.ceil((width - 1) / spacing))
  const first = (width - (count - 1) * spacing) / 2
  return Array.from({ length: count }, (_, index) => Math.round(first + index * spacing))
}

/** The last bed joint under the top of the wall, counted from its foot. */
export function lastBedJoint(height: number, course: number): number {
  return Math.ceil((height - 1) / course) - 1
}

/**
 * Bed joints with ties, from the foot up: the first within half a spacing of it, none farther than a spacing from the next,
 * and the last within half a spacing of the top where a bed joint is.
 */
export function tieRows(height: number, spacing: number, course: number): readonly number[] {
  const [every, top] = [stepsIn(spacing, course), lastBedJoint(height, course)]
  const first = Math.min(top, Math.max(1, Math.floor(every / 2)))
  if (every < 1 || first < 1) return []
  const rows = Array.from({ length: Math.floor((top - first) / every) + 1 }, (_, index) => first + index * every)
  const highest = first + (rows.length - 1) * every
  const isOpenAbove = height - highest * course > spacing / 2 + 1 && top > highest
  return (isOpenAbove ? [...rows, Math.min(top, Math.ceil((height - spacing / 2 - 1) / course))] : rows).map((joint) => Math.round(joint * course))
}
