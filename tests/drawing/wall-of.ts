import { boundsOf, linesIn, partIn, type Element, type Point } from './read-svg.ts'

/** Millimeters of wall from paper: the lower left corner of the opening, and what one millimeter of paper stands for. */
export function wallOf(svg: Element, width: number) {
  const [outline] = linesIn(partIn(svg, { part: 'opening' }))
  const { left, right, bottom } = boundsOf(outline ?? [])
  const ratio = width / (right - left)
  return { ratio, at: ([x, y]: Point): Point => [(x - left) * ratio, (bottom - y) * ratio] }
}
