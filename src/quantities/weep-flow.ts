import type { Water } from './water.ts'

/** A weep as water sees it, in m: an upright slot such as an open head joint, or a round tube. */
export type WeepHole =
  | { readonly shape: 'slot'; readonly width: number; readonly height: number }
  | { readonly shape: 'round'; readonly diameter: number }

/**
 * Flow through one clean weep in L/h with water so deep (m) on the flashing.
 * A slot is a weir until the water covers it; a tube is an orifice, and half full or less it is not computed.
 */
export function flowThrough(hole: WeepHole, depth: number, discharge: number, { gravity }: Pick<Water, 'gravity'>): number | undefined {
  const speed = Math.sqrt(2 * gravity)
  if (hole.shape === 'slot') {
    const over = Math.max(0, depth - hole.height)
    return litresPerHour((2 / 3) * discharge * hole.width * speed * (depth ** (3 / 2) - over ** (3 / 2)))
  }
  if (depth < hole.diameter) return undefined
  return litresPerHour(discharge * (Math.PI / 4) * hole.diameter ** 2 * speed * Math.sqrt(depth - hole.diameter / 2))
}

function litresPerHour(cubicMetresPerSecond: number): number {
  return cubicMetresPerSecond * 1e3 * 60 * 60
}
