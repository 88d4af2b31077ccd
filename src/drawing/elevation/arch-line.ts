import type { WallExtent } from './wall-extent.ts'

export type Place = readonly [x: number, y: number]

/** A circle through the springing points and the crown: from the left springing to the right one, `out` farther from the center. */
export function archLine({ width, height, springing }: WallExtent, out: number, steps = 40): readonly Place[] {
  const rise = height - springing
  if (rise <= 0) return [[0, height + out], [width, height + out]]
  const radius = (width ** 2 / 4 + rise ** 2) / (2 * rise)
  const center = height - radius
  const half = rise >= width / 2 ? Math.PI - Math.asin(Math.min(1, width / 2 / radius)) : Math.asin(Math.min(1, width / 2 / radius))
  return Array.from({ length: steps + 1 }, (_, index) => {
    const angle = -half + (2 * half * index) / steps
    return [width / 2 + (radius + out) * Math.sin(angle), center + (radius + out) * Math.cos(angle)] as const
  })
}
